using System.Collections.Immutable;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

internal static class Boiling
{
    /// <summary>Boiling point of what stands in a vessel at this altitude, °C.</summary>
    public static double BoilingC(PlantSetting setting, in VesselState v) =>
        setting.BoilingC + SugarSolution.BoilingPointRiseK(v.Plato);

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

    /// <summary>A rolling boil for the minutes of the step.</summary>
    public static Progress Roll(Workbench bench, StepSpec spec, double limitS)
    {
        var kettle = bench.Setting.IndexOf(spec.Vessel);
        var progress = Progress.ByClock(spec, limitS);
        var v = bench.Vessels[kettle];
        var boiling = BoilingC(bench.Setting, v);
        var gone = Math.Min(v.WaterKg, EvaporationKgPerS(bench.Setting, kettle, v, bench.PlugAt) * progress.ElapsedS);
        var half = v with { WaterKg = v.WaterKg - 0.5 * gone };
        var minutes = progress.ElapsedS / 60;
        bench.BoilGravityMinutes += SugarSolution.SgFromPlato(half.Plato) * minutes;
        bench.BoiledMinutes += minutes;
        bench.Expose(progress.ElapsedS, boiling);
        bench.Vessels[kettle] = v with
        {
            WaterKg = v.WaterKg - gone,
            TempC = boiling,
            AtS = v.AtS + progress.ElapsedS,
            HoldC = double.NaN,
        };
        return progress with { VolumeL = Contents.CoolL(bench.Vessels[kettle]) };
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
            bench.Hops.Add(new HopDose(charge.Name, charge.AlphaG, charge.Amount / 1000, 0));
        if (charge.Kind is not (ChargeKind.Extract or ChargeKind.Grist))
            return;
        bench.Vessels[kettle] = Contents.Add(
            bench.Vessels[kettle], bench.Wall(kettle), charge.WaterKg, charge.ExtractKg, bench.Setting.AmbientC);
        bench.ColourKgEbc += charge.Amount * charge.ColourEbc;
    }
}
