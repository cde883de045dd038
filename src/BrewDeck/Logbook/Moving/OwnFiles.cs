using System.Text;

namespace BrewDeck.Logbook.Moving;

/// <summary>The brewer's own profiles, which live in the logbook's folder: they go where it goes.</summary>
internal static class OwnFiles
{
    private static readonly string[] Folders = ["brewhouses", "recipes", "waters", "water-targets"];

    private const string Catalogue = "catalogue.toml";

    /// <summary>Names with a forward slash, in order.</summary>
    public static IEnumerable<string> In(string folder) => Folders
        .Select(name => Path.Combine(folder, name))
        .Where(Directory.Exists)
        .SelectMany(Directory.EnumerateFiles)
        .Append(Path.Combine(folder, Catalogue))
        .Where(File.Exists)
        .Select(path => Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/'))
        .Order(StringComparer.Ordinal);

    /// <summary>A name from elsewhere that stays within the folders of profiles.</summary>
    public static bool IsOne(string name) => name == Catalogue
        || (name.Split('/') is [var folder, { Length: > 0 } file] && Folders.Contains(folder) && file is not "." and not ".." && file.IndexOfAny(Path.GetInvalidFileNameChars()) < 0 && !file.Contains('\\', StringComparison.Ordinal));

    /// <returns>Null when it is no UTF-8 text.</returns>
    public static string? Text(string folder, string name)
    {
        var bytes = File.ReadAllBytes(Path.Combine(folder, name));
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    /// <summary>Never over one that is there.</summary>
    /// <returns>False when there is another of that name.</returns>
    public static bool Put(string folder, string name, byte[] content)
    {
        var path = Path.Combine(folder, name);
        if (File.Exists(path))
            return File.ReadAllBytes(path).AsSpan().SequenceEqual(content);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, content);
        return true;
    }
}
