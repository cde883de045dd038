using System.Collections.Immutable;

namespace BrewDeck.Core.Running.Alarms;

/// <summary>What alarm events make of the standing alarms.</summary>
internal static class AlarmFold
{
    public static RunState Then(RunState state, RunEvent happened) => state with { Alarms = Alarms(state.Alarms, happened) };

    private static ImmutableArray<StandingAlarm> Alarms(ImmutableArray<StandingAlarm> standing, RunEvent happened) => happened switch
    {
        AlarmRaised e => [.. Without(standing, e.Alarm.Key), new StandingAlarm(e.Alarm, e.AtMs)],
        AlarmCleared e => Without(standing, new(e.Alarm, e.About)),
        AlarmAcknowledged e => Changed(standing, new(e.Alarm, e.About), a => a with { Acknowledged = true }),
        AlarmShelved e => Changed(standing, new(e.Alarm, e.About), a => a with { ShelvedUntilMs = e.UntilMs }),
        _ => standing,
    };

    private static ImmutableArray<StandingAlarm> Without(ImmutableArray<StandingAlarm> standing, AlarmKey key) =>
        standing.RemoveAll(a => a.Alarm.Key == key);

    private static ImmutableArray<StandingAlarm> Changed(
        ImmutableArray<StandingAlarm> standing, AlarmKey key, Func<StandingAlarm, StandingAlarm> change) =>
        [.. standing.Select(a => a.Alarm.Key == key ? change(a) : a)];
}
