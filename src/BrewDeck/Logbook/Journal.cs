using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>
/// The logbook of one folder, for one process at a time. Each batch's tape is the truth: an event is a line on it, flushed before
/// it shows as accepted. The database follows, in one transaction, when the status of the run has moved, after some events, when the batch
/// is opened and when the journal is closed; whatever it lacks after a crash it takes from the tapes at the next opening.
/// Measured in one run, p50 of an event against a raw append and fsync of 0.22 ms: this 1.2, the database with its two-phase confirm
/// for each event 3.4, tape and database both for each event 4.6. The header's count is not kept for each event for the same
/// reason: between two moves of the status the open tape knows it. The two-phase confirm stays under the database, where it costs
/// little now: without it a power cut damages the file and each such start would have to make it again from all tapes.
/// </summary>
internal sealed class Journal : IBatchStore, ILogReader
{
    /// <summary>The database, from which a lost tape can be made again, is never farther behind than this; and it has each status at once.</summary>
    private const int MostBehind = 8;

    private readonly Lock _gate = new();
    private readonly LogbookDisk _disk;
    private readonly BatchDatabase _database;
    private readonly Func<IReadOnlyList<RunEvent>, RunStatus> _statusOf;
    private readonly SortedDictionary<int, BatchHeader> _headers = [];
    private readonly SortedDictionary<int, LiveBatch> _live = [];
    private readonly List<string> _notices = [];
    private FigureCache? _figures;
    private int _lastNumber;

    private Journal(LogbookDisk disk, BatchDatabase database, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf) =>
        (_disk, _database, _statusOf) = (disk, database, statusOf);

    /// <summary>What the brewer should know: bytes that a power cut left, a full disk, a newer program's logbook. Each one line.</summary>
    public IReadOnlyList<string> Notices
    {
        get
        {
            lock (_gate)
                return [.. _notices];
        }
    }

    /// <summary>Written by a newer program: it can be read, and nothing is added.</summary>
    public bool ReadOnly { get; private set; }

    /// <summary>The database could not be written: the tapes alone are kept until the next opening.</summary>
    public bool DatabaseLost { get; private set; }

    /// <param name="statusOf">The fold's word on where a run stands.</param>
    /// <exception cref="LogbookException">In use, not writable or damaged.</exception>
    public static Journal Open(LogbookDisk disk, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf)
    {
        var journal = new Journal(disk, BatchDatabase.Open(disk), statusOf);
        try
        {
            DiskTrouble.Explain(disk.Path, journal.CatchUp);
            return journal;
        }
        catch
        {
            journal.Dispose();
            throw;
        }
    }

    public IReadOnlyList<BatchHead> List()
    {
        lock (_gate)
            return [.. BatchHead.NewestFirst(_headers.Values.Select(h => Current(h).Head))];
    }

    public int Open(BatchOpened opened)
    {
        lock (_gate)
        {
            RequireWritable();
            var number = _lastNumber + 1;
            var live = Explain(number, () => new LiveBatch(number, Tape.Open(_disk, number, TapeScan.Of([])), [], followed: 0));
            try
            {
                Keep(live, opened);
            }
            catch
            {
                live.Dispose();
                _disk.Delete(Tape.NameOf(number));
                throw;
            }

            _live[number] = live;
            _lastNumber = number;
            Follow(live);
            return number;
        }
    }

    public void Append(int batch, RunEvent happened)
    {
        lock (_gate)
        {
            RequireWritable();
            var live = Live(batch);
            Keep(live, happened);
            var known = _headers[batch].Head.Status;
            var status = BatchStatus.MayMove(happened) ? _statusOf(live.Events) : known;
            if (status != known || live.Behind >= MostBehind)
                Follow(live, status);
        }
    }

    public IReadOnlyList<RunEvent> Read(int batch)
    {
        lock (_gate)
        {
            if (_live.TryGetValue(batch, out var live))
                return [.. live.Events];
        }

        var lines = Lines(batch);
        return Explain(batch, () => lines.Select(line => line.ToEvent()).ToList());
    }

    /// <summary>A batch's events as they are kept.</summary>
    /// <exception cref="LogbookException">There is no such batch, or its record is damaged.</exception>
    public IReadOnlyList<TapeLine> Lines(int batch)
    {
        lock (_gate)
        {
            if (_live.TryGetValue(batch, out var live))
                return [.. live.Lines];
            var scan = Explain(batch, () => Tape.Scan(_disk, batch));
            Require(scan, batch);
            return scan.Lines;
        }
    }

