using BrewDeck.Core.Running;

namespace BrewDeck.Logbook;

/// <summary>A batch that is being written: its open tape and what stands on it.</summary>
internal sealed class LiveBatch : IDisposable
{
    private readonly Tape _tape;
    private readonly List<TapeLine> _lines;
    private readonly List<RunEvent> _events;
    private int _followed;

    /// <param name="lines">On the tape already, all of them.</param>
    /// <param name="followed">How many of them the database has.</param>
    /// <exception cref="FormatException">A line is not an event that this version knows.</exception>
    public LiveBatch(int number, Tape tape, IReadOnlyList<TapeLine> lines, int followed)
    {
        Number = number;
        _tape = tape;
        _lines = [.. lines];
        _events = [.. lines.Select(l => l.ToEvent())];
        _followed = followed;
    }

    public int Number { get; }

    public IReadOnlyList<TapeLine> Lines => _lines;

    public IReadOnlyList<RunEvent> Events => _events;

    /// <summary>What the database does not have yet.</summary>
    public IEnumerable<TapeLine> Ahead => _lines.Skip(_followed);

    /// <summary>How many events that are.</summary>
    public int Behind => _lines.Count - _followed;

    /// <summary>On disk when it returns.</summary>
    /// <exception cref="IOException">Not kept.</exception>
    public void Append(RunEvent happened)
    {
        _lines.Add(_tape.Append(EventCodec.Encode(happened)));
        _events.Add(happened);
    }

    public BatchHeader Header(RunStatus status) =>
        BatchHeader.Of(Number, (BatchOpened)_events[0], status, _lines[^1], _tape.Bytes);

    public void Followed() => _followed = _lines.Count;

    public void Dispose() => _tape.Dispose();
}
