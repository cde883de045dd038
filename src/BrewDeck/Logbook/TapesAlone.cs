using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>
/// A logbook that another brewdeck has open, read along: the tapes are the truth and only grow, the database is left to who has it. An
/// entry that is being written just now is not there yet.
/// </summary>
internal sealed class TapesAlone : ILogReader
{
    private readonly string _folder;
    private readonly Lazy<FigureCache> _figures;
    private readonly SortedDictionary<int, TapeScan> _scans = [];
    private readonly List<BatchHead> _heads = [];
    private readonly List<string> _notices = [];

    /// <param name="statusOf">The fold's word on where a run stands.</param>
    /// <exception cref="LogbookException">The folder cannot be read.</exception>
    public TapesAlone(LogbookDisk disk, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf)
    {
        _folder = disk.Path;
        _figures = new(() => new FigureCache(disk));
        DiskTrouble.Explain(_folder, () =>
        {
            foreach (var (batch, _) in disk.Tapes().ToList())
                Take(batch, Tape.Scan(disk, batch), statusOf);
        });
    }

    public IReadOnlyList<string> Notices => _notices;

    public IReadOnlyList<BatchHead> List() => [.. BatchHead.NewestFirst(_heads)];

    public IReadOnlyList<RunEvent> Read(int batch) => [.. Lines(batch).Select(line => line.ToEvent())];

    public IReadOnlyList<TapeLine> Lines(int batch) => _scans[batch].Lines;

    /// <summary>What had to be looked at anew is not kept: the file of figures is left to who has the logbook too.</summary>
    public IReadOnlyList<double?[]> FiguresOf(IReadOnlyList<BatchHead> heads) => [.. heads.Select(h => _figures.Value.Of(h, () => Read(h.Number)).Values)];

    public void Dispose()
    {
    }

    private void Take(int batch, TapeScan scan, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf)
    {
        if (scan.Newer || (scan.Fault is not null && !scan.Torn))
            _notices.Add($"{Path.Combine(_folder, Tape.NameOf(batch))}:{scan.Lines.Count + 1}: cannot be read from here on; close the other brewdeck and look again");
        try
        {
            List<RunEvent> events = [.. scan.Lines.Select(line => line.ToEvent())];
            if (events is not [BatchOpened opened, ..])
                return;
            _heads.Add(BatchHeader.Of(batch, opened, statusOf(events), scan.Lines[^1], scan.GoodBytes).Head);
            _scans[batch] = scan;
        }
        catch (FormatException e)
        {
            _notices.Add($"{Path.Combine(_folder, Tape.NameOf(batch))}: {e.Message}");
        }
    }
}
