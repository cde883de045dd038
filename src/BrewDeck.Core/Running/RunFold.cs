using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Core.Running;

/// <summary>Folds events into a state; total and pure.</summary>
public static class RunFold
{
    /// <summary>The state after all events, the acts that were undone left out.</summary>
    public static RunState Of(IReadOnlyList<RunEvent> events) => Folded(events, learns: true);

    /// <summary>
    /// The same for looking back: without the plant, and without what the readings taught about it, which is nearly all of the work.
    /// Only a record from before readings kept what was expected of them is folded whole.
    /// </summary>
    public static RunState RecordOf(IReadOnlyList<RunEvent> events) =>
        Folded(events, learns: events.Any(e => e is ReadingTaken { Expected: null })) with { Live = null };

    private static RunState Folded(IReadOnlyList<RunEvent> events, bool learns)
    {
        var undone = UndoneIn(events);
        var state = new RunState();
        for (var i = 0; i < events.Count; i++)
        {
            if (events[i] is not Undone && !undone.Contains(i))
                state = Happened(state, events[i], i);
            if (i == 0 && !learns)
                state = state with { Live = state.Live is { } live ? live with { Belief = null! } : null };
        }
        return state with { Count = events.Count };
    }

    /// <summary>The state after one more event. Undoing needs the whole list: <see cref="Of"/>.</summary>
    public static RunState Then(RunState state, RunEvent happened) =>
        Happened(state, happened, state.Count) with { Count = state.Count + 1 };

    internal static HashSet<int> UndoneIn(IReadOnlyList<RunEvent> events)
    {
        var undone = new HashSet<int>();
        foreach (var undo in events.OfType<Undone>())
        {
            if (undo.Seq <= 0 || undo.Seq >= events.Count)
                continue;
            undone.Add(undo.Seq);
            for (var i = undo.Seq + 1; i < events.Count && events[i].Part > 0; i++)
                undone.Add(i);
        }
        return undone;
    }

    private static RunState Happened(RunState state, RunEvent happened, int seq)
    {
        if (happened is BatchOpened opened)
            return state.Plan is null ? Opened(opened) : state;
        var over = state.Status is RunStatus.Complete or RunStatus.Aborted;
        if (state.Plan is null || (over && happened is not (NoteWritten or ReadingTaken) && !FermentFold.Belongs(happened)))
            return state;
        if (happened is AlarmRaised or AlarmCleared or AlarmAcknowledged or AlarmShelved)
            return AlarmFold.Then(state, happened);
        if (happened is RehearsalEvent)
            return state;
        var next = happened switch
        {
            StepStarted e => StepFold.Started(state, e),
            StepFinished e => StepFold.Finished(state, e),
            StepHeld e => StepFold.Held(state, e),
            StepResumed e => StepFold.Resumed(state, e),
            StepSkipped e => StepFold.Skipped(state, e),
            ReadingTaken e => ReadingFold.Taken(state, e, seq),
            RemedyChosen e => RemedyFold.Chosen(state, e, seq),
            TroubleReported e => TroubleFold.Reported(state, e, seq),
            TroubleCleared e => TroubleFold.Cleared(state, e),
            BagWeighed e => BagFold.Weighed(state, e),
            NoteWritten e => state with { Notes = state.Notes.Add(new(e.AtMs, e.Text)) },
            // what alarms asked for is not wanted any more
            RunAborted e => state with { Status = RunStatus.Aborted, AbortReason = e.Reason, Alarms = [] },
            _ => state,
        };
        next = next with { Ferment = FermentFold.Then(state.Ferment, happened, seq, PitchStep(state)) };
        return happened.Part == 0 ? next with { UndoSeq = seq } : next;
    }

    private static string PitchStep(RunState state) => state.Steps.FirstOrDefault(s => s.Spec.Kind == StepKind.Pitch)?.Spec.Id ?? "";

    private static RunState Opened(BatchOpened opened) => new()
    {
        Ferment = FermentFold.Then(new(), opened, 0, ""),
        Plan = opened.Plan,
        Rehearsed = opened.Rehearsed,
        Card = opened.Card,
        Steps = [.. opened.Plan.Steps.Select(s => new RunStep(s.Spec, RunStatus.Idle))],
        Live = LivePlant.Of(opened.Plan, opened.AtMs),
    };
}
