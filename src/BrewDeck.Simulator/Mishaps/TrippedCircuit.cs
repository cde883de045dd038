using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>
/// A wet plug trips the breaker. Switched on again as it is, it holds (mild) or trips again after 4 minutes (plain) or 90 s (severe);
/// dried first, it holds.
/// </summary>
internal sealed class TrippedCircuit(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double TripsAfterS = 240, ResetS = 60, DryingS = 360;

    private string? _vessel;

    private double _tripsS = double.NaN;

    private bool _dry;

    public override ImmutableArray<HandAct> Acts => [HandAct.DryAndReset, HandAct.ResetBreaker];

    /// <summary>Plugged in elsewhere: the deck has asked whether it is dry.</summary>
    internal override void Remedied(RemedyKind kind)
    {
        if (!Asks || kind != RemedyKind.OtherCircuit)
            return;
        Done(Core.Rehearsing.Answer.Of(kind));
        Mend(HandAct.DryAndReset);
    }

    protected override void Placed(Order order) => _vessel = order.Spec.Vessel;

    protected override void Watch(double sinceS, double seconds)
    {
        if (BeganS is null && sinceS >= TripsAfterS && Plant.CircuitOf(_vessel!) is { } circuit)
        {
            About = circuit;
            Begin();
            Trip();
        }
        else if (NowS >= DoneS)
        {
            Plant.Faults.Reset(About);
            _tripsS = _dry ? double.NaN : NowS + By(double.PositiveInfinity, 240, 90);
            DoneS = double.NaN;
        }
        else if (NowS >= _tripsS)
        {
            Trip();
        }
    }

    protected override void Mend(HandAct act)
    {
        _dry = act == HandAct.DryAndReset;
        DoneS = NowS + (_dry ? DryingS : ResetS);
    }

    private void Trip()
    {
        _tripsS = double.NaN;
        Plant.Faults.Trip(About);
        Ask();
    }
}
