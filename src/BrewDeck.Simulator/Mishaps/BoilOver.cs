using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>
/// Foam climbs just below the boil. If the heat is not turned down within 120, 75 or 40 s, it goes over the rim, 0.8, 1.5 or 3 litres of
/// wort a minute for three minutes; then the protein has broken. Magnitudes are common practice, no source.
/// </summary>
internal sealed class BoilOver(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double BelowBoilK = 1.2, LastsS = 180, DownS = 60;

    private string _step = "";

    private double _share = 1;

    public override bool Worse => OverS > 0;

    public override ImmutableArray<HandAct> Acts => [HandAct.TurnDown];

    /// <summary>Holding the step turns its heat off: that helps as well.</summary>
    internal override void Held(string stepId)
    {
        if (Asks && stepId == _step)
            Done(Core.Rehearsing.Answer.Of(HandAct.TurnDown));
    }

    protected override void Placed(Order order) => (_step, About) = (order.Id, order.Spec.Vessel);

    protected override void Watch(double sinceS, double seconds)
    {
        if (BeganS is null && Plant.Kettle.TempC >= Plant.BoilingC(Plant.Kettle) - BelowBoilK)
        {
            Begin();
            Ask();
        }
        if (NowS >= DoneS)
        {
            Plant.Faults.Elements(About, _share);
            DoneS = double.NaN;
        }
        Climb(seconds);
    }

    protected override void Mend(HandAct act)
    {
        _share = Plant.Faults.ElementShare(About);
        Plant.Faults.Elements(About, 0);
        DoneS = NowS + DownS;
    }

    /// <summary>Since the foam has reached the rim, s; below 0: it has not.</summary>
    private double OverS => NowS - (BeganS ?? double.PositiveInfinity) - By(120, 75, 40);

    private void Climb(double seconds)
    {
        if (Answer is { Act: HandAct.TurnDown })
            return;
        var over = OverS;
        if (over > LastsS)
            Close();
        else if (over > 0)
            Plant.Spill(By(0.8, 1.5, 3) / 60 * Math.Min(seconds, over));
    }
}
