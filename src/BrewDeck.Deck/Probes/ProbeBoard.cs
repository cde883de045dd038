using System.Globalization;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Probes;

/// <summary>What the probes said in the last minute, for each place. Without a probe it stays empty.</summary>
internal sealed class ProbeBoard
{
    /// <summary>What is older is stale; noise is looked for within it.</summary>
    private static readonly TimeSpan Minute = TimeSpan.FromSeconds(60);

    /// <summary>More places than any brewhouse has: a probe that makes names up fills no memory.</summary>
    private const int MostPlaces = 64;

    /// <summary>Four a second for a minute.</summary>
    private const int MostValues = 240;

    private readonly Dictionary<(ReadingKind, string), Queue<(DateTimeOffset At, double Value)>> _heard = [];
    private DateTimeOffset _now;
    private double _pace = 1;

    /// <summary>Lines that could not be read, since the start.</summary>
    public int Unread { get; set; }

    /// <param name="now">Of the day.</param>
    /// <param name="pace">Seconds of the day in one second of the wall; a probe does not get faster with a rehearsal.</param>
    public void Now(DateTimeOffset now, double pace) => (_now, _pace) = (now, Math.Max(1, pace));

    public void Take(ProbeValue heard)
    {
        var place = (heard.Kind, heard.Vessel);
        if (!_heard.TryGetValue(place, out var values))
        {
            if (_heard.Count == MostPlaces)
                return;
            _heard[place] = values = new Queue<(DateTimeOffset, double)>();
        }
        values.Enqueue((Before(heard.Age), heard.Value));
        while (values.Count > MostValues || (values.Count > 1 && values.Peek().At < Before(Minute)))
            values.Dequeue();
    }

    /// <param name="believes">Whether a reading would be taken without asking.</param>
    /// <returns>What was offered last; null: nothing.</returns>
    public ProbeOffer? Offer(ReadingKind kind, string vessel, Func<Reading, DateTimeOffset, bool> believes)
    {
        if (!_heard.TryGetValue((kind, vessel), out var values))
            return null;
        var (at, value) = values.Last();
        var reading = new Reading(kind, vessel, value, string.Create(CultureInfo.InvariantCulture, $"probe {value:0.####}"));
        // what is ahead was heard before the clock was set back
        var state = at < Before(Minute) || at > _now ? ProbeState.Stale
            : !believes(reading, _now) ? ProbeState.Absurd
            : ProbeNoise.IsNoisy(kind, [.. values.Where(v => v.At >= Before(Minute) && v.At <= _now).Select(v => ((v.At - _now) / _pace, v.Value))]) ? ProbeState.Noisy
            : ProbeState.Fresh;
        return new ProbeOffer(reading, state, Unread, (at - values.Peek().At) / _pace);
    }

    // a rehearsal at a thousand times and a time of long ago must not fall off the calendar
    private DateTimeOffset Before(TimeSpan age) =>
        _now.AddSeconds(-Math.Min(age.TotalSeconds * _pace, (_now - DateTimeOffset.UnixEpoch).TotalSeconds));
}
