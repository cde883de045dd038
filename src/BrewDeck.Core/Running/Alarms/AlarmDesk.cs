using System.Collections.Immutable;

namespace BrewDeck.Core.Running.Alarms;

/// <summary>Which alarm events a moment or a command calls for. They are no acts: undo leaves them alone.</summary>
public static class AlarmDesk
{
    /// <summary>Longest that an alarm may be shelved, minutes: it must come back while it can still be mended.</summary>
    private const double MostShelvedMin = 60;

    /// <summary>What has come and what has gone since the record was last brought up.</summary>
    public static ImmutableArray<RunEvent> Watch(RunState state, Forecast forecast, RunFocus focus, long nowMs)
    {
        var now = AlarmRules.At(state, forecast, focus, nowMs);
        var gone = state.Alarms.Where(a => now.All(n => n.Key != a.Alarm.Key));
        var come = now.Where(n => state.Alarms.All(a => a.Alarm.Key != n.Key));
        return
        [
            .. gone.Select(a => new AlarmCleared(nowMs, a.Alarm.Kind, a.Alarm.About)),
            .. come.Select(a => new AlarmRaised(nowMs, a)),
        ];
    }

    internal static Decision Acknowledge(RunState state, long nowMs)
    {
        var heard = state.Alarms.Where(a => !a.Acknowledged && !a.IsShelved(nowMs)).ToList();
        return heard.Count == 0
            ? new Decision.Refused(DecisionCode.NoAlarm)
            : new Decision.Accepted([.. heard.Select(a => new AlarmAcknowledged(nowMs, a.Alarm.Kind, a.Alarm.About))]);
    }

    internal static Decision Shelve(RunState state, RunCommand.Shelve shelve, long nowMs)
    {
        if (!(shelve.Minutes is > 0 and <= MostShelvedMin))
            return new Decision.Refused(DecisionCode.ShelvedTooLong);
        return state.Alarms.Any(a => a.Alarm.Key == shelve.Alarm)
            ? new Decision.Accepted([new AlarmShelved(nowMs, shelve.Alarm.Kind, shelve.Alarm.About, nowMs + (long)(shelve.Minutes * 60_000))])
            : new Decision.Refused(DecisionCode.NoAlarm);
    }
}
