using System.Runtime.InteropServices;

namespace BrewDeck.Logbook;

/// <summary>Waits until a folder's own entries are on disk: a new file is lost with the power otherwise. Windows needs no such call.</summary>
internal static partial class FolderSync
{
    private const int ReadOnly = 0;

    public static void Flush(string folder)
    {
        if (OperatingSystem.IsWindows())
            return;
        var handle = OpenFolder(folder, ReadOnly);
        if (handle < 0)
            return; // a folder that may be written but not read: the file system's own order has to do
        _ = Sync(handle);
        _ = Close(handle);
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int OpenFolder(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    private static partial int Sync(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int handle);
}
