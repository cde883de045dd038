using System.Collections.Immutable;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Bags;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Core.Running;

/// <summary>Decides what a command makes happen. It never changes anything: the events it returns do, once they are on disk.</summary>
public static class RunDesk
{
    /// <param name="nowMs">Unix ms.</param>
    public static Decision Decide(RunState state, RunCommand command, long nowMs)
    {
        if (state.Plan is null)
            return new Decision.Refused(DecisionCode.NoBatch);
        var over = state.Status is RunStatus.Complete or RunStatus.Aborted;
        return command switch
        {
            RunCommand.Undo => Undo(state, nowMs),
            RunCommand.Write write => Write(write, nowMs),
            RunCommand.Take take => ReadingDesk.Decide(state, take, nowMs),
            RunCommand.After after => FermentDesk.Decide(state, after, nowMs),
            _ when over => new Decision.Refused(DecisionCode.DayIsOver),
            RunCommand.Acknowledge => AlarmDesk.Acknowledge(state, nowMs),
            RunCommand.Shelve shelve => AlarmDesk.Shelve(state, shelve, nowMs),
            RunCommand.Start start => Start(state, start, nowMs),
            RunCommand.Finish finish => Finish(state, finish, nowMs),
            RunCommand.Hold hold => OnStep(state, hold.StepId, RunStatus.Running, new StepHeld(nowMs, hold.StepId, hold.Reason)),
            RunCommand.Resume resume => OnStep(state, resume.StepId, RunStatus.Held, new StepResumed(nowMs, resume.StepId)),
            RunCommand.Skip skip => Skip(state, skip, nowMs),
            RunCommand.Choose choose => Choose(state, choose, nowMs),
            RunCommand.Report report => TroubleDesk.Report(state, report.Trouble, nowMs),
            RunCommand.Clear clear => TroubleDesk.Clear(state, clear.Trouble, nowMs),
            RunCommand.Tend or RunCommand.Mark when !state.Rehearsed => new Decision.Refused(DecisionCode.OnlyRehearsed),
            RunCommand.Tend tend => Act(new HandsActed(nowMs, tend.Act)),
            RunCommand.Mark mark => Act(new RehearsalMarked(nowMs, mark.Of)),
            RunCommand.Weigh weigh => BagDesk.Weigh(state, weigh.Bag, nowMs),
            RunCommand.Abort abort => Act(new RunAborted(nowMs, abort.Reason)),
            _ => new Decision.Refused("unknown_command"),
        };
    }

    /// <summary>What a reading is held against at a moment, in the canonical unit of its kind; null: nothing is expected there.</summary>
    /// <param name="nowMs">Unix ms.</param>
    public static double? Expects(RunState state, ReadingKind kind, string vessel, long nowMs)
    {
        if (state.Plan is null || state.Live?.Setting.IndexOf(vessel) is not >= 0)
            return null;
        var live = state.Live.CutAt(state.SecondsAt(nowMs));
        var shown = Expectations.Of(live.Setting, live.Plant, kind, vessel);
        if (!double.IsFinite(shown))
            return null;
        var held = RunFold.Then(state, new ReadingTaken(nowMs, new Reading(kind, vessel, shown, ""), [])).Readings[^1].Expected;
        return double.IsFinite(held) ? held : null;
    }

    /// <summary>Whether a reading would be taken without asking: possible there, and within the bounds of the plausible.</summary>
    /// <param name="nowMs">Unix ms.</param>
    public static bool Believes(RunState state, Reading reading, long nowMs) =>
        state.Plan is not null && ReadingDesk.Believes(state, reading, nowMs);

    internal static Decision Act(params ImmutableArray<RunEvent> events) =>
        new Decision.Accepted([.. events.Select((e, i) => e with { Part = i })]);

    private static Decision Undo(RunState state, long nowMs) =>
        state.UndoSeq is { } seq ? Act(new Undone(nowMs, seq)) : new Decision.Refused(DecisionCode.NothingToUndo);

    private static Decision Write(RunCommand.Write write, long nowMs) =>
        string.IsNullOrWhiteSpace(write.Text) ? new Decision.Refused(DecisionCode.EmptyNote) : Act(new NoteWritten(nowMs, write.Text.Trim()));

