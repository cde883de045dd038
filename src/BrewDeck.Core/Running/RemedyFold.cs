using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>Puts the steps of a chosen remedy on the run sheet.</summary>
internal static class RemedyFold
{
    public static RunState Chosen(RunState state, RemedyChosen e, int seq) =>
        Edited(state, e.Remedy) with { Remedies = state.Remedies.Add(new(seq, e.AtMs, e.Remedy)) };

    /// <summary>The run sheet with the remedy on it, and nothing else changed: also what a remedy is weighed with.</summary>
    public static RunState Edited(RunState state, Remedy remedy)
    {
        foreach (var spec in remedy.Replace)
            state = Replaced(state, spec);
        var at = state.Steps.ToList().FindIndex(s => s.Spec.Id == remedy.BeforeStepId);
        var insert = remedy.Insert.Select(s => new RunStep(s, RunStatus.Idle));
        return state with { Steps = at < 0 ? state.Steps.AddRange(insert) : state.Steps.InsertRange(at, insert) };
    }

    private static RunState Replaced(RunState state, StepSpec spec)
    {
        if (state.Step(spec.Id) is not { Open: true } step)
            return state;
        var more = (spec.Minutes ?? 0) - (step.Spec.Minutes ?? 0);
        StepSpec Longer(StepSpec left) => left.Id == spec.Id ? left with { Minutes = Math.Max(0, (left.Minutes ?? 0) + more) } : left;
        var live = state.Live!;
        return state with
        {
            Steps = state.Steps.Replace(step, step with { Spec = spec }),
            Live = live with
            {
                Running = [.. live.Running.Select(s => s with { Left = Longer(s.Left) })],
                Held = [.. live.Held.Select(Longer)],
            },
        };
    }
}
