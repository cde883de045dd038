using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Writes profiles made in the program into the brewer's own folder, and what is half made into its <c>drafts/</c>.</summary>
/// <param name="ownFolder">Made when missing.</param>
public sealed class ProfileWriter(string ownFolder) : IProfileWriter
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

    private string DraftPath(string name) => Path.Combine(ownFolder, "drafts", name + ".txt");
}
