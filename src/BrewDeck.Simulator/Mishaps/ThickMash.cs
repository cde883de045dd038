using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>An eighth, a fifth or a third of the strike liquor stays in its tank: the mash is stiff, cold, and grain stays dry in lumps.</summary>
internal sealed class ThickMash(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double FeltAfterS = 120;

    private (string From, string To, double Litres) _behind = ("", "", 0);

    private double _doughS = double.NaN;

    public override ImmutableArray<HandAct> Acts => [HandAct.PumpOver];

    protected override void Placed(Order order)
    {
        Begin();
        About = order.Spec.To;
        Plant.Faults.StrikeShare = 1 - By(0.12, 0.22, 0.33);
        _behind = (order.Spec.Vessel, order.Spec.To, (1 - Plant.Faults.StrikeShare) * (order.Spec.VolumeL ?? 0));
    }

    protected override void Passing(Order order)
    {
        if (BeganS is null)
            return;
        if (order.Kind == StepKind.DoughIn)
            _doughS = NowS;
        else if (order.Kind is StepKind.Vorlauf or StepKind.Lauter or StepKind.RunOff)
            Close();
    }

    protected override void Watch(double sinceS, double seconds)
    {
        // set for this transfer only
        Plant.Faults.StrikeShare = 1;
        if (SeenS is null && NowS >= _doughS + FeltAfterS)
            Ask();
    }

    protected override void Mend(HandAct act)
    {
        Plant.Transfer(_behind.From, _behind.To, _behind.Litres, Plant.Truth.PumpLPerMin);
        Plant.BreakLumps();
    }
}
