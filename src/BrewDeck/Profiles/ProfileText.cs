using System.Reflection;
using System.Text;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Fetches the text of a profile from disk or from inside the program. Bounded; only UTF-8.</summary>
internal static class ProfileText
{
    /// <summary>Begins the path of a profile that is inside the program.</summary>
    public const string Bundled = "bundled:";

    private const int LargestBytes = 1 << 20;

    /// <exception cref="ProfileException">Not there, too large, not readable, not text.</exception>
    public static string Of(string path) => Decoded(Bytes(path), path);

    /// <exception cref="ProfileException">Not there, too large, not readable.</exception>
    public static byte[] Bytes(string path)
    {
        try
        {
            using var stream = Open(path);
            return Whole(stream, path, LargestBytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new ProfileException($"{path}: {Trouble(e)}");
        }
    }

    /// <summary>From inside the program, or from the folder that came with it.</summary>
    public static bool IsBundled(string path, string bundledFolder) => path.StartsWith(Bundled, StringComparison.Ordinal)
        || Path.GetFullPath(path).StartsWith(Path.GetFullPath(bundledFolder) + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    public static string FileName(string path) => Path.GetFileName(path.Replace(Bundled, "", StringComparison.Ordinal));

    /// <summary>The first bytes only, as text, for a list.</summary>
    public static string Head(string path)
    {
        using var stream = Open(path);
        var bytes = new byte[2048];
        return Encoding.UTF8.GetString(bytes, 0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false));
    }

    /// <summary>Names of the resources under a folder, such as <c>recipes/</c>.</summary>
    public static IEnumerable<string> Inside(string folder) =>
        Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(n => n.StartsWith("profiles/" + folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            .Select(n => Bundled + n["profiles/".Length..]);

    public static string Decoded(byte[] bytes, string path)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (ArgumentException)
        {
            throw ProfileError.At(path, 1, "is not UTF-8 text; save it as UTF-8");
        }
    }

    private static Stream Open(string path) => path.StartsWith(Bundled, StringComparison.Ordinal)
        ? Assembly.GetExecutingAssembly().GetManifestResourceStream("profiles/" + path[Bundled.Length..])
            ?? throw new FileNotFoundException()
        : new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);

    private static byte[] Whole(Stream stream, string path, int largest)
    {
        var bytes = new byte[largest + 1];
        var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return count <= largest
            ? bytes[..count]
            : throw new ProfileException($"{path}: is larger than {largest >> 10} KiB; that is no profile");
    }

    private static string Trouble(Exception e) => e switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file; check the name",
        UnauthorizedAccessException => "may not be read; check its rights, and that it is a file",
        _ => $"cannot be read ({ProfileError.OneLine(e.Message)})",
    };
}
