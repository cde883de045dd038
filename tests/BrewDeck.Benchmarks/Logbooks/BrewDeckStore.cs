using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;

namespace BrewDeck.Benchmarks.Logbooks;

/// <summary>The program's own logbook.</summary>
internal sealed class BrewDeckStore(string folder) : IDisposable
{
    private const string Name = "brewdeck";

    private readonly Journal _journal = Open(folder);

    public int Add(IReadOnlyList<TapeLine> lines) => _journal.Adopt(lines);

    public void Dispose() => _journal.Dispose();

    public static void Measure(string folder)
    {
        var heads = Timing.Print(Name, "open and list", () =>
        {
            using var journal = Open(folder);
            return LogPages.List(journal.List(), LogFormat.Text).Count();
        });
        using var open = Open(folder);
        var half = open.List().Count / 2;
        var (read, folded, shown) = (half, 0, half);
        Timing.Print(Name, "a batch's events read", () => open.Read(read++).Count);
        List<IReadOnlyList<RunEvent>> batches = [.. Enumerable.Range(half, 10).Select(open.Read)];
        Timing.Print(Name, "its model folded", () => RunFold.Of(batches[folded++]).Count);
        Timing.Print(Name, "a batch's page, both with its words", () => Page(open, shown++));
        var all = open.List();
        Timing.Print(Name, "search as typed", () => BatchSearch.Of(all, "porter 2020-0").Count());
        Timing.PrintSizes(Name, Directory.EnumerateFiles(Path(folder)));
        Console.WriteLine($"| {Name} | batches listed | {heads - 1} | | |");
    }

    /// <summary>The first time each batch is read and folded.</summary>
    public static void MeasureTrends(string folder)
    {
        using var open = Open(folder);
        Timing.Print(Name, "trends", () => Trends(folder, open));
    }

    private static int Trends(string folder, Journal journal)
    {
        var disk = new FolderDisk(Path(folder));
        var cache = new FigureCache(disk);
        List<(BatchHead, double?[])> rows = [.. journal.List().Reverse().Select(h => (h, cache.Of(h, journal)))];
        cache.Save();
        return TrendPages.Text(rows).Count();
    }

    private static int Page(Journal journal, int number)
    {
        var events = journal.Read(number);
        return BatchText.Lines(events, RunFold.Of(events), Notation.Metric).Length;
    }

    private static Journal Open(string folder) => Journal.Open(new FolderDisk(Path(folder)), Workplace.StatusOf);

    private static string Path(string folder) => System.IO.Path.Combine(folder, Name);
}
