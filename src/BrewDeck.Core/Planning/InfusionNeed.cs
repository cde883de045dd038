using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning;

/// <summary>Hot water to draw for a mash that is raised by infusions; how much of it goes in is the heat balance of the day.</summary>
internal static class InfusionNeed
{
    /// <summary>Drawn beyond the reckoned need: no brewer wants to run short of it.</summary>
    private const double Spare = 0.15;

    /// <summary>As hot as a tank is kept without boiling, °C.</summary>
    public static double LiquorC(PlantSetting setting) => Math.Min(96, setting.BoilingC - 2);

    public static double Litres(PlantSetting setting, Batch batch) => WithSpare(NeedL(setting, batch));

    public static double WithSpare(double needL) => (1 + Spare) * needL;

    /// <summary>What should be left over, litres.</summary>
    public static double SpareL(PlantSetting setting, Batch batch) => Spare * NeedL(setting, batch);

    private static double NeedL(PlantSetting setting, Batch batch)
    {
        var tun = setting.IndexOf(setting.Brewhouse.MashTun.Id);
        double heat = setting.HeatCapacityJPerK(tun) + batch.Recipe.MashKg * Contents.DryGrainJPerKgK + PerL * batch.StrikeL, sum = 0;
        foreach (var (from, to) in batch.Recipe.Rests.Zip(batch.Recipe.Rests.Skip(1)))
        {
            var cooled = setting.LossWPerK(tun) * (from.TempC - setting.AmbientC) * 60 * from.Minutes / heat;
            var litres = heat * (to.TempC - from.TempC + cooled) / (PerL * Math.Max(1, LiquorC(setting) - to.TempC));
            heat += PerL * litres;
            sum += litres;
        }
        return sum;
    }

    /// <summary>Heat capacity of a litre of water measured at 20 °C, J/K.</summary>
    private static double PerL => Water.SpecificHeatJPerKgK(70) * Water.DensityKgPerM3(20) / 1000;
}
