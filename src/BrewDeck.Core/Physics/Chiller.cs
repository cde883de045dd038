namespace BrewDeck.Core.Physics;

/// <summary>
/// Wort chillers by effectiveness and transfer units; capacities are mass flow times specific heat, in W/K.
/// </summary>
public static class Chiller
{
    /// <summary>Wort outlet in °C of a counterflow (or plate) chiller.</summary>
    public static double CounterflowOutletC(
        double wortWPerK, double wortInC, double waterWPerK, double waterInC, double transferWPerK)
    {
        var least = Math.Min(wortWPerK, waterWPerK);
        var ratio = least / Math.Max(wortWPerK, waterWPerK);
        var effectiveness = Exchanger.CounterflowEffectiveness(transferWPerK / least, ratio);
        return Exchanger.OutletC(wortInC, effectiveness * least * (wortInC - waterInC), wortWPerK);
    }

    /// <summary>
    /// Seconds to cool a stirred kettle with an immersion coil: M c dT/dt = −ε ṁ c_w (T − Tc), ε = 1 − exp(−UA/(ṁ
    /// c_w)). 0 if already there, +Infinity if the water is too warm.
    /// </summary>
    public static double CoilTimeS(
        double wortHeatCapacityJPerK,
        double waterWPerK,
        double waterInC,
        double transferWPerK,
        double fromC,
        double toC) =>
        HeatFlow.CoolingTimeS(
            wortHeatCapacityJPerK, CoilWPerK(waterWPerK, transferWPerK), waterInC, fromC, toC);

    private static double CoilWPerK(double waterWPerK, double transferWPerK) =>
        waterWPerK * Exchanger.StirredEffectiveness(transferWPerK / waterWPerK);
}