    private static Decision Start(RunState state, RunCommand.Start start, long nowMs)
    {
        if (state.Step(start.StepId) is not { } step)
            return new Decision.Refused(DecisionCode.NoSuchStep);
        if (!StepOrder.CanStart(state, step))
            return new Decision.Refused(DecisionCode.StepNotDue);
        var events = ImmutableArray.CreateBuilder<RunEvent>();
        if (StepOrder.EndedByStarting(state, step) is { } ends)
            events.Add(new StepFinished(nowMs, ends.Spec.Id));
        if (step.Spec.Kind.HoldsOthers() && RunningIn(state, step.Spec.Vessel) is { } waits)
            events.Add(new StepHeld(nowMs, waits.Spec.Id, "remedy"));
        events.Add(new StepStarted(nowMs, step.Spec.Id));
        if (step.Spec.Kind.EndsBy() == EndsBy.Act)
            events.AddRange(Ending(state, step, nowMs));
        return Act(events.ToImmutable());
    }

    private static Decision Finish(RunState state, RunCommand.Finish finish, long nowMs) =>
        state.Step(finish.StepId) is { Status: RunStatus.Running } step
            ? Act([.. Ending(state, step, nowMs, finish.Short && step.Spec.Kind.EndsBy() is EndsBy.Temperature or EndsBy.Level)])
            : new Decision.Refused(DecisionCode.StepNotRunning);

    /// <summary>The end of a step, and the start of what follows on by itself.</summary>
    private static IEnumerable<RunEvent> Ending(RunState state, RunStep step, long nowMs, bool endsShort = false)
    {
        yield return new StepFinished(nowMs, step.Spec.Id) { Short = endsShort ? true : null };
        if (step.Spec.Kind.HoldsOthers())
        {
            if (Possible.Standing(state).FirstOrDefault(t => step.Spec.Kind == StepKind.FreeBed && t.Kind == TroubleKind.RunoffStuck) is { } stuck)
                yield return new TroubleCleared(nowMs, stuck);
            var held = state.Steps.FirstOrDefault(s => s.Status == RunStatus.Held && s.Spec.Vessel == step.Spec.Vessel);
            if (held is not null)
            {
                yield return new StepResumed(nowMs, held.Spec.Id);
                yield break;
            }
        }
        // what it went into goes on; put in before something that has not begun, it is followed like any other
        if (StepOrder.CutsIn(step.Spec) && state.Steps.Any(s => s != step && s.Status is RunStatus.Running or RunStatus.Held && s.Spec.Vessel == step.Spec.Vessel))
            yield break;
        var next = StepOrder.NextInVessel(state, step.Spec);
        if (next is not null && next.Spec.Kind.FollowsOn() && next.Spec.Vessel == (step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel))
            yield return new StepStarted(nowMs, next.Spec.Id);
    }

    private static RunStep? RunningIn(RunState state, string vessel) =>
        state.Steps.FirstOrDefault(s => s.Status == RunStatus.Running && s.Spec.Vessel == vessel);

    private static Decision OnStep(RunState state, string stepId, RunStatus needed, RunEvent happens) =>
        state.Step(stepId)?.Status == needed
            ? Act(happens)
            : new Decision.Refused(needed == RunStatus.Held ? DecisionCode.StepNotHeld : DecisionCode.StepNotRunning);

    private static Decision Skip(RunState state, RunCommand.Skip skip, long nowMs)
    {
        if (string.IsNullOrWhiteSpace(skip.Reason))
            return new Decision.Refused(DecisionCode.ReasonMissing);
        return state.Step(skip.StepId) is { Open: true }
            ? Act(new StepSkipped(nowMs, skip.StepId, skip.Reason.Trim()))
            : new Decision.Refused(DecisionCode.NoSuchStep);
    }

    private static Decision Choose(RunState state, RunCommand.Choose choose, long nowMs)
    {
        if (!RemedyFold.Fits(state, choose.Remedy))
            return new Decision.Refused(DecisionCode.RemedyOutdated);
        var moved = Shifts.Between(Forecasts.At(state, nowMs), Forecasts.At(RemedyFold.Edited(state, choose.Remedy, nowMs), nowMs));
        return Act(new RemedyChosen(nowMs, choose.Remedy, moved));
    }
}
