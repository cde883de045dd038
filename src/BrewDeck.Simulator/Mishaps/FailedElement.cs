using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>Some loops of the kettle's element burn out: 70, 50 or 30 % of its heat are left. Covered for the most part, the kettle boils on less.</summary>
internal sealed class FailedElement(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double FailsAfterS = 120, ShowsAfterS = 60, NearlyShut = 0.3;

    public override ImmutableArray<HandAct> Acts => [HandAct.CoverKettle];

    /// <summary>The wort is boiled elsewhere: what is left of the element no longer matters.</summary>
    internal override void Remedied(RemedyKind kind)
    {
        if (Asks && kind == RemedyKind.BoilElsewhere)
            Done(Core.Rehearsing.Answer.Of(kind));
    }

    protected override void Placed(Order order) => About = order.Spec.Vessel;

    protected override void Watch(double sinceS, double seconds)
    {
        if (BeganS is null && sinceS >= FailsAfterS)
        {
            Begin();
            Plant.Faults.Elements(About, By(0.7, 0.5, 0.3));
        }
        if (SeenS is null && NowS >= BeganS + ShowsAfterS)
            Ask();
    }

    protected override void Mend(HandAct act)
    {
        Plant.Faults.BoilOpenShare = NearlyShut;
        Plant.Lid(About, Math.Min(NearlyShut, Plant[About].OpenShare));
    }
}
