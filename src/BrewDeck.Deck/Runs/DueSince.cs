using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Runs;

/// <summary>
/// Since when what the deck shows is due. A forecast always begins now, so by itself it never says that something waits: the moment
/// is what was expected when a step last began or ended, or by a reading since then that showed it not yet due. It follows from the
/// record alone, so it is the same after a restart.
/// </summary>
internal sealed class DueSince
{
    private RunState _state;
    private long _atMs;
    private Forecast? _forecast;

    /// <param name="events">At least the opening.</param>
    public DueSince(IReadOnlyList<RunEvent> events)
    {
        var from = events.Count - 1;
        while (from > 0 && !Settles(events[from]))
            from--;
        (_state, _atMs) = (RunFold.Of([.. events.Take(from + 1)]), events[from].AtMs);
        for (var i = from + 1; i < events.Count; i++)
        {
            if (events[i] is ReadingTaken)
                Happened(events[i], RunFold.Of([.. events.Take(i + 1)]));
        }
    }

    /// <param name="after">The state with it.</param>
    public void Happened(RunEvent happened, RunState after)
    {
        if (Settles(happened) || (happened is ReadingTaken && NotYetDue(after, happened.AtMs)))
            (_state, _atMs, _forecast) = (after, happened.AtMs, null);
    }

    /// <summary>The focus with the moment since when it is due, where that has passed.</summary>
    public RunFocus Of(RunFocus focus, long nowMs)
    {
        if (focus.Act is not (FocusAct.Start or FocusAct.Finish) || focus.DueMs > nowMs || _state.DayStartMs is null)
            return focus;
        _forecast ??= Forecasts.At(_state, _atMs);
        if (_forecast.Step(focus.StepId) is not { } step)
            return focus;
        var due = _state.MsAt(focus.Act == FocusAct.Finish ? step.EndS : step.StartS, _atMs);
        return due < focus.DueMs ? focus with { DueMs = due } : focus;
    }

    private static bool Settles(RunEvent happened) => happened is not
        (ReadingTaken or NoteWritten or AlarmRaised or AlarmCleared or AlarmAcknowledged or AlarmShelved or RehearsalEvent);

    private static bool NotYetDue(RunState state, long atMs) =>
        RunFocus.Of(state, Forecasts.At(state, atMs), atMs) is var focus && (focus.Act == FocusAct.Wait || focus.DueMs > atMs);
}
