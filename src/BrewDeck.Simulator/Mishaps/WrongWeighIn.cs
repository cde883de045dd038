using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>6, 12 or 20 % of the grist stay in a sack that should be empty; it is found when the rest is in the tun.</summary>
internal sealed class WrongWeighIn(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double StirringInS = 180;

    private (double WeighedKg, double WaterKg, double ExtractKg) _rest;

    private bool _doughing;

    public override ImmutableArray<HandAct> Acts => [HandAct.AddRestOfGrist];

    protected override void Placed(Order order)
    {
        Begin();
        Plant.Faults.GristShare = 1 - By(0.06, 0.12, 0.2);
    }

    protected override void Passing(Order order)
    {
        if (BeganS is null)
            return;
        if (order.Kind is StepKind.Vorlauf or StepKind.Lauter or StepKind.RunOff or StepKind.LiftBasket)
            Close();
        if (order.Kind != StepKind.DoughIn)
            return;
        var grist = order.Spec.Charges.Where(c => c.Kind == ChargeKind.Grist).ToList();
        var share = 1 - Plant.Faults.GristShare;
        _rest = (share * grist.Sum(c => c.Amount), share * grist.Sum(c => c.WaterKg), share * grist.Sum(c => c.ExtractKg));
        (About, _doughing) = (order.Spec.Vessel, true);
    }

    protected override void Watch(double sinceS, double seconds)
    {
        if (SeenS is null && _doughing && !Plant.DoughingIn)
            Ask();
    }

    protected override void Mend(HandAct act) => Plant.DoughIn(_rest.WeighedKg, _rest.WaterKg, _rest.ExtractKg, StirringInS);
}
