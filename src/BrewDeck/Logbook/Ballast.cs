namespace BrewDeck.Logbook;

/// <summary>
/// A megabyte held in reserve: when the disk is full it is let go, and the day goes on for some thousands of events while the
/// brewer reads the word about it.
/// </summary>
internal static class Ballast
{
    private const string Name = "ballast";
    private const int Bytes = 1 << 20;

    /// <summary>Puts it in place when there is room for it.</summary>
    public static void Keep(LogbookDisk disk, IReadOnlyDictionary<string, long> files)
    {
        if (files.GetValueOrDefault(Name) == Bytes)
            return;
        try
        {
            using var stream = disk.Open(Name);
            stream.Write(new byte[Bytes]);
            stream.Flush();
        }
        catch (IOException)
        {
            Release(disk);
        }
    }

    /// <returns>True when there was some.</returns>
    public static bool Release(LogbookDisk disk)
    {
        try
        {
            var held = disk.Files().ContainsKey(Name);
            disk.Delete(Name);
            return held;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
