using System.Collections.Immutable;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>
/// A wet plug lets the breaker fall. Switched on again as it is, it holds (mild) or falls again after 4 minutes (plain) or 90 s (severe);
/// dried first, it holds.
/// </summary>
internal sealed class TrippedCircuit(Mishap mishap, VirtualPlant plant) : LiveMishap(mishap, plant)
{
    private const double FallsAfterS = 240, ResetS = 60, DryingS = 360;

    private string? _vessel;

    private double _onS = double.NaN, _fallsS = double.NaN;

    private bool _dry;

    public override ImmutableArray<HandAct> Acts => [HandAct.DryAndReset, HandAct.ResetBreaker];

    protected override void Placed(Order order) => _vessel = order.Spec.Vessel;

    protected override void Watch(double sinceS, double seconds)
    {
        if (BeganS is null && sinceS >= FallsAfterS && Plant.CircuitOf(_vessel!) is { } circuit)
        {
            About = circuit;
            Begin();
            Fall();
        }
        else if (NowS >= _onS)
        {
            Plant.Faults.Reset(About);
            _fallsS = _dry ? double.NaN : NowS + By(double.PositiveInfinity, 240, 90);
            _onS = double.NaN;
        }
        else if (NowS >= _fallsS)
        {
            Fall();
        }
    }

    protected override void Mend(HandAct act)
    {
        _dry = act == HandAct.DryAndReset;
        _onS = NowS + (_dry ? DryingS : ResetS);
    }

    private void Fall()
    {
        _fallsS = double.NaN;
        Plant.Faults.Trip(About);
        Ask();
    }
}
