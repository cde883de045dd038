using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Plant;

/// <summary>
/// What the elements really give: none below its covering litres, none beyond its breaker, and the thermostats throttle. Where a
/// breaker cannot carry all, the vessel further down the brewhouse comes first.
/// </summary>
internal sealed class PowerBoard(HiddenTruth truth, PlantFaults faults)
{
    /// <summary>Thermostats throttle over this band below their setting, K.</summary>
    private const double BandK = 0.6;

    private readonly double[] _drawnW = new double[truth.Profile.Circuits.Length];

    private readonly Wiring _wiring = Wiring.Of(truth.Profile, [.. truth.Profile.Circuits.Take(truth.Circuits)]);

    /// <summary>Index of the tank that each circuit is plugged into.</summary>
    private ImmutableArray<int> Plugs { get; set; } = [];

    /// <summary>The plugs as they are in the morning.</summary>
    public void PlugIn(int tank) => Plugs = _wiring.AtFirst(tank);

    /// <summary>Something that heats this tank has its plug in.</summary>
    public bool Powers(int tank) =>
        truth.Profile.Vessels[tank].Burner is not null || _wiring.Leads[tank].Any(l => _wiring.Feeds(l, Plugs));

    /// <summary>Circuit that feeds a tank now; null: none does.</summary>
    public string? CircuitOf(int tank)
    {
        foreach (var lead in _wiring.Leads[tank])
        {
            if (_wiring.Feeds(lead, Plugs))
                return _wiring.Circuits[lead.Circuit].Id;
        }
        return null;
    }

    /// <summary>Moves a plug; returns the index of the tank that it was in, -1: none.</summary>
    public int MovePlug(string circuitId, int tank)
    {
        for (var c = 0; c < Plugs.Length; c++)
        {
            if (_wiring.Circuits[c].Id != circuitId || !_wiring.IsShared(c))
                continue;
            var from = Plugs[c];
            Plugs = Plugs.SetItem(c, tank);
            return from;
        }
        return -1;
    }

    /// <summary>Heat into each tank now, W; fills <paramref name="netW"/> in the order of the tanks.</summary>
    public void Share(Tank[] tanks, double[] netW)
    {
        Array.Clear(_drawnW);
        for (var i = netW.Length - 1; i >= 0; i--)
            netW[i] = i < truth.Profile.Vessels.Length ? NetW(i, truth.Profile.Vessels[i], tanks[i]) : 0;
    }

    private double NetW(int index, Vessel vessel, Tank tank)
    {
        var duty = Duty(vessel, tank);
        if (duty <= 0)
            return 0;
        double net = 0, stands = tank.StandsL;
        foreach (var lead in _wiring.Leads[index])
        {
            if (stands >= lead.Element.CoverL - 1e-6 && _wiring.Feeds(lead, Plugs) && !faults.IsTripped(_wiring.Circuits[lead.Circuit].Id))
                net += Draw(lead.Circuit, duty * lead.Element.PowerW * faults.ElementShare(vessel.Id)) * lead.Element.NetFraction;
        }
        if (vessel.Burner is { } burner && stands >= burner.CoverL - 1e-6)
            net += duty * burner.NetW;
        return net * tank.Truth.PowerFactor;
    }

    private static double Duty(Vessel vessel, Tank tank)
    {
        if (double.IsNaN(tank.SetC))
            return 0;
        var band = (tank.SetC - tank.ProbeC) / BandK;
        return Math.Clamp(band, 0, 1) * Math.Clamp(tank.AllowedW / Math.Max(1, vessel.RatedW), 0, 1);
    }

    private double Draw(int circuit, double watts)
    {
        var breaker = truth.Profile.Circuits[circuit];
        var drawn = Math.Min(watts, Math.Max(0, breaker.Volts * breaker.Amps - _drawnW[circuit]));
        _drawnW[circuit] += drawn;
        return drawn;
    }
}
