namespace BrewDeck.Core.Physics;

/// <summary>
/// One lump that is heated and loses heat to the room: C dT/dt = P − UA (T − Ta). Closed forms, exact for constant
/// C, UA and P; evaporation from an open surface is not in it (put it into UA or step it).
/// </summary>
public static class HeatFlow
{
    /// <summary>
    /// Seconds to heat from one temperature to another; 0 if already there, +Infinity if the power never gets there.
    /// </summary>
    public static double HeatingTimeS(
        double heatCapacityJPerK, double lossWPerK, double ambientC, double fromC, double toC, double watts)
    {
        if (toC <= fromC) return 0.0;
        if (watts - lossWPerK * (toC - ambientC) <= 0.0) return double.PositiveInfinity;
        // log1p keeps it exact as the loss goes to nothing
        var decay = lossWPerK * (toC - fromC) / (watts - lossWPerK * (toC - ambientC));
        return decay == 0.0
            ? heatCapacityJPerK * (toC - fromC) / watts
            : heatCapacityJPerK / lossWPerK * LogOnePlus(decay);
    }

    /// <summary>Temperature in °C after a time in s under constant power (0 W: Newton cooling).</summary>
    public static double TempAfterC(
        double heatCapacityJPerK, double lossWPerK, double ambientC, double fromC, double watts, double seconds)
    {
        var atStartKPerS = (watts - lossWPerK * (fromC - ambientC)) / heatCapacityJPerK;
        return fromC + atStartKPerS * seconds * MeanDecay(lossWPerK * seconds / heatCapacityJPerK);
    }

    /// <summary>
    /// Seconds to cool without power; 0 if already there, +Infinity if the room is too warm or nothing is lost.
    /// </summary>
    public static double CoolingTimeS(
        double heatCapacityJPerK, double lossWPerK, double ambientC, double fromC, double toC)
    {
        if (toC >= fromC) return 0.0;
        if (toC <= ambientC || lossWPerK <= 0.0) return double.PositiveInfinity;
        return heatCapacityJPerK / lossWPerK * Math.Log((fromC - ambientC) / (toC - ambientC));
    }

    /// <summary>Seconds to put an amount of heat in J in at a power in W.</summary>
    public static double TimeForHeatS(double joules, double watts) => joules / watts;

    /// <summary>Heat in J to take water of a mass from one temperature to another, by enthalpy.</summary>
    public static double WaterHeatJ(double waterKg, double fromC, double toC) =>
        waterKg * (Water.EnthalpyJPerKg(toC) - Water.EnthalpyJPerKg(fromC));

    // (1 - e^-x)/x: the mean of the decay over the time; by series where the difference would cancel
    private static double MeanDecay(double x) =>
        Math.Abs(x) < 1e-5 ? 1.0 - x / 2.0 + x * x / 6.0 : (1.0 - Math.Exp(-x)) / x;

    // ln(1 + x) to full precision for small x (Kahan)
    private static double LogOnePlus(double x)
    {
        var sum = 1.0 + x;
        return sum == 1.0 ? x : Math.Log(sum) * x / (sum - 1.0);
    }
}
