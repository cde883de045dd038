using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Plant;

/// <summary>Chilling by effectiveness and number of transfer units (Kays and London's method).</summary>
internal static class WortCooler
{
    /// <summary>Nobody throttles below this, kg/s (0.5 L/min).</summary>
    private const double SlowestKgPerS = 0.5 / 60;

    /// <summary>A tap turned down further closes.</summary>
    private const double LeastTap = 0.02;

    /// <summary>Wort temperature behind a counterflow chiller, °C.</summary>
    public static double OutC(ChillerTruth chiller, double wortKgPerS, double wortJPerKgK, double inC, double waterC)
    {
        double wort = wortKgPerS * wortJPerKgK, water = chiller.WaterLPerMin / 60 * Nature.Heats.Water;
        double least = Math.Min(wort, water), ratio = least / Math.Max(wort, water);
        var units = chiller.UaWPerK / least;
        var fade = Math.Exp(-units * (1 - ratio));
        var effectiveness = ratio > 0.999 ? units / (1 + units) : (1 - fade) / (1 - ratio * fade);
        return inC - effectiveness * least / wort * (inC - waterC);
    }

    /// <summary>Fastest flow at which the wort leaves no warmer than wanted, kg/s: what a brewer finds with the valve.</summary>
    public static double FlowKgPerS(ChillerTruth chiller, double fullKgPerS, double wortJPerKgK, double inC, double waterC, double wantedC)
    {
        if (OutC(chiller, fullKgPerS, wortJPerKgK, inC, waterC) <= wantedC)
            return fullKgPerS;
        double low = SlowestKgPerS, high = Math.Max(fullKgPerS, SlowestKgPerS);
        for (var i = 0; i < 20; i++)
        {
            var middle = 0.5 * (low + high);
            if (OutC(chiller, middle, wortJPerKgK, inC, waterC) > wantedC)
                high = middle;
            else
                low = middle;
        }
        return low;
    }

    /// <summary>
    /// Cooling water for a wort that would leave colder than wanted at its full flow: the tap is turned down, as a share of the whole. A
    /// large plate cooler brings any wort to within a degree of its water.
    /// </summary>
    public static ChillerTruth TapTurnedDown(ChillerTruth chiller, double wortKgPerS, double wortJPerKgK, double inC, double waterC, double wantedC)
    {
        ChillerTruth At(double share) => chiller with { WaterLPerMin = share * chiller.WaterLPerMin };
        if (OutC(chiller, wortKgPerS, wortJPerKgK, inC, waterC) >= wantedC)
            return chiller;
        double low = LeastTap, high = 1;
        for (var i = 0; i < 20; i++)
        {
            var middle = 0.5 * (low + high);
            if (OutC(At(middle), wortKgPerS, wortJPerKgK, inC, waterC) > wantedC)
                low = middle;
            else
                high = middle;
        }
        return At(high);
    }

    /// <summary>Heat that a coil in a stirred kettle takes, W.</summary>
    public static double CoilW(ChillerTruth chiller, double wortC, double waterC)
    {
        var water = chiller.WaterLPerMin / 60 * Nature.Heats.Water;
        return water * (1 - Math.Exp(-chiller.UaWPerK / water)) * (wortC - waterC);
    }
}
