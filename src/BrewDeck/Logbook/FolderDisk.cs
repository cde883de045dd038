namespace BrewDeck.Logbook;

/// <summary>
/// A folder that only its owner can look into. The database is opened by one process alone, and so keeps the folder; a tape may be read
/// by others while it is written, for a backup while the day runs.
/// </summary>
internal sealed class FolderDisk : LogbookDisk
{
    private const UnixFileMode OwnerFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <param name="path">Made when it is missing.</param>
    /// <exception cref="Deck.LogbookException">It cannot be made, or is no folder.</exception>
    public FolderDisk(string path)
    {
        Path = path;
        DiskTrouble.Explain(path, () => MakeFolder(path));
    }

    public override string Path { get; }

    public override Stream Open(string name)
    {
        var path = At(name);
        var made = !File.Exists(path);
        var options = new FileStreamOptions
        {
            Mode = FileMode.OpenOrCreate,
            Access = FileAccess.ReadWrite,
            Share = Tape.NumberOf(name) is null ? FileShare.None : FileShare.Read,
            BufferSize = 0,
        };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = OwnerFile;
        var stream = new FlushedFile(path, options);
        if (made)
            FolderSync.Flush(Path);
        return stream;
    }

    public override byte[] ReadAll(string name)
    {
        try
        {
            using var stream = new FileStream(At(name), FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var content = new byte[stream.Length];
            return content.AsSpan(0, stream.ReadAtLeast(content, content.Length, throwOnEndOfStream: false)).ToArray();
        }
        catch (FileNotFoundException)
        {
            return [];
        }
    }

    public override IReadOnlyDictionary<string, long> Files() =>
        new DirectoryInfo(Path).EnumerateFiles().ToDictionary(f => f.Name, f => f.Length, StringComparer.Ordinal);

    public override void Delete(string name) => File.Delete(At(name));

    public override void Move(string from, string to)
    {
        File.Move(At(from), At(to), overwrite: true);
        FolderSync.Flush(Path);
    }

    private static void MakeFolder(string path)
    {
        if (Directory.Exists(path))
            return;
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(path);
        else
            Directory.CreateDirectory(path, OwnerFile | UnixFileMode.UserExecute);
        if (System.IO.Path.GetDirectoryName(path) is { Length: > 0 } parent)
            FolderSync.Flush(parent);
    }

    private string At(string name) => System.IO.Path.Combine(Path, name);

    private sealed class FlushedFile(string path, FileStreamOptions options) : FileStream(path, options)
    {
        /// <summary>A plain FileStream hands its bytes to the system here and does not wait for the disk.</summary>
        public override void Flush() => Flush(flushToDisk: true);
    }
}
