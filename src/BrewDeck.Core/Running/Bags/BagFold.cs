using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Bags;

/// <summary>Puts what a bag holds on the run sheet: every step that has not begun brings its share of it.</summary>
internal static class BagFold
{
    public static RunState Weighed(RunState state, BagWeighed e) => BagSheet.Find(state, e.Bag) is { } planned
        ? state with { Steps = [.. state.Steps.Select(s => Open(s) ? s with { Spec = With(s.Spec, e.Bag, planned) } : s)] }
        : state;

    /// <summary>The list of a weigh-in that goes on is put right too.</summary>
    private static bool Open(RunStep step) => step.Status == RunStatus.Idle || (step.Open && step.Spec.Kind == StepKind.WeighIn);

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
