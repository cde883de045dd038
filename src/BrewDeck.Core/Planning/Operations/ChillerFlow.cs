using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>How far the wort is throttled so that it leaves the chiller at the pitching temperature.</summary>
internal static class ChillerFlow
{
    /// <summary>Slower than this nobody throttles; L/min.</summary>
    private const double SlowestLPerMin = 0.5;

    /// <returns>Wort flow in L/min, the litres at 20 °C as they arrive, and its temperature behind the chiller in °C: the target, or the best that can be had.</returns>
    public static (double LPerMin, double OutC) For(PlantSetting setting, in VesselState wort, double targetC)
    {
        var chiller = setting.Brewhouse.Chiller;
        if (chiller.IsCoil)
            return (chiller.WortLPerMin, wort.TempC);
        var fullC = OutC(setting, wort, chiller.WortLPerMin);
        if (fullC <= targetC)
            return (chiller.WortLPerMin, targetC);
        var slowC = OutC(setting, wort, SlowestLPerMin);
        return slowC > targetC ? (SlowestLPerMin, slowC) : (Throttled(setting, wort, targetC), targetC);
    }

    private static double Throttled(PlantSetting setting, in VesselState wort, double targetC)
    {
        double low = SlowestLPerMin, high = setting.Brewhouse.Chiller.WortLPerMin;
        for (var i = 0; i < 30; i++)
        {
            var middle = 0.5 * (low + high);
            if (OutC(setting, wort, middle) > targetC)
                high = middle;
            else
                low = middle;
        }
        return low;
    }

    private static double OutC(PlantSetting setting, in VesselState wort, double litresPerMin)
    {
        var chiller = setting.Brewhouse.Chiller;
        var mean = 0.5 * (wort.TempC + setting.SourceWaterC);
        var kgPerS = litresPerMin / 60 * SugarSolution.DensityKgPerM3(wort.Plato, 20) / 1000;
        return Physics.Chiller.CounterflowOutletC(
            kgPerS * SugarSolution.SpecificHeatJPerKgK(wort.Plato, mean),
            wort.TempC,
            chiller.WaterLPerMin / 60 * Water.SpecificHeatJPerKgK(20),
            setting.SourceWaterC,
            chiller.UaWPerK);
    }
}
