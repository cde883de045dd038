using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>
/// Liquor that nobody stirs lies in layers: its probe, and with it the thermostat, is that much warmer than the whole until the liquor
/// moves. 2.5, 5 or 9 K: what layers in an unstirred tank can be (common practice, no source).
/// </summary>
internal sealed class ColdStrike(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double ShowsAfterS = 60;

    private double _movedS = double.NaN;

    public override ImmutableArray<Answer> Answers =>
        [Core.Rehearsing.Answer.Of(RemedyKind.HeatMash), Core.Rehearsing.Answer.Of(RemedyKind.AddHotWater), Core.Rehearsing.Answer.Leave];

    internal override void Remedied(RemedyKind kind)
    {
        if (Asks && kind is RemedyKind.HeatMash or RemedyKind.AddHotWater or RemedyKind.LeaveIt)
            Done(Core.Rehearsing.Answer.Of(kind));
    }

    protected override void Placed(Order order)
    {
        Begin();
        About = order.Spec.Vessel;
        Plant[About].ProbeOffK = By(2.5, 5, 9);
    }

    protected override void Passing(Order order)
    {
        if (BeganS is null)
            return;
        if (order.Kind is StepKind.TransferStrike or StepKind.DoughIn or StepKind.TransferMash && double.IsNaN(_movedS))
        {
            _movedS = NowS;
            Plant[About].ProbeOffK = 0;
        }
        else if (order.Kind is StepKind.Vorlauf or StepKind.Lauter or StepKind.RunOff or StepKind.LiftBasket)
        {
            Close();
        }
    }

    protected override void Watch(double sinceS, double seconds)
    {
        if (SeenS is null && NowS >= _movedS + ShowsAfterS)
            Ask();
    }
}
