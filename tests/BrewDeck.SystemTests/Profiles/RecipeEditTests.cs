using BrewDeck.Core.Recipes;
using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>A changed recipe file keeps whatever was not changed.</summary>
public sealed class RecipeEditTests
{
    private static readonly ProfileFolder Folder = ProfileFolder.BesideProgram("none");

    public static TheoryData<string> Bundled => [.. Folder.Recipes().Select(r => r.Path)];

    [Theory]
    [MemberData(nameof(Bundled))]
    public void An_unchanged_recipe_leaves_every_letter(string path)
    {
        var text = ProfileText.Of(path);

        Assert.Equal(text.ReplaceLineEndings("\n"), RecipeEdit.Of(text, path, Read(text), Folder.Catalogue).ReplaceLineEndings("\n"));
    }

    [Theory]
    [MemberData(nameof(Bundled))]
    public void Every_line_but_the_changed_one_stays(string path)
    {
        var text = ProfileText.Of(path);
        var recipe = Read(text);
        var last = recipe.Hops.Length - 1;
        var changed = recipe with { Hops = recipe.Hops.SetItem(last, recipe.Hops[last] with { MassG = 77.5 }) };

        var after = RecipeEdit.Of(text, path, changed, Folder.Catalogue);

        Assert.Single(after.Split('\n').Except(text.ReplaceLineEndings("\n").Split('\n')), l => l.StartsWith("amount = \"77.5 g\"", StringComparison.Ordinal));
        Assert.Equal(text.ReplaceLineEndings("\n").Split('\n').Length, after.Split('\n').Length);
        Assert.Equal(77.5, Read(after).Hops[last].MassG);
    }

    [Fact]
    public void A_file_written_in_another_way_is_written_anew_and_reads_back()
    {
        const string Inline = """
            name = "Inline"
            batch = "20 L"
            boil = "60 min"
            grist = [{ name = "pale ale malt", amount = "4 kg" }]
            rest = [{ name = "one", temperature = "66 C", time = "60 min" }]
            yeast = { name = "clean ale yeast" }
            """;
        var changed = Read(Inline) with { BatchL = 21 };

        Assert.Equal(21, Read(RecipeEdit.Of(Inline, "inline.toml", changed, Folder.Catalogue)).BatchL);
    }

    private static Recipe Read(string text) => RecipeFile.Read(text, "recipe.toml", Folder.Catalogue);
}
