using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>One thing that was weighed for a step that is over: what really went in.</summary>
/// <param name="Amount">In the charge's unit; 0: it was left out.</param>
/// <param name="Planned">As the plan had it; null: a remedy put it in.</param>
/// <param name="Step">The step that it went in at.</param>
public sealed record WentIn(Charge Charge, double Amount, double? Planned, RunStep Step)
{
    /// <summary>A scale tells this much apart.</summary>
    private const double Noticeable = 0.01;

    /// <summary>Noticeably other than planned.</summary>
    public bool IsOff => Math.Abs(Amount - (Planned ?? 0)) > Noticeable * Math.Max(Amount, Planned ?? 0);

    /// <summary>In the order of the run sheet. Weigh-in and heat-up only list what other steps bring.</summary>
    public static IEnumerable<WentIn> Of(RunState state) =>
        from step in state.Steps
        where step.Status is RunStatus.Complete or RunStatus.Skipped && step.Spec.Kind is not (StepKind.WeighIn or StepKind.HeatStrike)
        let planned = state.Plan!.Step(step.Spec.Id)
        from charge in step.Spec.Charges
        select new WentIn(charge, step.Status == RunStatus.Complete ? charge.Amount : 0, planned?.Spec.Charges.FirstOrDefault(c => Same(c, charge))?.Amount, step);

    private static bool Same(Charge one, Charge other) => one.Kind == other.Kind && one.Name == other.Name && one.ForStepId == other.ForStepId;
}
