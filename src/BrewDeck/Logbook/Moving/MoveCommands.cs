using System.Text;
using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Logbook.Moving;

/// <summary>Backup, restore, merge, export and import of a whole logbook. Exit codes as in <see cref="LogCommands"/>.</summary>
/// <param name="folder">The logbook; may be missing where something is brought in.</param>
internal sealed class MoveCommands(
    string folder, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf, TextWriter output, TextWriter errors)
{
    private const int Done = 0;
    private const int Refused = 1;
    private readonly ErrorLines _lines = new(errors);

    /// <summary>Also while a day runs in another brewdeck.</summary>
    public int Backup(string path) => _lines.Guarded(() =>
    {
        RequireLogbook(folder);
        RequireEmpty(path, "a backup needs a new or empty folder; give another");
        var (batches, faults) = LogBackup.Write(new FolderDisk(folder), new FolderDisk(path));
        var files = Copy(folder, path);
        foreach (var fault in faults)
            _lines.Say(fault);
        output.WriteLine($"backed up: batches {batches}, profile files {files}");
        return faults.Count == 0 ? Done : Refused;
    });

    public int Restore(string path) => _lines.Guarded(() =>
    {
        RequireLogbook(path);
        if (Directory.Exists(folder) && new FolderDisk(folder).Tapes().Any())
            throw new LogbookException($"{folder}: has batches already; \"brewdeck log merge {path}\" takes in what is missing");
        var batches = WholeBatches(path);
        using (var journal = Open())
            output.WriteLine($"restored: batches {new LogMerge(journal).Take(batches).Added}, profile files {Copy(path, folder)}");
        return Done;
    });

    public int Merge(string other) => _lines.Guarded(() =>
    {
        RequireLogbook(other);
        if (Path.GetFullPath(other) == Path.GetFullPath(folder))
            throw new LogbookException($"{other}: is this logbook itself; give another");
        var batches = WholeBatches(other);
        using (var journal = Open())
            Tell(new LogMerge(journal).Take(batches));
        Copy(other, folder);
        return Done;
    });

    /// <param name="file">Null: to the output.</param>
    public int ExportAll(string? file) => _lines.Guarded(() =>
    {
        RequireLogbook(folder);
        using var logbook = ILogReader.Open(() => new FolderDisk(folder), statusOf);
        foreach (var notice in logbook.Notices)
            _lines.Say(notice);
        if (file is null)
            LogArchive.Write(output, logbook, folder);
        else
            DiskTrouble.Explain(file, () =>
            {
                using var writer = new StreamWriter(file, append: false, new UTF8Encoding(false));
                LogArchive.Write(writer, logbook, folder);
            });
        return Done;
    });

    /// <summary>Into an empty logbook as it was; into another as a merge.</summary>
    public int Import(string file) => _lines.Guarded(() =>
    {
        var content = DiskTrouble.Explain(file, () =>
        {
            using var reader = new StreamReader(file);
            return LogArchive.Read(reader, file);
        });
        using (var journal = Open())
            Tell(new LogMerge(journal).Take(content.Batches));
        foreach (var (name, text) in content.Files)
            Put(folder, name, Encoding.UTF8.GetBytes(text));
        return Done;
    });

    /// <summary>Read once before any is taken, so that damage is met first, and again one by one, so that they need not fit in memory.</summary>
    private static IEnumerable<(int Number, IReadOnlyList<TapeLine> Lines)> WholeBatches(string path)
    {
        var batches = LogBackup.Batches(new FolderDisk(path));
        foreach (var (_, lines) in batches)
            _ = lines[0].ToEvent();
        return batches;
    }

    private void Tell(MergeReport report) => output.WriteLine(
        $"batches added {report.Added}, continued {report.Extended}, here already {report.Same}"
        + (report.Diverged > 0 ? $"; {report.Diverged} of the added had continued differently here: both are kept" : ""));

    private Journal Open() => Journal.Open(new FolderDisk(folder), statusOf);

    private int Copy(string from, string to)
    {
        var count = 0;
        foreach (var name in OwnFiles.In(from))
        {
            Put(to, name, DiskTrouble.Explain(Path.Combine(from, name), () => File.ReadAllBytes(Path.Combine(from, name))));
            count++;
        }

        return count;
    }

    private void Put(string to, string name, byte[] content)
    {
        var path = Path.Combine(to, name);
        if (!DiskTrouble.Explain(path, () => OwnFiles.Put(to, name, content)))
            _lines.Say($"{path}: differs from the one that came in; it is left as it is");
    }

    private static void RequireLogbook(string path)
    {
        if (!Directory.Exists(path))
            throw new LogbookException($"{path}: there is no such folder; give that of a logbook or a backup");
    }

    private static void RequireEmpty(string path, string otherwise)
    {
        if (File.Exists(path) || (Directory.Exists(path) && Directory.EnumerateFileSystemEntries(path).Any()))
            throw new LogbookException($"{path}: {otherwise}");
    }
}
