using BrewDeck.Core.Running.Alarms;

namespace BrewDeck.Deck.Runs;

/// <summary>Rings for an alarm that nobody has acknowledged: at once, and again the more often the more urgent it is.</summary>
internal sealed class AlarmBell
{
    private readonly Dictionary<AlarmKey, DateTimeOffset> _rung = [];
    private bool _due;

    /// <param name="pace">Seconds of the day in one second of the wall, for rehearsals.</param>
    public void Listen(IReadOnlyList<StandingAlarm> unheard, DateTimeOffset now, double pace)
    {
        foreach (var gone in _rung.Keys.Except(unheard.Select(a => a.Alarm.Key)).ToList())
            _rung.Remove(gone);
        foreach (var alarm in unheard)
        {
            if (_rung.TryGetValue(alarm.Alarm.Key, out var before) && now - before < Again(alarm.Alarm.Priority) * Math.Max(1, pace))
                continue;
            _rung[alarm.Alarm.Key] = now;
            _due = true;
        }
    }

    public bool Take()
    {
        var due = _due;
        _due = false;
        return due;
    }

    private static TimeSpan Again(AlarmPriority priority) => priority switch
    {
        AlarmPriority.High => TimeSpan.FromSeconds(10),
        AlarmPriority.Medium => TimeSpan.FromSeconds(30),
        _ => TimeSpan.FromMinutes(2),
    };
}
