using System.Text;
using BrewDeck.Deck;
using BrewDeck.Logbook;

namespace BrewDeck.Reports;

/// <summary>Writes a file that the brewer asked for; what was there is replaced.</summary>
internal static class OutputFile
{
    /// <exception cref="ProfileException">It cannot be written; the message says what would be right.</exception>
    public static void Write(string path, string text)
    {
        try
        {
            File.WriteAllText(path, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new ProfileException($"{path}: cannot be written: {Why(path, e)}");
        }
    }

    private static string Why(string path, Exception e) => e switch
    {
        DirectoryNotFoundException => $"there is no folder {Path.GetDirectoryName(path)}; make it, or give another file",
        _ when Directory.Exists(path) => "it is a folder; give a file in it",
        UnauthorizedAccessException => "you may not write there; give a file in a folder of your own",
        _ when DiskTrouble.IsFull(e) => "the disk is full; free some space",
        _ => $"{SafeText.OneLine(e.Message)}; give a file in a folder that you may write to",
    };
}
