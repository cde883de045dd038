using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>
/// The refractometer is broken, and the hydrometer floats in samples of 38, 50 or 62 °C: it shows 5 to 17 points too little. It is right
/// again once samples are cooled, or when somebody has typed the temperature with the reading.
/// </summary>
internal sealed class MisreadHydrometer(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    /// <summary>A reading that near the truth was corrected.</summary>
    private const double NearSg = 0.003;

    private bool _ran;

    public override ImmutableArray<HandAct> Acts => [HandAct.CoolSample];

    internal override void Took(Reading reading)
    {
        if (Asks && reading.Kind == ReadingKind.Gravity && reading.Vessel == About && Math.Abs(reading.Value - Plant.Kettle.GravitySg) < NearSg)
            Done(Core.Rehearsing.Answer.Of(HandAct.CoolSample));
    }

    protected override void Placed(Order order)
    {
        Begin();
        About = order.Spec.To;
        Plant.Faults.SampleC = By(38, 50, 62);
    }

    protected override void Passing(Order order)
    {
        if (BeganS is null || order.Kind is not (StepKind.CastOut or StepKind.ChillInKettle))
            return;
        Plant.Faults.SampleC = double.NaN;
        Close();
    }

    protected override void Watch(double sinceS, double seconds)
    {
        _ran |= Plant.RunsOff;
        if (SeenS is null && _ran && !Plant.RunsOff)
            Ask();
    }

    protected override void Mend(HandAct act) => Plant.Faults.SampleC = double.NaN;
}
