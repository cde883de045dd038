using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Core.Running;

/// <summary>Which step may start now: those before it in its vessels are over, or one of them is ended by starting it.</summary>
public static class StepOrder
{
    /// <summary>A step that waits for nothing but the brewer.</summary>
    public static bool CanStart(RunState state, RunStep step)
    {
        if (step.Status != RunStatus.Idle || state.Status is RunStatus.Complete or RunStatus.Aborted)
            return false;
        var ends = EndedByStarting(state, step);
        foreach (var other in state.Steps)
        {
            if (other == step)
                break;
            if (other.Open && other != ends && (Shares(state, other.Spec, step.Spec) || Awaits(step.Spec, other)))
                return false;
        }
        return CutsIn(step.Spec) || !state.Steps.Any(s => s.Status is RunStatus.Running && s != ends && Shares(state, s.Spec, step.Spec));
    }

    /// <summary>Those that <see cref="CanStart"/> without ending another.</summary>
    public static IEnumerable<RunStep> Free(RunState state)
    {
        // a look at the vessels taken by what is before a step spares nearly all of them the whole question
        var taken = 0L;
        foreach (var step in state.Steps.Where(s => s.Open))
        {
            var vessels = 0L;
            foreach (var vessel in PlantModel.VesselsOf(state.Live!.Setting, step.Spec))
                vessels |= 1L << vessel;
            if ((taken & vessels) == 0 && CanStart(state, step) && EndedByStarting(state, step) is null)
                yield return step;
            taken |= vessels;
        }
    }

    /// <summary>A step with a lead may begin while the one that it makes ready for still runs.</summary>
    private static bool Awaits(StepSpec spec, RunStep other) =>
        other.Spec.Id == spec.AfterStepId && !(spec.LeadS > 0 && other.Status == RunStatus.Running);

    /// <summary>The running step just before it in its vessel that starting it brings to an end; null: none.</summary>
    public static RunStep? EndedByStarting(RunState state, RunStep step)
    {
        RunStep? last = null;
        foreach (var other in state.Steps)
        {
            if (other == step)
                break;
            if (other.Open && Shares(state, other.Spec, step.Spec))
                last = other;
        }
        return last is { Status: RunStatus.Running } && last.Spec.Kind.EndsBy() is EndsBy.Clock or EndsBy.Temperature ? last : null;
    }

    /// <summary>Goes in, or takes over, while the step that runs in its vessel waits or goes on.</summary>
    public static bool CutsIn(StepSpec spec) => spec.CutsIn || spec.Kind is StepKind.AddWater or StepKind.AddExtract or StepKind.TreatMash || spec.Kind.HoldsOthers();

    /// <summary>The next waiting step in any of the vessels of a step.</summary>
    public static RunStep? NextInVessel(RunState state, StepSpec spec)
    {
        var past = false;
        foreach (var other in state.Steps)
        {
            if (past && other.Status == RunStatus.Idle && Shares(state, other.Spec, spec))
                return other;
            past |= other.Spec.Id == spec.Id;
        }
        return null;
    }

    private static bool Shares(RunState state, StepSpec a, StepSpec b)
    {
        var setting = state.Live!.Setting;
        if (Plugs.Meet(setting, a, b))
            return true;
        var others = PlantModel.VesselsOf(setting, b);
        foreach (var vessel in PlantModel.VesselsOf(setting, a))
        {
            if (others.Contains(vessel))
                return true;
        }
        return false;
    }
}
