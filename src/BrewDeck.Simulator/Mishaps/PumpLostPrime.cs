using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>Air in the pump: 30, 10 or no percent of its flow are left, until its line is filled again. A jug carries 3 L a minute.</summary>
internal sealed class PumpLostPrime(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double SucksAfterS = 20, HeardAfterS = 15, PrimingS = 60 * HandWork.PrimeMin, JugLPerMin = 3;

    /// <summary>What was left of its flow when the step ended.</summary>
    private double _share = 1;

    public override ImmutableArray<HandAct> Acts => [HandAct.PrimePump, HandAct.CarryByJug];

    /// <summary>Nothing can be brewed without the liquor: leaving it is no answer.</summary>
    public override ImmutableArray<Answer> Answers => [.. Acts.Select(Core.Rehearsing.Answer.Of)];

    internal override void Finished(string stepId)
    {
        if (stepId != About || BeganS is null)
            return;
        (_share, Plant.Faults.PumpShare) = (Plant.Faults.PumpShare, 1);
        Close();
    }

    /// <summary>The air is still in the pump.</summary>
    internal override void GoesOn(string stepId)
    {
        if (stepId != About || BeganS is null || _share >= 1)
            return;
        Plant.Faults.PumpShare = _share;
        Ask();
    }

    /// <summary>Left as it is, it whines on.</summary>
    protected override bool StaysOpen(Answer answer) => answer == Core.Rehearsing.Answer.Leave;

    protected override void Placed(Order order) => About = order.Id;

    protected override void Watch(double sinceS, double seconds)
    {
        if (BeganS is null && sinceS >= SucksAfterS && Plant.Pouring)
        {
            Begin();
            Plant.Faults.PumpShare = By(0.3, 0.1, 0);
        }
        if (SeenS is null && NowS >= BeganS + HeardAfterS)
            Ask();
        if (NowS >= DoneS && Plant.Faults.PumpShare < 1)
        {
            Plant.Faults.PumpShare = 1;
            Close();
        }
    }

    protected override void Mend(HandAct act)
    {
        if (act == HandAct.PrimePump)
            DoneS = NowS + PrimingS;
        else
            Plant.Faults.PumpShare = Math.Max(Plant.Faults.PumpShare, JugLPerMin / Plant.Truth.PumpLPerMin);
    }
}
