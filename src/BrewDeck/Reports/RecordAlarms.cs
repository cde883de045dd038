using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Reports;

/// <summary>Each alarm with its answers.</summary>
internal static class RecordAlarms
{
    public static RecordTable Of(RecordSource source) => new(
        "Alarms", ["raised", "how soon", "what", "heard", "shelved until", "over"],
        [.. source.Events.Select((happened, seq) => (happened, seq))
            .Where(e => e.happened is AlarmRaised)
            .Select(e => Row((AlarmRaised)e.happened, source.Events.Skip(e.seq + 1), source))]);

    private static ImmutableArray<string> Row(AlarmRaised raised, IEnumerable<RunEvent> after, RecordSource source)
    {
        var (heard, shelved, over) = Answers(raised.Alarm.Key, after);
        return
        [
            source.Clock(raised.AtMs),
            AlarmWords.Priority(raised.Alarm.Priority, source.Notation),
            new AlarmWords(source.Plan.Brewhouse, source.Notation, source.Title).Cause(raised.Alarm),
            heard is null && over is not null ? "over before" : Clock(heard, source),
            Clock(shelved, source),
            Clock(over, source),
        ];
    }

    /// <summary>Up to where it is over: raised again it is answered anew.</summary>
    private static (long? Heard, long? ShelvedUntil, long? Over) Answers(AlarmKey key, IEnumerable<RunEvent> after)
    {
        long? heard = null, shelved = null;
        foreach (var happened in after)
        {
            switch (happened)
            {
                case AlarmAcknowledged e when new AlarmKey(e.Alarm, e.About) == key:
                    heard ??= e.AtMs;
                    break;
                case AlarmShelved e when new AlarmKey(e.Alarm, e.About) == key:
                    shelved = e.UntilMs;
                    break;
                case AlarmCleared e when new AlarmKey(e.Alarm, e.About) == key:
                    return (heard, shelved, e.AtMs);
            }
        }

        return (heard, shelved, null);
    }

    private static string Clock(long? ms, RecordSource source) => ms is { } at ? source.Clock(at) : "";
}
