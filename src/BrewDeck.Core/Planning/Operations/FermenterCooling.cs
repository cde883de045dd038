using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>Wort in the fermenter on its way to the pitching temperature: left to the room or to the fermenter's own cooling, or chilled.</summary>
internal static class FermenterCooling
{
    public static Progress Run(Workbench bench, StepSpec spec, double limitS)
    {
        var (index, target) = (bench.Setting.FermenterIndex, spec.TargetC!.Value);
        var (towardsC, perS) = Drift(bench.Setting, bench.Vessels[index], spec.Label);
        var v = bench.Vessels[index];
        var needed = SecondsTo(v.TempC, target, towardsC, perS);
        var seconds = Math.Min(Math.Min(needed, Heating.HopelessS), limitS);
        var end = towardsC + (v.TempC - towardsC) * Math.Exp(-perS * seconds);
        bench.Vessels[index] = v with { TempC = end, AtS = v.AtS + seconds, HoldC = double.NaN };
        return new(seconds, seconds >= needed ? null : spec, target);
    }

    /// <summary>What the wort comes near to, °C, and how fast, as a share of what is missing, 1/s.</summary>
    private static (double TowardsC, double PerS) Drift(PlantSetting setting, in VesselState v, string label)
    {
        var fermenter = setting.FermenterIndex;
        var capacity = Contents.CapacityJPerK(v, setting.HeatCapacityJPerK(fermenter), v.TempC);
        var lossWPerK = setting.LossWPerK(fermenter);
        return label switch
        {
            StepLabels.Room => (setting.AmbientC, lossWPerK / capacity),
            // where the room gives as much as the cooling takes
            StepLabels.OwnCooling => (setting.AmbientC - setting.Brewhouse.Fermenter.CoolingW / lossWPerK, lossWPerK / capacity),
            _ => (setting.SourceWaterC, ChillerWPerK(setting, v) / capacity),
        };
    }

    /// <summary>What the chiller takes for each K between wort and cooling water, W/K: the same at any temperature.</summary>
    private static double ChillerWPerK(PlantSetting setting, in VesselState v)
    {
        var chiller = setting.Brewhouse.Chiller;
        var water = chiller.WaterLPerMin / 60 * Water.SpecificHeatJPerKgK(20);
        if (chiller.IsCoil)
            return water * (1 - Math.Exp(-chiller.UaWPerK / water));
        var wort = chiller.WortLPerMin / 60 * SugarSolution.DensityKgPerM3(v.Plato, 20) / 1000 * SugarSolution.SpecificHeatJPerKgK(v.Plato, 20);
        return wort * (1 - Physics.Chiller.CounterflowOutletC(wort, 1, water, 0, chiller.UaWPerK));
    }

    /// <summary>0 when it is there already, or past it; infinite when it never gets there.</summary>
    private static double SecondsTo(double celsius, double targetC, double towardsC, double perS)
    {
        if (Math.Abs(celsius - targetC) <= 1e-6)
            return 0;
        return ((celsius - towardsC) / (targetC - towardsC)) switch
        {
            > 1 and var share when double.IsFinite(share) => Math.Log(share) / perS,
            > 0 and <= 1 => 0,
            _ => double.PositiveInfinity,
        };
    }
}
