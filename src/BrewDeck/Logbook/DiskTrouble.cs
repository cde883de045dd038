using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>What went wrong with a file, as one line that says what would be right.</summary>
internal static class DiskTrouble
{
    /// <exception cref="LogbookException">In place of whatever the file system threw.</exception>
    public static void Explain(string path, Action act) => Explain(path, () =>
    {
        act();
        return true;
    });

    /// <exception cref="LogbookException">In place of whatever the file system threw.</exception>
    public static T Explain<T>(string path, Func<T> act)
    {
        try
        {
            return act();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or System.Security.SecurityException)
        {
            throw new LogbookException($"{path}: {Word(path, e)}", e);
        }
        catch (FormatException e)
        {
            throw new LogbookException($"{path}: {e.Message}", e);
        }
    }

    /// <summary>Another program has the logbook open.</summary>
    public static bool IsInUse(LogbookException e) => e.InnerException is IOException cause && IsLocked(cause);

    public static bool IsFull(Exception e) => Code(e) is 28 or 122 or 0x70 or 0x27; // ENOSPC, EDQUOT; ERROR_DISK_FULL, ERROR_HANDLE_DISK_FULL

    private static string Word(string path, Exception e) => e switch
    {
        _ when IsFull(e) => "the disk is full; free some space",
        _ when IsLocked(e) => "another brewdeck has this logbook open; close it, or give --logbook PATH",
        _ when File.Exists(path) => "is a file; a logbook is a folder, give one with --logbook PATH",
        UnauthorizedAccessException => "may not be written; change its permissions, or give --logbook PATH",
        DirectoryNotFoundException => "the folder above it is missing; make it, or give --logbook PATH",
        _ => $"cannot be used ({SafeText.OneLine(e.Message)}); give another with --logbook PATH",
    };

    // EAGAIN of flock on Linux and on macOS; ERROR_SHARING_VIOLATION, ERROR_LOCK_VIOLATION. IOException itself only:
    // a missing file is one of its subclasses and has codes of its own
    private static bool IsLocked(Exception e) =>
        e.GetType() == typeof(IOException)
        && (OperatingSystem.IsWindows() ? Code(e) is 0x20 or 0x21 : Code(e) is 11 or 35);

    private static int Code(Exception e) => e is IOException ? e.HResult & 0xFFFF : 0;
}
