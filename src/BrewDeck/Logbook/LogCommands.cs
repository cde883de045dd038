using System.Text;
using BrewDeck.Core.Running;
using BrewDeck.Deck;

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
    private const int Trouble = 4;
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(30);

    /// <param name="rehearsed">Rehearsed batches too.</param>
    public int List(LogFormat format, bool rehearsed) => WithJournal(journal =>
    {
        Write(LogPages.List([.. journal.List().Where(head => rehearsed || !head.Rehearsed)], format), format);
        return Done;
    });

    public int Show(int batch) => Export(batch, LogFormat.Text);

    /// <summary>JSON is the tape as it is kept, byte for byte.</summary>
    public int Export(int batch, LogFormat format) => WithJournal(journal =>
    {
        if (journal.List().FirstOrDefault(head => head.Number == batch) is not { } head)
            return Refuse(journal, batch);
        Write(format == LogFormat.Json ? TapeOf(journal, batch) : LogPages.Batch(head, journal.Read(batch), format), format);
        return Done;
    });

    public int Verify() => Guarded(() =>
    {
        var report = LogVerify.Of(disk(), Limit);
        foreach (var fault in report.Faults)
            Say(fault);
        output.WriteLine($"checked: batches {report.Batches}, events {report.Events}; "
            + (report.Faults.Count == 0
                ? "all whole"
                : $"faults {report.Faults.Count}; \"brewdeck log repair\" mends what has a second copy"));
        return report.Faults.Count == 0 ? Done : Refused;
    });

    public int Repair() => Guarded(() =>
    {
        var place = disk();
        var done = LogRepair.Run(place, statusOf, Limit);
        foreach (var line in done)
            output.WriteLine(line);
        var left = LogVerify.Of(place, Limit).Faults;
        foreach (var fault in left)
            Say(fault);
        output.WriteLine(left.Count > 0 ? $"faults left: {left.Count}" : done.Count > 0 ? "all whole again" : "all whole, nothing to mend");
        return left.Count == 0 ? Done : Refused;
    });

    private static IEnumerable<string> TapeOf(Journal journal, int batch) =>
        journal.Lines(batch).Select(line => Encoding.ASCII.GetString(line.ToUtf8()).TrimEnd('\n'));

    private int WithJournal(Func<Journal, int> act) => Guarded(() =>
    {
        using var journal = Journal.Open(disk(), statusOf);
        foreach (var notice in journal.Notices)
            Say(notice);
        return act(journal);
    });

    private int Guarded(Func<int> act)
    {
        try
        {
            return act();
        }
        catch (LogbookException e)
        {
            Say(e.Message);
            return Trouble;
        }
    }

    private int Refuse(Journal journal, int batch)
    {
        var all = journal.List();
        Say(all.Count == 0
            ? $"batch {batch}: the logbook is empty"
            : $"batch {batch}: is not in the logbook, which has {all[^1].Number} to {all[0].Number}");
        return Refused;
    }

    private void Write(IEnumerable<string> lines, LogFormat format)
    {
        var end = format == LogFormat.Csv ? "\r\n" : "\n";
        foreach (var line in lines)
        {
            output.Write(line);
            output.Write(end);
        }
    }

    private void Say(string what) => errors.WriteLine($"brewdeck: {SafeText.OneLine(what)}");
}
