using BrewDeck.Core.Brewhouses;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Plant;

/// <summary>
/// What the elements really give: none below its covering litres, none beyond its breaker, and the thermostats throttle. Where a
/// breaker cannot carry all, the vessel further down the brewhouse comes first.
/// </summary>
internal sealed class PowerBoard(HiddenTruth truth)
{
    /// <summary>Thermostats throttle over this band below their setting, K.</summary>
    private const double BandK = 0.6;

    private readonly double[] _drawnW = new double[truth.Profile.Circuits.Length];

    /// <summary>Heat into each tank now, W; fills <paramref name="netW"/> in the order of the tanks.</summary>
    public void Share(Tank[] tanks, double[] netW)
    {
        Array.Clear(_drawnW);
        for (var i = netW.Length - 1; i >= 0; i--)
            netW[i] = i < truth.Profile.Vessels.Length ? NetW(truth.Profile.Vessels[i], tanks[i]) : 0;
    }

    private double NetW(Vessel vessel, Tank tank)
    {
        var duty = Duty(vessel, tank);
        if (duty <= 0)
            return 0;
        double net = 0, stands = tank.StandsL;
        foreach (var element in vessel.Elements)
        {
            if (stands >= element.CoverL - 1e-6)
                net += Draw(CircuitOf(element), duty * element.PowerW) * element.NetFraction;
        }
        return net * tank.Truth.PowerFactor;
    }

    private static double Duty(Vessel vessel, Tank tank)
    {
        if (double.IsNaN(tank.SetC))
            return 0;
        var band = (tank.SetC - tank.TempC - tank.Truth.ThermometerBiasK) / BandK;
        return Math.Clamp(band, 0, 1) * Math.Clamp(tank.AllowedW / Math.Max(1, vessel.RatedW), 0, 1);
    }

    private double Draw(int circuit, double watts)
    {
        var breaker = truth.Profile.Circuits[circuit];
        var drawn = Math.Min(watts, Math.Max(0, breaker.Volts * breaker.Amps - _drawnW[circuit]));
        _drawnW[circuit] += drawn;
        return drawn;
    }

    /// <summary>Its own circuit, or the last one in use.</summary>
    private int CircuitOf(Element element)
    {
        for (var i = 0; i < truth.Circuits; i++)
        {
            if (truth.Profile.Circuits[i].Id == element.CircuitId)
                return i;
        }
        return truth.Circuits - 1;
    }
}