    /// <summary>Takes in a whole batch from elsewhere as a new one; on disk when it returns.</summary>
    /// <param name="wanted">Its number, when it is free; null: the next.</param>
    /// <exception cref="LogbookException">It could not be kept, or a line is not an event that this version knows.</exception>
    public int Adopt(IReadOnlyList<TapeLine> lines, int? wanted = null)
    {
        lock (_gate)
        {
            var number = wanted is { } free and > 0 && !_headers.ContainsKey(free) ? free : _lastNumber + 1;
            Take(number, lines, known: 0);
            _lastNumber = Math.Max(_lastNumber, number);
            return number;
        }
    }

    /// <summary>Takes in the events that a batch has got elsewhere.</summary>
    /// <param name="lines">The whole batch: what is here is the beginning of it.</param>
    /// <exception cref="LogbookException">It could not be kept, or a line is not an event that this version knows.</exception>
    public void Extend(int batch, IReadOnlyList<TapeLine> lines)
    {
        lock (_gate)
        {
            if (_live.Remove(batch, out var live))
                live.Dispose();
            Take(batch, lines, _headers[batch].Head.Events);
        }
    }

    /// <summary>The followed figures of batches, in the order of <see cref="Deck.Trends.BatchFigures.All"/>; what was looked at anew is kept.</summary>
    /// <exception cref="LogbookException">A batch cannot be read.</exception>
    public IReadOnlyList<double?[]> FiguresOf(IReadOnlyList<BatchHead> heads) => [.. Looked(heads).Select(c => c.Values)];

    /// <summary>When something is to be done next for each batch, Unix ms; null: nothing.</summary>
    /// <exception cref="LogbookException">A batch cannot be read.</exception>
    public IReadOnlyList<long?> NextDuesOf(IReadOnlyList<BatchHead> heads) => [.. Looked(heads).Select(c => c.NextDueMs)];

    public void Dispose()
    {
        lock (_gate)
        {
            foreach (var live in _live.Values.ToList())
                Follow(live);
            foreach (var live in _live.Values)
                live.Dispose();
            _live.Clear();
            CloseDatabase();
            KeepFigures();
        }
    }

    private List<CachedFigures> Looked(IReadOnlyList<BatchHead> heads)
    {
        lock (_gate)
        {
            List<CachedFigures> looked = [.. heads.Select(h => Figures.Of(h, () => Read(h.Number)))];
            KeepFigures();
            return looked;
        }
    }

    private FigureCache Figures => _figures ??= new FigureCache(_disk);

    /// <summary>They can be had again from the tapes: no trouble of the disk is worth a word.</summary>
    private void KeepFigures()
    {
        if (ReadOnly)
            return;
        try
        {
            _figures?.Save();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
        }
    }

    private void Take(int number, IReadOnlyList<TapeLine> lines, int known)
    {
        RequireWritable();
        Explain(number, () =>
        {
            foreach (var line in lines)
                line.ToEvent(); // refused before anything is written
            byte[] text = [.. lines.SelectMany(line => line.ToUtf8())];
            _disk.Put(Tape.NameOf(number), text);
            using var live = new LiveBatch(number, Tape.Open(_disk, number, TapeScan.Of(text)), lines, known);
            Follow(live);
            return true;
        });
    }

    /// <summary>Takes into the database what the tapes have beyond it. A tape of the length that its header knows is not read.</summary>
    private void CatchUp()
    {
        foreach (var header in _database.Headers())
            _headers[header.Number] = header;
        if (_database.Newer)
            GoReadOnly("the logbook");
        var tapes = _disk.Tapes().ToList();
        _lastNumber = _headers.Keys.Concat(tapes.Select(t => t.Batch)).DefaultIfEmpty().Max();
        foreach (var (batch, bytes) in tapes)
        {
            if (!ReadOnly && _headers.GetValueOrDefault(batch)?.TapeBytes != bytes)
                CatchUp(batch);
        }

        foreach (var missing in _headers.Keys.Except(tapes.Select(t => t.Batch)))
            Notice(missing, "its tape is missing; \"brewdeck log repair\" writes it again from the database");
        if (!ReadOnly)
            Ballast.Keep(_disk, _disk.Files());
    }

    private void CatchUp(int batch)
    {
        var scan = Tape.Scan(_disk, batch);
        var known = _headers.GetValueOrDefault(batch)?.Head.Events ?? 0;
        if (scan.Newer)
            GoReadOnly($"batch {batch}");
        else if (scan.Lines.Count < known || (scan.Fault is not null && !scan.Torn))
            Notice(batch, $"{Fault(scan)}; \"brewdeck log repair\" mends it");
        else
            TakeIn(batch, scan, known);
    }

