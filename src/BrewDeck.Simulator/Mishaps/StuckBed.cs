using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>
/// The bed closes some minutes after the run-off was opened: its flow falls exponentially towards 45, 20 or 6 % of a sound bed's. Raked
/// and settled anew it runs again; run at half the flow it opens slowly. Magnitudes are common practice, no source.
/// </summary>
internal sealed class StuckBed(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double ClosesAfterS = 480, ClosingS = 240, OpeningS = 600, RakingS = 60 * HandWork.RakeMin, ShowsAt = 0.7, Half = 0.5;

    public override ImmutableArray<HandAct> Acts => [HandAct.RakeBed, HandAct.RunSlower];

    internal override void Finished(string stepId)
    {
        if (stepId == About)
            Sound();
    }

    /// <summary>A remedy of the run sheet stops the run-off by itself; what it does to the bed is the same.</summary>
    internal override void Remedied(RemedyKind kind)
    {
        if (!Asks || kind is not (RemedyKind.RakeBed or RemedyKind.Underlet or RemedyKind.RestBed or RemedyKind.LeaveIt))
            return;
        Done(Core.Rehearsing.Answer.Of(kind));
        if (kind != RemedyKind.LeaveIt)
            Mend(kind == RemedyKind.RestBed ? HandAct.RunSlower : HandAct.RakeBed);
    }

    protected override void Placed(Order order) => About = order.Id;

    protected override void Watch(double sinceS, double seconds)
    {
        if (NowS >= DoneS)
            Settled();
        if (sinceS < ClosesAfterS || !Plant.RunsOff || !double.IsNaN(DoneS))
            return;
        Begin();
        var (aims, takesS) = Plant.Faults.RunOffValve < 1 ? (0.8, OpeningS) : (By(0.45, 0.2, 0.06), ClosingS);
        Plant.Faults.BedShare += (aims - Plant.Faults.BedShare) * (1 - Math.Exp(-seconds / takesS));
        if (SeenS is null && Plant.Faults.BedShare < ShowsAt)
            Ask();
    }

    protected override void Mend(HandAct act)
    {
        Plant.Faults.RunOffValve = act == HandAct.RakeBed ? 0 : Half;
        DoneS = act == HandAct.RakeBed ? NowS + RakingS : double.NaN;
    }

    private void Settled()
    {
        if (Plant.Faults.RunOffValve == 0)
            Plant.StirMash();
        Plant.Faults.RunOffValve = 1;
        Plant.Faults.BedShare = 0.95;
    }

    private void Sound()
    {
        (Plant.Faults.BedShare, Plant.Faults.RunOffValve) = (1, 1);
        Close();
    }
}
