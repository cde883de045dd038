using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

public enum FocusAct
{
    /// <summary>Nothing to do: the day is over.</summary>
    None,

    /// <summary>The big key starts the step.</summary>
    Start,

    /// <summary>The big key finishes the step: its time is up or its target is reached, or the hands say when.</summary>
    Finish,

    /// <summary>The step runs by itself; the big key would end it early and asks first.</summary>
    Wait,

    /// <summary>The step is on hold; the big key resumes it.</summary>
    Resume,
}

/// <summary>The step that the big key acts on, and how.</summary>
/// <param name="StepId">Empty when there is none.</param>
/// <param name="DueMs">When the step is expected to end (running) or to begin (waiting), Unix ms.</param>
public sealed record RunFocus(FocusAct Act, string StepId, long DueMs)
{
    /// <summary>A level or a temperature may be reached somewhat before the model expects it.</summary>
    private const double NearS = 90;

    /// <summary>A step that waits only for the hands to be done with the last one may begin early.</summary>
    private const double EarlyS = 120;

    /// <summary>Cleaning that is over its usual time by more than this has taken long.</summary>
    private const double LongS = 300;

    public static RunFocus Of(RunState state, Forecast forecast, long nowMs)
    {
        if (state.Status is RunStatus.Complete or RunStatus.Aborted)
            return new(FocusAct.None, "", nowMs);
        var now = state.SecondsAt(nowMs);
        return CutIn(state, nowMs)
            ?? Due(state, forecast, now, nowMs, s => s.Kind.EndsBy() == EndsBy.Clock && !Stands(state, forecast, s, now, nowMs))
            ?? InHand(state, forecast, now, nowMs)
            ?? Due(state, forecast, now, nowMs, s => !Stands(state, forecast, s, now, nowMs))
            ?? Watched(state, forecast, nowMs)
            ?? Startable(state, forecast, now, nowMs, _ => true)
            ?? Waiting(state, forecast, nowMs, background: false)
            ?? OnHold(state, nowMs)
            ?? Waiting(state, forecast, nowMs, background: true)
            ?? Next(state, forecast, nowMs);
    }

    private static RunFocus? CutIn(RunState state, long nowMs) =>
        state.Steps.FirstOrDefault(s => StepOrder.CutsIn(s.Spec) && StepOrder.CanStart(state, s)) is { } step
            ? new(FocusAct.Start, step.Spec.Id, nowMs)
            : null;

    /// <summary>A running step whose end is reached: what follows it in its vessel, or its end.</summary>
    private static RunFocus? Due(RunState state, Forecast forecast, double now, long nowMs, Func<StepSpec, bool> wanted)
    {
        foreach (var step in Running(state, forecast))
        {
            if (step.EndS > now + Near(step.Spec) || !wanted(step.Spec))
                continue;
            var due = state.MsAt(DueS(state, step, now), nowMs);
            var next = StepOrder.NextInVessel(state, step.Spec);
            var takesOver = step.Spec.Kind.HandsOver() && next is not null && !next.Spec.Kind.FollowsOn() && StepOrder.CanStart(state, next);
            return takesOver ? new(FocusAct.Start, next!.Spec.Id, due) : new(FocusAct.Finish, step.Spec.Id, due);
        }
        return null;
    }

    /// <summary>
    /// A mash rest lasts on while what stands before its successor on the run sheet wants the hands: a few minutes at rest cost less than a lauter that
    /// waits half an hour for cold sparge liquor.
    /// </summary>
    private static bool Stands(RunState state, Forecast forecast, StepSpec rest, double now, long nowMs)
    {
        if (rest.Kind != StepKind.Rest)
            return false;
        var next = StepOrder.NextInVessel(state, rest);
        var before = state.Steps.TakeWhile(s => s != next).Select(s => s.Spec.Id).ToHashSet();
        return Running(state, forecast).Any(s => before.Contains(s.Spec.Id) && s.Spec.Id != rest.Id && !s.Spec.Background)
            || Startable(state, forecast, now, nowMs, s => before.Contains(s.Id)) is not null;
    }