    private void TakeIn(int batch, TapeScan scan, int known)
    {
        if (scan.Torn)
            SetAside(batch, scan);
        if (scan.Lines.Count == 0)
        {
            _disk.Delete(Tape.NameOf(batch));
            return;
        }

        try
        {
            using var live = new LiveBatch(batch, Tape.Open(_disk, batch, scan), scan.Lines, known);
            Follow(live);
        }
        catch (FormatException e)
        {
            Notice(batch, e.Message);
        }
    }

    /// <summary>
    /// The last write before a power cut did not come down whole: it was never acknowledged. It is kept beside the tape, because
    /// a damaged disk can look the same.
    /// </summary>
    private void SetAside(int batch, TapeScan scan)
    {
        var name = Tape.NameOf(batch);
        var torn = _disk.ReadAll(name).AsSpan((int)scan.GoodBytes);
        using (var aside = _disk.Open(name + ".torn"))
        {
            aside.Seek(0, SeekOrigin.End);
            aside.Write(torn);
            aside.Flush();
        }

        using var tape = _disk.Open(name);
        tape.SetLength(scan.GoodBytes);
        tape.Flush();
        Notice(batch, $"{torn.Length} bytes of an entry that was never confirmed were set aside");
    }

    private LiveBatch Live(int batch)
    {
        if (_live.TryGetValue(batch, out var live))
            return live;
        var scan = Explain(batch, () => Tape.Scan(_disk, batch));
        Require(scan, batch);
        var known = _headers[batch].Head.Events;
        return _live[batch] = Explain(batch, () => new LiveBatch(batch, Tape.Open(_disk, batch, scan), scan.Lines, known));
    }

    /// <summary>Puts an event on the tape; a full disk is answered with the ballast.</summary>
    private void Keep(LiveBatch live, RunEvent happened) => Explain(live.Number, () =>
    {
        try
        {
            live.Append(happened);
        }
        catch (IOException e) when (DiskTrouble.IsFull(e) && Ballast.Release(_disk))
        {
            live.Append(happened);
            _notices.Add($"{_disk.Path}: the disk is full; the reserve holds some thousand entries more: free some space now");
        }

        return true;
    });

    private void Follow(LiveBatch live) => Follow(live, _statusOf(live.Events));

    private void Follow(LiveBatch live, RunStatus status)
    {
        var header = _headers[live.Number] = live.Header(status);
        if (status == RunStatus.Complete)
            Figures.Of(header.Head, () => live.Events);
        if (DatabaseLost || ReadOnly)
            return;
        try
        {
            _database.Follow(header, live.Ahead);
            live.Followed();
            if (BatchStatus.Ended(status) && _live.Remove(live.Number))
                live.Dispose();
        }
        catch (Exception e) // after a failed write LiteDB throws whatever its state gives; the tape has the event all the same
        {
            DatabaseLost = true;
            _notices.Add($"{_disk.Path}: the database cannot be written ({SafeText.OneLine(e.Message)}); "
                + "the day goes on, on its tape; the next start catches up, or \"brewdeck log repair\" makes the database again");
        }
    }

    private BatchHeader Current(BatchHeader header) =>
        _live.TryGetValue(header.Number, out var live)
            ? header with { Head = header.Head with { Events = live.Lines.Count } }
            : header;

    private void CloseDatabase()
    {
        try
        {
            _database.Dispose();
        }
        catch (Exception) when (DatabaseLost) // it could not be written before: nothing new
        {
        }
    }

    /// <exception cref="LogbookException">There is no such batch, or not all of it is whole.</exception>
    private void Require(TapeScan scan, int batch)
    {
        var known = _headers.GetValueOrDefault(batch)?.Head.Events
            ?? throw new LogbookException($"{_disk.Path}: there is no batch {batch}; \"brewdeck log list\" shows those there are");
        if (scan.Fault is not null || scan.Lines.Count < known)
            throw new LogbookException($"{PathOf(batch)}:{scan.Lines.Count + 1}: {Fault(scan)}; \"brewdeck log repair\" mends it");
    }

    private void RequireWritable()
    {
        if (ReadOnly)
            throw BatchDatabase.TooNew(_disk.Path);
    }

    private void GoReadOnly(string what)
    {
        ReadOnly = true;
        _notices.Add($"{_disk.Path}: {what} was written by a newer brewdeck; it can be read here, nothing is added to it");
    }

    private void Notice(int batch, string what) => _notices.Add($"{PathOf(batch)}: {what}");

    private string PathOf(int batch) => Path.Combine(_disk.Path, Tape.NameOf(batch));

    private T Explain<T>(int batch, Func<T> act) => DiskTrouble.Explain(PathOf(batch), act);

    private static string Fault(TapeScan scan) =>
        scan.Fault is { } fault ? $"line {scan.Lines.Count + 1} {fault}" : $"entries are missing after line {scan.Lines.Count}";
}
