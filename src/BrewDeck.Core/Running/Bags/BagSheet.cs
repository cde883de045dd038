using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Bags;

/// <summary>Malt, extract and hops that are still to go in.</summary>
public static class BagSheet
{
    /// <summary>In the order in which they go in.</summary>
    public static IEnumerable<PlannedBag> Of(RunState state) => ToCome(state)
        .SelectMany(s => s.Spec.Charges).Where(Weighs)
        .GroupBy(c => (c.Kind, c.Name)).Select(g => Sum(g.Key.Kind, g.Key.Name, [.. g]));

    public static PlannedBag? Find(RunState state, Bag bag) => Of(state).FirstOrDefault(b => b.Kind == bag.Kind && b.Name == bag.Name);

    /// <summary>Steps that will bring something; the weigh-in only lists what others bring, and the strike liquor is heated for the grist to come.</summary>
    private static IEnumerable<RunStep> ToCome(RunState state) =>
        state.Steps.Where(s => s.Status == RunStatus.Idle && s.Spec.Kind is not (StepKind.WeighIn or StepKind.HeatStrike));

    private static bool Weighs(Charge charge) => charge.Kind is ChargeKind.Grist or ChargeKind.Extract or ChargeKind.Hop && charge.Amount > 0;

    private static PlannedBag Sum(ChargeKind kind, string name, IReadOnlyList<Charge> charges)
    {
        ImmutableArray<double> doses = [.. charges.Select(c => c.Amount)];
        double amount = charges.Sum(c => c.Amount), water = charges.Sum(c => c.WaterKg), extract = charges.Sum(c => c.ExtractKg);
        return kind == ChargeKind.Hop
            ? new(kind, name, amount, charges.Sum(c => c.AlphaG) / amount, 0, 0) { Doses = doses }
            : new(kind, name, amount, 0, water / amount, amount > water ? extract / (amount - water) : 0) { Doses = doses };
    }
}
