using System.Text;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Profiles;
using BrewDeck.Reports;

namespace BrewDeck.Logbook;

/// <summary>
/// What <c>brewdeck log</c> does. Each returns the exit code: 0 done, 1 refused or the check failed, 4 logbook trouble; trouble is
/// one line on the error stream.
/// </summary>
/// <param name="disk">Opens the logbook's folder; called by each command.</param>
/// <param name="statusOf">The fold's word on where a run stands.</param>
internal sealed class LogCommands(
    Func<LogbookDisk> disk, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf, TextWriter output, TextWriter errors)
{
    private const int Done = 0;
    private const int Refused = 1;
    private readonly ErrorLines _lines = new(errors);
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(30);

    /// <summary>How numbers and local times are written in the batch record.</summary>
    public Notation Notation { get; init; } = Notation.Metric;

    /// <param name="rehearsed">Rehearsed batches too.</param>
    /// <param name="search">Words that must stand in it; empty: all.</param>
    public int List(LogFormat format, bool rehearsed, string search = "") => WithReader(journal =>
    {
        var all = journal.List();
        BatchHead[] found = [.. BatchSearch.Of([.. all.Where(head => rehearsed || !head.Rehearsed)], search, Notation)];
        if (found.Length == 0 && format == LogFormat.Text)
            output.WriteLine(NoneFound.Of(all, rehearsed, search, Notation));
        else
            output.Write(Text(LogPages.List(found, format), format));
        return Done;
    });

    /// <summary>What the figures of the batches do over time; the first time each batch is read once.</summary>
    /// <param name="search">Which batches.</param>
    public int Trends(LogFormat format, bool rehearsed, string search) => WithReader(journal =>
    {
        var complete = journal.List().Where(h => h.Status == RunStatus.Complete).Reverse().ToList();
        BatchHead[] found = [.. BatchSearch.Of([.. complete.Where(h => rehearsed || !h.Rehearsed)], search, Notation)];
        if (found.Length == 0 && format == LogFormat.Text)
        {
            output.WriteLine(NoneFound.Of(complete, rehearsed, search, Notation));
            return Done;
        }
        var rows = found.Zip(journal.FiguresOf(found)).ToList();
        output.Write(Text(format == LogFormat.Text ? TrendPages.Text(rows, Notation) : TrendPages.Csv(rows), format));
        return Done;
    });

    /// <summary>The whole batch record as text.</summary>
    public int Show(int batch) => WithRecord(batch, source => output.Write(Text(RecordText.Of(BatchRecord.Of(source)), LogFormat.Text)));

    /// <summary>The batch record as a page.</summary>
    /// <param name="file">Null: to the output.</param>
    public int Report(int batch, string? file) => WithRecord(batch, source => WriteOut(file, ReportPage.Of(source)));

    /// <summary>A recipe of what was really brewed, in the open BeerJSON standard; what it has no place for is told on the error stream.</summary>
    public int ExportRecipe(int batch, string? file) => WithRecord(batch, source =>
    {
        var document = BeerJsonWriter.Write(BrewedRecipe.Of(source));
        foreach (var note in document.Notes)
            _lines.Say(note);
        WriteOut(file, JsonAscii.Of(document.Text));
    });

    /// <summary>JSON is the tape as it is kept, byte for byte.</summary>
    public int Export(int batch, LogFormat format, string? file = null) => WithBatch(batch, (journal, head) =>
    {
        WriteOut(file, Text(format == LogFormat.Json ? TapeOf(journal, batch) : LogPages.Batch(head, journal.Read(batch), format), format));
        return Done;
    });

    public int Verify() => _lines.Guarded(() =>
    {
        var report = Checked();
        foreach (var fault in report.Faults)
            _lines.Say(fault);
        output.WriteLine($"checked: batches {report.Batches}, events {report.Events}; "
            + (report.Faults.Count == 0
                ? report.TapesAlone ? "all whole; an open deck has their copies, which were not looked at" : "all whole"
                : $"faults {report.Faults.Count}; \"brewdeck log repair\" mends what has a second copy"));
        return report.Faults.Count == 0 ? Done : Refused;
    });

    private VerifyReport Checked()
    {
        try
        {
            return LogVerify.Of(disk(), Limit);
        }
        catch (LogbookException e) when (DiskTrouble.IsInUse(e))
        {
            return LogVerify.OfTapes(disk());
        }
    }

    public int Repair() => _lines.Guarded(() =>
    {
        var place = disk();
        var done = LogRepair.Run(place, statusOf, Limit);
        foreach (var line in done)
            output.WriteLine(line);
        var left = LogVerify.Of(place, Limit).Faults;
        foreach (var fault in left)
            _lines.Say(fault);
        output.WriteLine(left.Count > 0 ? $"faults left: {left.Count}" : done.Count > 0 ? "all whole again" : "all whole, nothing to mend");
        return left.Count == 0 ? Done : Refused;
    });

    private static IEnumerable<string> TapeOf(ILogReader journal, int batch) =>
        journal.Lines(batch).Select(line => Encoding.ASCII.GetString(line.ToUtf8()).TrimEnd('\n'));

    private int WithRecord(int batch, Action<RecordSource> act) => WithBatch(batch, (journal, _) =>
    {
        var lines = journal.Lines(batch);
        try
        {
            act(RecordSource.Of(batch, lines, Notation));
            return Done;
        }
        // a tape that is whole can hold a plan that no planner drew: a kettle of no litres, a step without its vessel. What the model then
        // throws is anything
        catch (Exception e) when (e is not (LogbookException or ProfileException or IOException))
        {
            throw new LogbookException($"batch {batch}: this version cannot follow its plan ({SafeText.OneLine(e.Message)}); "
                + $"\"brewdeck log export {batch}\" gives its events as they are kept", e);
        }
    });

    private int WithBatch(int batch, Func<ILogReader, BatchHead, int> act) => WithReader(journal =>
        journal.List().FirstOrDefault(head => head.Number == batch) is { } head ? act(journal, head) : Refuse(journal, batch));

    private int WithReader(Func<ILogReader, int> act) => _lines.Guarded(() =>
    {
        using var journal = ILogReader.Open(disk, statusOf);
        foreach (var notice in journal.Notices)
            _lines.Say(notice);
        return act(journal);
    });

    private int Refuse(ILogReader journal, int batch)
    {
        var all = journal.List();
        _lines.Say(all.Count == 0
            ? $"batch {batch}: the logbook is empty"
            : $"batch {batch}: is not in the logbook, which has {all[^1].Number} to {all[0].Number}");
        return Refused;
    }

    private void WriteOut(string? file, string text)
    {
        if (file is null)
            output.Write(text);
        else
            OutputFile.Write(file, text);
    }

    private static string Text(IEnumerable<string> lines, LogFormat format)
    {
        var end = format == LogFormat.Csv ? "\r\n" : "\n";
        return string.Concat(lines.Select(line => line + end));
    }
}
