using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using Block = BrewDeck.Profiles.RecipeBlocks.Block;

namespace BrewDeck.Profiles;

/// <summary>
/// Changes a recipe file to another recipe and leaves comments and everything else as it is: the writer says what each line of the
/// old and of the new recipe would be, and only what differs is touched.
/// </summary>
internal static class RecipeEdit
{
    private static readonly string[] Ordered = ["grist", "rest", "hop", "addition", "yeast", "water"];

    /// <returns>The new text; without the old comments when the file is written in a way that this cannot follow.</returns>
    public static string Of(string text, string file, Recipe after, Catalogue catalogue)
    {
        var before = RecipeFile.Read(text, file, catalogue);
        var changed = Changed(text, RecipeBlocks.Of(RecipeFile.Write(before)), RecipeBlocks.Of(RecipeFile.Write(after)));
        return Gives(changed, file, after, catalogue) ? changed : RecipeFile.Write(after);
    }

    private static string Changed(string text, RecipeBlocks was, RecipeBlocks now)
    {
        var file = RecipeBlocks.Of(text);
        Touch(file.Head, was.Head, now.Head);
        foreach (var kind in Ordered)
            file.Replace(kind, Lines(file.Many(kind), was.Many(kind), now.Many(kind)));
        return file.Text(text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n");
    }

    /// <summary>The blocks of a kind: those that stay with what changed in them, and fresh ones.</summary>
    private static List<Block> Lines(List<Block> file, List<Block> was, List<Block> now)
    {
        var free = file.Zip(was).ToList();
        var lines = new List<Block>();
        foreach (var line in now)
        {
            // of several with one name the one that differs least, so that taking out the first leaves the second's comment with it
            var same = free.Where(f => f.Second.Value("name") == line.Value("name")).OrderBy(f => Differs(f.Second, line)).FirstOrDefault();
            if (same.First is null)
            {
                lines.Add(line.WithoutComments());
                continue;
            }
            free.Remove(same);
            Touch(same.First, same.Second, line);
            lines.Add(same.First);
        }
        return lines;
    }

    private static int Differs(Block a, Block b) => a.Keys.Union(b.Keys).Count(k => a.Value(k) != b.Value(k));

    private static void Touch(Block file, Block was, Block now)
    {
        foreach (var key in was.Keys.Union(now.Keys).Where(k => was.Value(k) != now.Value(k)).ToList())
            file.Set(key, now.Value(key));
    }

    private static bool Gives(string text, string file, Recipe wanted, Catalogue catalogue)
    {
        try
        {
            return RecipeFile.Write(RecipeFile.Read(text, file, catalogue)) == RecipeFile.Write(wanted);
        }
        catch (ProfileException)
        {
            return false;
        }
    }
}
