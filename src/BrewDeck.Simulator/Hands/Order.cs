using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Simulator.Hands;

/// <summary>A step as the run sheet shows it when it is started: what the hands are asked to do.</summary>
/// <param name="TargetC">Temperature to reach, °C.</param>
/// <param name="DurationS">How long it should take.</param>
/// <param name="VolumeL">Volume to move as the run sheet has it, litres at 20 °C.</param>
public sealed record Order(StepSpec Spec, double? TargetC, double DurationS, double? VolumeL = null)
{
    public string Id => Spec.Id;

    public StepKind Kind => Spec.Kind;

    /// <summary>From the live forecast where it has the step, else from the plan, else the step alone.</summary>
    public static Order Of(RunState state, Forecast? forecast, string stepId)
    {
        var shown = Find(forecast?.Rest ?? [], stepId) ?? Find(state.Plan?.Steps ?? [], stepId);
        var spec = state.Steps.FirstOrDefault(s => s.Spec.Id == stepId)?.Spec ?? shown?.Spec
            ?? throw new KeyNotFoundException(stepId);
        return new Order(spec, shown?.TargetC ?? spec.TargetC, shown?.DurationS ?? 60 * spec.Minutes ?? spec.HandsS, spec.VolumeL ?? shown?.VolumeL);
    }

    private static PlanStep? Find(ImmutableArray<PlanStep> steps, string stepId) =>
        steps.FirstOrDefault(s => s.Spec.Id == stepId);
}
