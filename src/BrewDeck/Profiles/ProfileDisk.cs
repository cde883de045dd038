using System.Globalization;
using System.Text;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Writes profiles so that a pulled plug leaves the old file or the new one, and an old version stays beside it.</summary>
internal static class ProfileDisk
{
    /// <param name="before">What stood there; null: it is new.</param>
    /// <param name="now">Local time, for the name of the old version.</param>
    /// <exception cref="ProfileException">It could not be written: nothing has happened.</exception>
    public static void Write(string path, byte[]? before, string after, DateTimeOffset now)
    {
        var beside = path + ".new";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
            if (before is not null)
                Put(Dated(path, now), FileMode.CreateNew, before);
            Put(beside, FileMode.Create, new UTF8Encoding(false).GetBytes(after));
            File.Move(beside, path, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new ProfileException($"{path}: cannot be written ({ProfileError.OneLine(e.Message)}); nothing was changed, check the folder's rights");
        }
    }

    /// <summary>A free file name made of a profile's name.</summary>
    public static string Free(string folder, string name)
    {
        var stem = Stem(name);
        for (var i = 1; ; i++)
        {
            var path = Path.Combine(folder, i == 1 ? $"{stem}.toml" : $"{stem}-{i}.toml");
            if (!File.Exists(path))
                return path;
        }
    }

    private static string Stem(string name)
    {
        var letters = string.Concat(name.Normalize(NormalizationForm.FormD).ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : char.IsLetter(c) || c is ' ' or '-' or '_' ? '-' : '\0')
            .Where(c => c != '\0'));
        var stem = string.Join('-', letters.Split('-', StringSplitOptions.RemoveEmptyEntries));
        return stem.Length == 0 ? "profile" : stem[..Math.Min(60, stem.Length)];
    }

    private static void Put(string path, FileMode mode, byte[] bytes)
    {
        using var file = new FileStream(path, mode);
        file.Write(bytes);
        file.Flush(flushToDisk: true);
    }

    /// <summary>FILE.DATE.toml, with a number when that is there already.</summary>
    private static string Dated(string path, DateTimeOffset now)
    {
        var stem = Path.Combine(Path.GetDirectoryName(path) ?? "", Path.GetFileNameWithoutExtension(path));
        var dated = string.Create(CultureInfo.InvariantCulture, $"{stem}.{now:yyyy-MM-dd}");
        for (var i = 1; ; i++)
        {
            var free = i == 1 ? $"{dated}.toml" : $"{dated}-{i}.toml";
            if (!File.Exists(free))
                return free;
        }
    }
}