    private static double Near(StepSpec spec) => spec.Kind.EndsBy() is EndsBy.Level or EndsBy.Temperature ? NearS : 0.5;

    /// <summary>
    /// Handwork that is going on ends when the hands say so; it is due when such work is usually done. Of two jobs the one begun last is in the
    /// hands: a knock-out does not wait behind a tun that is still being dug out. Cleaning that takes long steps aside for what the wort waits for.
    /// </summary>
    private static RunFocus? InHand(RunState state, Forecast forecast, double now, long nowMs)
    {
        if (Running(state, forecast).Where(s => s.Spec.Kind.EndsBy() == EndsBy.Hands).MaxBy(s => state.Step(s.Spec.Id)!.StartedMs) is not { } step)
            return null;
        var due = DueS(state, step, now);
        var finish = new RunFocus(FocusAct.Finish, step.Spec.Id, state.MsAt(due, nowMs));
        var takesLong = step.Spec.Unit == UnitProcedure.CleanDown && due <= now - LongS;
        return takesLong ? Startable(state, forecast, now, nowMs, s => s.Unit != UnitProcedure.CleanDown) ?? finish : finish;
    }

    /// <summary>What may not be left alone stays before the eyes, whatever else could begin.</summary>
    private static RunFocus? Watched(RunState state, Forecast forecast, long nowMs) =>
        Running(state, forecast).Where(s => s.Spec.Kind.IsWatched()).MinBy(s => s.EndS) is { } step
            ? new(FocusAct.Wait, step.Spec.Id, state.MsAt(step.EndS, nowMs))
            : null;

    /// <summary>When a running step ends; for one over time, when it had come to its end, though a tank may have cooled again since.</summary>
    private static double DueS(RunState state, PlanStep step, double now) =>
        step.EndS > now + NearS
            ? step.EndS
            : state.Live!.CutAt(now).Running.FirstOrDefault(s => s.Left.Id == step.Spec.Id)?.EndedS ?? step.EndS;

    private static RunFocus? Startable(RunState state, Forecast forecast, double now, long nowMs, Func<StepSpec, bool> wanted)
    {
        // mostly none is free, and when it would begin need not be reckoned
        var free = StepOrder.Free(state).Where(s => wanted(s.Spec)).Select(s => s.Spec.Id).ToHashSet();
        return free.Count > 0 && forecast.Rest.FirstOrDefault(s => s.StartS <= now + EarlyS && free.Contains(s.Spec.Id)) is { } step
            ? new(FocusAct.Start, step.Spec.Id, state.MsAt(step.StartS, nowMs))
            : null;
    }

    /// <summary>The step at the brewer's hand rather than one in the background; of several the one that ends first.</summary>
    private static RunFocus? Waiting(RunState state, Forecast forecast, long nowMs, bool background)
    {
        var step = Running(state, forecast).Where(s => s.Spec.Background == background).MinBy(s => s.EndS);
        return step is null ? null : new(FocusAct.Wait, step.Spec.Id, state.MsAt(step.EndS, nowMs));
    }

    private static RunFocus? OnHold(RunState state, long nowMs) =>
        state.Steps.FirstOrDefault(s => s.Status == RunStatus.Held) is { } held ? new(FocusAct.Resume, held.Spec.Id, nowMs) : null;

    /// <summary>Nothing runs: the day goes on with the first step that may start, whatever the timetable says.</summary>
    private static RunFocus Next(RunState state, Forecast forecast, long nowMs)
    {
        var step = state.Steps.FirstOrDefault(s => StepOrder.CanStart(state, s)) ?? state.Steps.First(s => s.Open);
        var start = forecast.Step(step.Spec.Id)?.StartS ?? 0;
        return new(FocusAct.Start, step.Spec.Id, state.MsAt(start, nowMs));
    }

    private static IEnumerable<PlanStep> Running(RunState state, Forecast forecast) =>
        forecast.Going.Where(s => state.Step(s.Spec.Id)?.Status == RunStatus.Running);
}
