using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Ensemble;

namespace BrewDeck.Core.Running;

/// <summary>What starting, ending, holding and skipping a step does to the state. An event about an unknown or closed step changes nothing.</summary>
internal static class StepFold
{
    public static RunState Started(RunState state, StepStarted e)
    {
        if (state.Step(e.StepId) is not { Status: RunStatus.Idle } step)
            return state;
        state = state with { DayStartMs = state.DayStartMs ?? e.AtMs, Status = RunStatus.Running };
        var now = state.SecondsAt(e.AtMs);
        var live = state.Live!.CutAt(now);
        live = live with { Running = live.Running.Add(Runoff.Known(new Segment(step.Spec, now, DueS(live, step.Spec, now)), live.Plant)) };
        // what a step does at its start (a plug is moved, hops go in) is done from now on, for all that runs beside it
        live = live.CutAt(now);
        return With(state, step, step with { Status = RunStatus.Running, StartedMs = e.AtMs }) with { Live = live };
    }

    public static RunState Finished(RunState state, StepFinished e)
    {
        if (state.Step(e.StepId) is not { Status: RunStatus.Running } step || SegmentOf(state, e.StepId) is not { } segment)
            return state;
        var now = state.SecondsAt(e.AtMs);
        var endsShort = e.Short == true;
        var live = Milestones.After(Ended(state.Live!, segment, now, endsShort), step.Spec, [.. state.Steps.Where(s => s != step)]);
        state = With(state, step, step with { Status = RunStatus.Complete, EndedMs = e.AtMs, EndedShort = endsShort }) with { Live = live };
        if (live.Learns && !endsShort && step.StartedMs is { } started && !double.IsNaN(segment.DueS))
            state = state with { Live = DayLearning.FromTime(state, live, step.Spec, (e.AtMs - started) / 1000.0, now - segment.DueS, now) };
        return Completed(Shortened(state, step, Overtime(segment, now)));
    }

    /// <summary>The other running steps come up to the same moment first: a tank that heats goes on heating meanwhile.</summary>
    private static LivePlant Ended(LivePlant live, Segment segment, double now, bool endsShort)
    {
        if (!live.Learns)
            return (live with { Running = live.Running.Remove(segment) }).CutAt(now);
        var plant = live.Plant;
        var running = ImmutableArray.CreateBuilder<Segment>();
        foreach (var other in live.Running.Remove(segment))
        {
            (plant, var rest) = Advance.Cut(live.Setting, other, plant, now);
            running.Add(rest);
        }
        return live with { Plant = endsShort ? Advance.Cut(live.Setting, segment, plant, now).After : Advance.Finish(live.Setting, segment, plant, now), Running = running.ToImmutable() };
    }

    public static RunState Held(RunState state, StepHeld e)
    {
        if (state.Step(e.StepId) is not { Status: RunStatus.Running } step)
            return state;
        var live = state.Live!.CutAt(state.SecondsAt(e.AtMs));
        var segment = live.Running.First(s => s.Left.Id == e.StepId);
        live = live with { Running = live.Running.Remove(segment), Held = live.Held.Add(segment with { SinceS = Math.Max(segment.SinceS, state.SecondsAt(e.AtMs)) }) };
        return With(state, step, step with { Status = RunStatus.Held, HeldMs = e.AtMs }) with { Live = live };
    }

    public static RunState Resumed(RunState state, StepResumed e)
    {
        if (state.Step(e.StepId) is not { Status: RunStatus.Held } step)
            return state;
        var now = state.SecondsAt(e.AtMs);
        var live = state.Live!.CutAt(now);
        var held = live.Held.First(s => s.Left.Id == e.StepId);
        live = live with { Held = live.Held.Remove(held), Running = live.Running.Add(Runoff.Known(new Segment(held.Left, now), live.Plant)) };
        return With(state, step, step with { Status = RunStatus.Running, HeldMs = null, HeldForMs = step.HeldForMs + e.AtMs - (step.HeldMs ?? e.AtMs) }) with { Live = live };
    }

    public static RunState Skipped(RunState state, StepSkipped e)
    {
        if (state.Step(e.StepId) is not { Open: true } step)
            return state;
        var live = state.Live!;
        if (state.DayStartMs is not null)
            live = live.CutAt(state.SecondsAt(e.AtMs));
        live = live with
        {
            Running = live.Running.RemoveAll(s => s.Left.Id == e.StepId),
            Held = live.Held.RemoveAll(s => s.Left.Id == e.StepId),
        };
        state = With(state, step, step with { Status = RunStatus.Skipped, EndedMs = e.AtMs });
        return Completed(state with { Live = Milestones.After(live, step.Spec, state.Steps) });
    }

    private static Segment? SegmentOf(RunState state, string id) => state.Live?.Running.FirstOrDefault(s => s.Left.Id == id);

    private static RunState With(RunState state, RunStep old, RunStep changed) =>
        state with { Steps = state.Steps.Replace(old, changed) };

    private static double DueS(LivePlant live, StepSpec spec, double nowS) =>
        live.Learns && spec.Kind.EndsBy() is EndsBy.Temperature or EndsBy.Level
            ? nowS + PlantModel.Run(live.Setting, spec, live.Plant, nowS, double.PositiveInfinity).DurationS
            : double.NaN;

    private static double Overtime(Segment segment, double nowS) =>
        segment.Left.Kind.EndsBy() == EndsBy.Clock ? nowS - segment.SinceS - 60 * (segment.Left.Minutes ?? 0) : 0;

    /// <summary>
    /// A boil or a stand that was ended late takes the time from the next piece of the same boil or stand, as long as nothing goes
    /// in between: knock-out stays where it was.
    /// </summary>
    private static RunState Shortened(RunState state, RunStep ended, double overtimeS)
    {
        if (overtimeS <= 0 || ended.Spec.Kind is not (StepKind.Boil or StepKind.Stand))
            return state;
        var next = state.Steps.FirstOrDefault(s => s.Open && s.Spec.Vessel == ended.Spec.Vessel);
        if (next is not { Status: RunStatus.Idle } || next.Spec.Kind != ended.Spec.Kind)
            return state;
        var minutes = Math.Max(0, next.Spec.Minutes!.Value - overtimeS / 60);
        return With(state, next, next with { Spec = next.Spec with { Minutes = minutes } });
    }

    private static RunState Completed(RunState state) =>
        state.Steps.Any(s => s.Open) ? state : state with { Status = RunStatus.Complete };
}
