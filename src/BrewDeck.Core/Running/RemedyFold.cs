using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Core.Running;

/// <summary>Puts the steps of a chosen remedy on the run sheet.</summary>
internal static class RemedyFold
{
    public static RunState Chosen(RunState state, RemedyChosen e, int seq) => Fits(state, e.Remedy)
        ? Edited(state, e.Remedy, e.AtMs) with { Remedies = state.Remedies.Add(new(seq, e.AtMs, e.Remedy)) }
        : state;

    /// <summary>False for an offer that the day has overtaken: its step is over, or it has been taken already.</summary>
    public static bool Fits(RunState state, Remedy remedy) =>
        !remedy.Added.Any(s => state.Step(s.Id) is not null)
        && remedy.Replace.Select(s => s.Id).Concat(remedy.Ends).All(id => state.Step(id) is { Open: true })
        && (remedy.Insert.IsEmpty || remedy.BeforeStepId.Length == 0 || state.Step(remedy.BeforeStepId) is { Open: true })
        && (remedy.Later ?? []).All(l => state.Step(l.BeforeStepId) is { Open: true })
        && (remedy.BoilsIn is not { } vessel || state.Plan!.Brewhouse.Vessels.Any(v => v.Id == vessel));

    /// <summary>The run sheet with the remedy on it, and nothing else changed: also what a remedy is weighed with.</summary>
    public static RunState Edited(RunState state, Remedy remedy, long atMs)
    {
        foreach (var spec in remedy.Replace)
            state = Replaced(state, spec);
        if (remedy.CircuitId is { } circuit)
            state = Replugged(state, circuit);
        state = Inserted(state, remedy.BeforeStepId, remedy.Insert);
        foreach (var later in remedy.Later ?? [])
            state = Inserted(state, later.BeforeStepId, [later.Spec]);
        state = remedy.Ends.Aggregate(state, (s, id) => StepFold.Skipped(s, new StepSkipped(atMs, id, "remedy")));
        return remedy.BoilsIn is { } vessel ? BoilingIn(state, vessel) : state;
    }

    private static RunState Inserted(RunState state, string beforeStepId, ImmutableArray<StepSpec> specs)
    {
        var at = state.Steps.ToList().FindIndex(s => s.Spec.Id == beforeStepId);
        var insert = specs.Select(s => new RunStep(s, RunStatus.Idle));
        return state with { Steps = at < 0 ? state.Steps.AddRange(insert) : state.Steps.InsertRange(at, insert) };
    }

    /// <summary>Last: until now the kettle was the kettle.</summary>
    private static RunState BoilingIn(RunState state, string vessel)
    {
        var live = state.Live!;
        return state with { Live = live with { Setting = live.Setting.BoilingIn(vessel) } };
    }

    private static RunState Replaced(RunState state, StepSpec spec)
    {
        if (state.Step(spec.Id) is not { Open: true } step)
            return state;
        var live = state.Live!;
        return state with
        {
            Steps = state.Steps.Replace(step, step with { Spec = spec }),
            Live = live.Each(s => Changed(s, step.Spec, spec)),
        };
    }

    private static Segment Changed(Segment segment, StepSpec was, StepSpec spec) => segment with
    {
        Left = Changed(segment.Left, was, spec),
        Known = segment.Known is { } known ? known with { Left = Changed(known.Left, was, spec) } : null,
    };

    /// <summary>What is left of a step that is going on, when it is asked for otherwise: minutes and liquor by the difference, marks as they are.</summary>
    private static StepSpec Changed(StepSpec left, StepSpec was, StepSpec spec) => left.Id != spec.Id ? left : left with
    {
        Minutes = spec.Minutes is null ? left.Minutes : (left.Minutes ?? 0) + spec.Minutes - (was.Minutes ?? 0),
        SpargeL = left.SpargeL is null ? null : Math.Max(0, left.SpargeL.Value + (spec.SpargeL ?? 0) - (was.SpargeL ?? 0)),
        VolumeL = spec.VolumeL == was.VolumeL ? left.VolumeL : spec.VolumeL,
        TargetC = spec.TargetC == was.TargetC ? left.TargetC : spec.TargetC,
        FlowLPerMin = spec.FlowLPerMin,
    };

    private static RunState Replugged(RunState state, string circuit)
    {
        var live = state.Live!;
        var setting = live.Setting with { Wiring = TroubleFold.WiringOf(live.Setting, Possible.Standing(state), circuit) };
        return state with { Live = live with { Setting = setting } };
    }
}
