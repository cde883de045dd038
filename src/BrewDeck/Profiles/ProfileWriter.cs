using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Writes profiles made in the program into the brewer's own folder, and what is half made into its <c>drafts/</c>.</summary>
/// <param name="ownFolder">Made when missing.</param>
/// <param name="profiles">For the catalogue that fills in what a line of a recipe leaves out.</param>
public sealed class ProfileWriter(string ownFolder, ProfileFolder profiles) : IProfileWriter
{
    private const int MostDraftLines = 1000;

    public ProfileEntry Write(Brewhouse brewhouse, IReadOnlyDictionary<string, string> notes, DateTimeOffset now)
    {
        var path = ProfileDisk.Free(Path.Combine(ownFolder, "brewhouses"), brewhouse.Name);
        var text = new BrewhouseWriter(notes).Write(brewhouse, now);
        // what is written must read back: the reader is the judge of whether it makes a brewhouse
        BrewhouseFile.Read(text, path);
        ProfileDisk.Write(path, null, text, now);
        return new(brewhouse.Name, path);
    }

    public ProfileEntry Write(Recipe recipe, ProfileEntry? entry, DateTimeOffset now)
    {
        if (entry is null)
            return Fresh(recipe, now);
        var bytes = ProfileText.Bytes(entry.Path);
        var text = RecipeEdit.Of(ProfileText.Decoded(bytes, entry.Path), entry.Path, recipe, profiles.Catalogue);
        RecipeFile.Read(text, entry.Path, profiles.Catalogue);
        var path = profiles.IsBundled(entry.Path) ? Path.Combine(ownFolder, "recipes", ProfileText.FileName(entry.Path)) : entry.Path;
        ProfileDisk.Write(path, bytes, text, now);
        return new(recipe.Name, path);
    }

    public ProfileEntry Write(WaterSupply water, ProfileEntry? entry, DateTimeOffset now)
    {
        var own = Path.Combine(ownFolder, "waters");
        var path = entry is null ? ProfileDisk.Free(own, water.Source.Name)
            : profiles.IsBundled(entry.Path) ? Path.Combine(own, ProfileText.FileName(entry.Path)) : entry.Path;
        var text = WaterWriter.Write(water);
        WaterFile.Read(text, path);
        ProfileDisk.Write(path, entry is null ? null : ProfileText.Bytes(entry.Path), text, now);
        return new(water.Source.Name, path);
    }

    public IReadOnlyList<string> Draft(string name)
    {
        try
        {
            return File.Exists(DraftPath(name)) ? [.. File.ReadLines(DraftPath(name)).Take(MostDraftLines)] : [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new ProfileException($"{DraftPath(name)}: cannot be read ({ProfileError.OneLine(e.Message)}); check its rights");
        }
    }

    public void KeepDraft(string name, IReadOnlyList<string> lines)
    {
        try
        {
            if (lines.Count == 0)
                File.Delete(DraftPath(name));
            else
                ProfileDisk.Write(DraftPath(name), null, string.Join('\n', lines) + "\n", DateTimeOffset.UnixEpoch);
        }
        catch (Exception e) when (e is DirectoryNotFoundException)
        {
            // nothing was ever kept
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new ProfileException($"{DraftPath(name)}: cannot be removed ({ProfileError.OneLine(e.Message)}); check its rights");
        }
    }

    private ProfileEntry Fresh(Recipe recipe, DateTimeOffset now)
    {
        var path = ProfileDisk.Free(Path.Combine(ownFolder, "recipes"), recipe.Name);
        var text = RecipeFile.Write(recipe);
        RecipeFile.Read(text, path, profiles.Catalogue);
        ProfileDisk.Write(path, null, text, now);
        return new(recipe.Name, path);
    }

    private string DraftPath(string name) => Path.Combine(ownFolder, "drafts", name + ".txt");
}
