using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Profiles;

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
        Timing.Print(Name, "its model folded", () => RunFold.RecordOf(batches[folded++]).Count);
        Timing.Print(Name, "a batch's page, both with its words", () => Page(open, shown++));
        var all = open.List();
        Timing.Print(Name, "search as typed", () => BatchSearch.Of(all, "porter 2020-0", Notation.Metric).Count());
        Timing.PrintPeak(Name);
        Timing.PrintSizes(Name, Directory.EnumerateFiles(Path(folder)));
        Console.WriteLine($"| {Name} | batches listed | {heads - 1} | | |");
    }

    public static void MeasureTrends(string folder)
    {
        Timing.Print(Name, "trends, opening the logbook too", () =>
        {
            using var open = Open(folder);
            return Trends(open);
        });
        using var journal = Open(folder);
        Timing.Print(Name, "trends", () => Trends(journal));
        Timing.PrintPeak(Name + ", trends");
    }

    /// <summary>A logbook that no figures were kept of: each batch is read once.</summary>
    public static void MeasureFirstTrends(string folder)
    {
        var kept = System.IO.Path.Combine(Path(folder), FigureCache.Name);
        File.Move(kept, kept + ".kept", overwrite: true);
        using (var journal = Open(folder))
        {
            var took = System.Diagnostics.Stopwatch.StartNew();
            Trends(journal);
            Console.WriteLine($"| {Name} | trends of which no figures were kept | {took.Elapsed.TotalMilliseconds:0.0} | | |");
        }

        File.Move(kept + ".kept", kept, overwrite: true);
        Timing.PrintPeak(Name + ", first trends");
    }

    /// <summary>The deck's own pages by keys, drawn as screens.</summary>
    public static void MeasureSession(string folder)
    {
        using var journal = Open(folder);
        var now = DateTimeOffset.UnixEpoch.AddYears(60);
        var profiles = ProfileFolder.BesideProgram("");
        Session Begin() => new(new SessionPorts(journal, profiles) { Figures = journal.FiguresOf, NextDues = journal.NextDuesOf }, new SessionSettings { DoubleStrike = TimeSpan.Zero, LeaveAlone = TimeSpan.Zero }, now);
        var keys = new DeckKeys(Begin, now);
        Timing.Print(Name, "deck: opening screen", () => keys.Begin());
        keys.Pick("Batches");
        keys.Back();
        Timing.Print(Name, "deck: list of batches", () => keys.Pick("Batches") + keys.Back());
        keys.Pick("Batches");
        Timing.Print(Name, "deck: down one row", () => keys.Named(KeyName.Down));
        keys.Letter('s');
        var letters = 0;
        Timing.Print(Name, "deck: a letter of a search", () => keys.Typed("porter 2020-0"[..(letters++ % 13 + 1)]));
        keys.Named(KeyName.Escape);
        Timing.Print(Name, "deck: a batch's page", () =>
        {
            var seen = keys.Named(KeyName.Enter);
            keys.Letter('q');
            return seen + keys.Named(KeyName.Down);
        });
        Timing.Print(Name, "deck: trends", () => keys.Letter('t') + keys.Letter('q'));
        Timing.PrintPeak(Name + ", deck");
    }

    private static int Trends(Journal journal)
    {
        List<BatchHead> heads = [.. journal.List().Reverse()];
        return TrendPages.Text([.. heads.Zip(journal.FiguresOf(heads))], Notation.Metric).Count();
    }

    private static int Page(Journal journal, int number)
    {
        var events = journal.Read(number);
        return BatchText.Lines(events, RunFold.RecordOf(events), Notation.Metric).Length;
    }

    private static Journal Open(string folder) => Journal.Open(new FolderDisk(Path(folder)), Workplace.StatusOf);

    private static string Path(string folder) => System.IO.Path.Combine(folder, Name);
}
