using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning;

/// <summary>Volumes and heat of what stands in a vessel. Enthalpies are additive in water, extract, dry grain and wall, so mixing conserves heat.</summary>
public static class Contents
{
    /// <summary>Specific heat of dissolved extract, J/(kg·K): what makes 12 °P wort at 60 °C agree with <see cref="SugarSolution"/>.</summary>
    public static readonly double ExtractJPerKgK =
        (SugarSolution.SpecificHeatJPerKgK(12, 60) - 0.88 * Water.SpecificHeatJPerKgK(60)) / 0.12;

    /// <summary>Specific heat of dry grain solids, J/(kg·K).</summary>
    public static readonly double DryGrainJPerKgK = MashHeat.MaltSpecificHeatJPerKgK(0);

    /// <summary>Litres taken by a kg of dry grain solids in the mash: swollen husk and grits, common practice, no source.</summary>
    public const double GrainLPerKg = 0.67;

    /// <summary>Liquid alone, litres at its own temperature.</summary>
    public static double LiquidL(in VesselState v) =>
        v.LiquidKg <= 0 ? 0 : 1000 * v.LiquidKg / SugarSolution.DensityKgPerM3(v.Plato, v.TempC);

    /// <summary>Liquid alone, litres at 20 °C.</summary>
    public static double CoolL(in VesselState v) =>
        v.LiquidKg <= 0 ? 0 : 1000 * v.LiquidKg / SugarSolution.DensityKgPerM3(v.Plato, 20);

    /// <summary>All that stands in the vessel, grain included, litres at its own temperature.</summary>
    public static double StandsL(in VesselState v) => LiquidL(v) + GrainLPerKg * v.GrainDryKg;

    /// <summary>Heat in the vessel and its contents against 0 °C, J.</summary>
    public static double HeatJ(in VesselState v, double wallJPerK) => HeatAtJ(v, wallJPerK, v.TempC);

    public static double HeatAtJ(in VesselState v, double wallJPerK, double celsius) =>
        v.WaterKg * Water.EnthalpyJPerKg(celsius)
        + (v.ExtractKg * ExtractJPerKgK + v.GrainDryKg * DryGrainJPerKgK + wallJPerK) * celsius;

    /// <summary>Mean heat capacity around a temperature, J/K.</summary>
    public static double CapacityJPerK(in VesselState v, double wallJPerK, double celsius) =>
        v.WaterKg * Water.SpecificHeatJPerKgK(celsius)
        + v.ExtractKg * ExtractJPerKgK + v.GrainDryKg * DryGrainJPerKgK + wallJPerK;

    /// <summary>The same contents at the temperature that goes with a heat: Newton, two steps suffice because the capacity hardly changes.</summary>
    public static VesselState AtHeat(in VesselState v, double wallJPerK, double heatJ)
    {
        var t = v.TempC;
        for (var i = 0; i < 3; i++)
            t += (heatJ - HeatAtJ(v, wallJPerK, t)) / CapacityJPerK(v, wallJPerK, t);
        return v with { TempC = t };
    }

    /// <summary>Adds masses that bring a heat with them.</summary>
    public static VesselState Add(in VesselState v, double wallJPerK, double waterKg, double extractKg, double celsius)
    {
        var heat = HeatJ(v, wallJPerK) + waterKg * Water.EnthalpyJPerKg(celsius) + extractKg * ExtractJPerKgK * celsius;
        var filled = v with { WaterKg = v.WaterKg + waterKg, ExtractKg = v.ExtractKg + extractKg };
        return AtHeat(filled, wallJPerK, heat);
    }

    /// <summary>Kilograms in litres of water measured at 20 °C.</summary>
    public static double WaterKg(double litresAt20) => litresAt20 * Water.DensityKgPerM3(20) / 1000;
}
