using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Bags;

/// <summary>Puts what a bag holds on the run sheet: every step that has not begun brings its share of it.</summary>
internal static class BagFold
{
    public static RunState Weighed(RunState state, BagWeighed e)
    {
        if (BagSheet.Find(state, e.Bag) is not { } planned)
            return state;
        StepSpec Changed(StepSpec spec) => With(spec, e.Bag, planned);
        return state with
        {
            BagMs = e.AtMs,
            AmountsTold = e.Bag.Amount is null ? state.AmountsTold : state.AmountsTold.Add(e.Bag.Name),
            Steps = [.. state.Steps.Select(s => Changes(s) ? s with { Spec = Changed(s.Spec) } : s)],
            Live = state.Live?.Each(s => IsStrike(s.Left) ? s with { Left = Changed(s.Left) } : s),
        };
    }

    /// <summary>What has not begun, the list of a weigh-in that goes on, and the strike: its liquor is heated for the grist that is still to come.</summary>
    private static bool Changes(RunStep step) =>
        step.Status == RunStatus.Idle || (step.Open && step.Spec.Kind == StepKind.WeighIn) || IsStrike(step.Spec);

    private static bool IsStrike(StepSpec spec) => spec.Kind == StepKind.HeatStrike;

    private static StepSpec With(StepSpec spec, Bag bag, PlannedBag planned) => spec.Charges.Any(c => Is(c, bag))
        ? spec with { Charges = [.. spec.Charges.Select(c => Is(c, bag) ? With(c, bag, planned) : c)] }
        : spec;

    private static bool Is(Charge charge, Bag bag) => charge.Kind == bag.Kind && charge.Name == bag.Name;

    private static Charge With(Charge charge, Bag bag, PlannedBag planned)
    {
        var amount = charge.Amount * (bag.Amount ?? planned.Amount) / planned.Amount;
        if (charge.Kind == ChargeKind.Hop)
            return charge with { Amount = amount, AlphaG = amount * (bag.AlphaFraction ?? planned.AlphaFraction) };
        var moisture = bag.MoistureFraction ?? planned.MoistureFraction;
        return charge with
        {
            Amount = amount,
            WaterKg = amount * moisture,
            ExtractKg = amount * (1 - moisture) * (bag.ExtractFraction ?? planned.ExtractFraction),
        };
    }
}
