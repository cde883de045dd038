using System.Collections.Immutable;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

internal static class Boiling
{
    /// <summary>Wort this near the boil counts as boiling: no thermometer of a brewhouse tells them apart; K.</summary>
    private const double OffBoilK = 0.5;

    /// <summary>Beyond this the wort is syrup and the law of dilute solutions says nothing; degrees Plato.</summary>
    private const double MostPlato = 60;

    /// <summary>Boiling point of what stands in a vessel at this altitude, °C.</summary>
    public static double BoilingC(PlantSetting setting, in VesselState v) =>
        setting.BoilingC + SugarSolution.BoilingPointRiseK(Math.Clamp(v.Plato, 0, MostPlato));

    /// <summary>Water that leaves a boil, kg/s: the habit of this kettle, or what its net heat can raise, if that is less.</summary>
    public static double EvaporationKgPerS(PlantSetting setting, int kettle, in VesselState v, ImmutableArray<int> plugs)
    {
        var boiling = BoilingC(setting, v);
        var net = setting.NetHeatW(kettle, Contents.LiquidL(v), plugs) - setting.LossWPerK(kettle) * (boiling - setting.AmbientC);
        return Math.Min(setting.Habits.EvaporationKgPerH / 3600, Boil.EvaporationKgPerS(Math.Max(0, net), boiling));
    }

    public static Progress HeatToBoil(Workbench bench, StepSpec spec, double limitS)
    {
        var kettle = bench.Setting.IndexOf(spec.Vessel);
        var boiling = BoilingC(bench.Setting, bench.Vessels[kettle]);
        return Heating.To(bench, kettle, spec, boiling, limitS, holdAfter: true);
    }

    /// <summary>
    /// A boil for the minutes of the step. Wort that has cooled meanwhile, or got cold water, comes back first to where it counts as boiling: no
    /// further, or a cut on the way would let it boil sooner.
    /// </summary>
    public static Progress Roll(Workbench bench, StepSpec spec, double limitS)
    {
        var kettle = bench.Setting.IndexOf(spec.Vessel);
        var progress = Progress.ByClock(spec, limitS);
        var near = BoilingC(bench.Setting, bench.Vessels[kettle]) - OffBoilK;
        var heatsUpS = bench.Vessels[kettle].TempC < near
            ? Heating.To(bench, kettle, spec, near, progress.ElapsedS, holdAfter: false).ElapsedS
            : 0;
        if (bench.NetHeatW(kettle) <= 0)
            bench.Pass(kettle, progress.ElapsedS - heatsUpS, double.NaN);
        else if (progress.ElapsedS > heatsUpS)
            Roll(bench, kettle, progress.ElapsedS - heatsUpS);
        return progress with { VolumeL = Contents.CoolL(bench.Vessels[kettle]) };
    }

    /// <summary>Foam is watched with the heat on, and what is done next leaves it on: the wort boils on until then.</summary>
    public static Progress HotBreak(Workbench bench, StepSpec spec, double limitS)
    {
        var progress = Roll(bench, spec, limitS);
        var kettle = bench.Setting.IndexOf(spec.Vessel);
        if (bench.NetHeatW(kettle) > 0)
            Keep(bench, kettle);
        return progress;
    }

    private static void Keep(Workbench bench, int kettle) =>
        bench.Vessels[kettle] = bench.Vessels[kettle] with { HoldC = BoilingC(bench.Setting, bench.Vessels[kettle]) };

    /// <summary>Wort that is kept at the boil gives off steam like any that boils.</summary>
    /// <returns>False: it does not boil, and nothing was done.</returns>
    public static bool BoilsOn(Workbench bench, int vessel, double seconds)
    {
        var v = bench.Vessels[vessel];
        if (vessel != bench.Kettle || bench.KnockedOutL > 0 || !IsKeptAtTheBoil(bench.Setting, v) || bench.NetHeatW(vessel) <= 0)
            return false;
        Roll(bench, vessel, seconds);
        Keep(bench, vessel);
        return true;
    }

    /// <summary>Wort, boiling, and its heat is on.</summary>
    public static bool IsKeptAtTheBoil(PlantSetting setting, in VesselState v) =>
        v.ExtractKg > 0 && BoilingC(setting, v) - OffBoilK is var near && v.HoldC >= near && v.TempC >= near;

    private static void Roll(Workbench bench, int kettle, double seconds)
    {
        var v = bench.Vessels[kettle];
        var boiling = BoilingC(bench.Setting, v);
        var gone = Math.Min(v.WaterKg, EvaporationKgPerS(bench.Setting, kettle, v, bench.PlugAt) * seconds);
        var half = v with { WaterKg = v.WaterKg - 0.5 * gone };
        bench.Expose(half, seconds, boiling);
        bench.Vessels[kettle] = v with
        {
            WaterKg = v.WaterKg - gone,
            TempC = boiling,
            AtS = v.AtS + seconds,
            HoldC = double.NaN,
        };
    }

    /// <summary>Hops, sugar, extract and finings into the kettle, at once.</summary>
    public static Progress Add(Workbench bench, StepSpec spec)
    {
        foreach (var charge in spec.Charges)
            Add(bench, charge);
        return new(0, null);
    }

    private static void Add(Workbench bench, Charge charge)
    {
        var kettle = bench.Kettle;
        if (charge.Kind == ChargeKind.Hop)
            bench.AddHops(new(charge.Name, charge.AlphaG, charge.Amount / 1000));
        if (charge.Kind is not (ChargeKind.Extract or ChargeKind.Grist))
            return;
        bench.Vessels[kettle] = Contents.Add(
            bench.Vessels[kettle], bench.Wall(kettle), charge.WaterKg, charge.ExtractKg, bench.Setting.AmbientC);
        bench.Colour(charge);
    }
}
