using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Laws;

/// <summary>What the whole plant holds, added up vessel by vessel.</summary>
internal static class Ledger
{
    /// <summary>Water, extract and dry grain, kg.</summary>
    public static double MassKg(PlantState state) => state.Vessels.Sum(v => v.WaterKg + v.ExtractKg + v.GrainDryKg);

    /// <summary>Extract in the wort, and in the grain what the mash can still dissolve, kg.</summary>
    public static double ExtractKg(PlantState state) => state.Vessels.Sum(v => v.ExtractKg + v.UndissolvedKg);

    /// <summary>Heat in vessels and contents against 0 °C, J.</summary>
    public static double HeatJ(PlantSetting setting, PlantState state) =>
        state.Vessels.Select((v, i) => Contents.HeatJ(v, setting.HeatCapacityJPerK(i))).Sum();

    /// <summary>Most that the vessels can have exchanged with the room in these seconds, J.</summary>
    public static double MostExchangedJ(PlantSetting setting, PlantState before, PlantState after, double seconds)
    {
        var sum = 0.0;
        for (var i = 0; i < before.Vessels.Length; i++)
        {
            var hottest = Math.Max(Math.Abs(before.Vessels[i].TempC - setting.AmbientC), Math.Abs(after.Vessels[i].TempC - setting.AmbientC));
            sum += setting.LossWPerK(i) * hottest * seconds;
        }
        return sum;
    }

    /// <summary>Most heat that all elements give in these seconds, J.</summary>
    public static double MostHeatedJ(PlantSetting setting, double seconds) =>
        setting.Brewhouse.Vessels.SelectMany(v => v.Elements).Sum(e => e.PowerW * e.NetFraction) * seconds;

    /// <summary>What a step's charges put in: kg, and J against 0 °C with the heat of wetting.</summary>
    public static (double Kg, double ExtractKg, double Joules) Charged(PlantSetting setting, StepSpec spec) => spec.Kind switch
    {
        StepKind.Fill => Water(spec.VolumeL!.Value, setting.SourceWaterC),
        StepKind.AddWater => Water(spec.VolumeL!.Value, spec.TargetC!.Value),
        StepKind.DoughIn => Sum(spec.Charges.Select(c => Grist(setting, c))),
        StepKind.AddToBoil or StepKind.AddExtract or StepKind.AddFirstWortHops or StepKind.AddToWhirlpool =>
            Sum(spec.Charges.Where(c => c.Kind is ChargeKind.Extract).Select(c => Extract(setting, c))),
        _ => default,
    };

    private static (double, double, double) Water(double litres, double celsius)
    {
        var kg = litres * BrewDeck.Core.Physics.Water.DensityKgPerM3(20) / 1000;
        return (kg, 0, kg * BrewDeck.Core.Physics.Water.EnthalpyJPerKg(celsius));
    }

    private static (double, double, double) Grist(PlantSetting setting, Charge c)
    {
        var moisture = c.WaterKg / c.Amount;
        var heat = c.WaterKg * BrewDeck.Core.Physics.Water.EnthalpyJPerKg(setting.GrainC)
            + (c.Amount - c.WaterKg) * MashHeat.MaltSpecificHeatJPerKgK(0) * setting.GrainC;
        return (c.Amount, c.ExtractKg * setting.Habits.ConversionYield, heat + c.Amount * MashHeat.SlakingHeatJPerKg(moisture));
    }

    private static (double, double, double) Extract(PlantSetting setting, Charge c) => (
        c.WaterKg + c.ExtractKg, c.ExtractKg,
        c.WaterKg * BrewDeck.Core.Physics.Water.EnthalpyJPerKg(setting.AmbientC) + c.ExtractKg * Contents.ExtractJPerKgK * setting.AmbientC);

    private static (double, double, double) Sum(IEnumerable<(double Kg, double ExtractKg, double Joules)> parts) =>
        parts.Aggregate((0.0, 0.0, 0.0), (a, b) => (a.Item1 + b.Kg, a.Item2 + b.ExtractKg, a.Item3 + b.Joules));
}
