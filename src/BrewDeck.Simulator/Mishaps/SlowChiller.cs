using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>
/// A fouled chiller (80, 60 or 45 % of its heat transfer) on thin water (60, 40 or 25 %). Flushed backwards, with its tap fully open, it
/// is nearly as it was.
/// </summary>
internal sealed class SlowChiller(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double ShowsAfterS = 90, FlushingS = 300, Nothing = 1e-3, WarmerK = 4;

    public override ImmutableArray<HandAct> Acts => Plant.Truth.Chiller.IsCoil
        ? [HandAct.FlushChiller]
        : [HandAct.FlushChiller, HandAct.RunWarmer];

    internal override void Finished(string stepId)
    {
        if (stepId == About)
            Close();
    }

    protected override void Placed(Order order)
    {
        Begin();
        About = order.Id;
        (Plant.Faults.ChillerTransferShare, Plant.Faults.ChillerWaterShare) = (By(0.8, 0.6, 0.45), By(0.6, 0.4, 0.25));
    }

    protected override void Watch(double sinceS, double seconds)
    {
        if (SeenS is null && sinceS >= ShowsAfterS)
            Ask();
        if (NowS < DoneS || double.IsNaN(DoneS))
            return;
        (Plant.Faults.ChillerTransferShare, Plant.Faults.ChillerWaterShare, Plant.Faults.CastOutStands) = (0.95, 0.95, false);
        DoneS = double.NaN;
    }

    protected override void Mend(HandAct act)
    {
        if (act == HandAct.RunWarmer)
        {
            Plant.RunWarmer(WarmerK);
            return;
        }
        (Plant.Faults.ChillerWaterShare, Plant.Faults.CastOutStands) = (Nothing, true);
        DoneS = NowS + FlushingS;
    }
}
