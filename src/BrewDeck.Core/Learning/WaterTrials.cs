using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Learning;

/// <summary>
/// What a new owner can find out with water, a clock, a tape measure and a kitchen scale, before the first batch. The heat balance is
/// <see cref="HeatFlow"/>'s, solved for the unknown; lid on, stirred or pumped round, below the boil.
/// </summary>
public static class WaterTrials
{
    /// <summary>Heat loss in W/K of a vessel that stood with its heat off: Newton's law of cooling.</summary>
    /// <param name="heatCapacityJPerK">Of water and vessel, above 0.</param>
    /// <param name="fromC">At the beginning; above <paramref name="toC"/>, and that above the room.</param>
    /// <param name="seconds">Above 0.</param>
    /// <returns>NaN when it did not cool, or below the room.</returns>
    public static double LossWPerK(double heatCapacityJPerK, double roomC, double fromC, double toC, double seconds) =>
        fromC >= toC && toC > roomC && seconds > 0
            ? heatCapacityJPerK / seconds * Math.Log((fromC - roomC) / (toC - roomC))
            : double.NaN;

    /// <summary>Power in W that reached water and vessel while they warmed at a constant power.</summary>
    /// <param name="heatCapacityJPerK">Of water and vessel, above 0.</param>
    /// <param name="lossWPerK">0 or more.</param>
    /// <param name="seconds">Above 0.</param>
    public static double NetWatts(double heatCapacityJPerK, double lossWPerK, double roomC, double fromC, double toC, double seconds)
    {
        // the temperature reached is linear in the power
        var unheated = HeatFlow.TempAfterC(heatCapacityJPerK, lossWPerK, roomC, fromC, 0, seconds);
        var kelvinPerKilowatt = HeatFlow.TempAfterC(heatCapacityJPerK, lossWPerK, roomC, fromC, 1000, seconds) - unheated;
        return 1000 * (toC - unheated) / kelvinPerKilowatt;
    }

    /// <summary>Water in kg/h that left a rolling boil: the level fell in an upright cylinder. Lengths in m.</summary>
    /// <param name="boilingC">Of the water, 80 to 105 °C.</param>
    /// <param name="seconds">Above 0.</param>
    public static double EvaporationKgPerH(double diameterM, double depthBeforeM, double depthAfterM, double boilingC, double seconds) =>
        Cylinder.VolumeL(diameterM, depthBeforeM - depthAfterM) * Water.DensityKgPerM3(boilingC) / 1000 * 3600 / seconds;

    /// <summary>Litres that stayed below the outlet: water weighed in, and out again.</summary>
    /// <param name="celsius">Of the water, 0 to 100 °C.</param>
    public static double DeadSpaceL(double pouredInKg, double cameOutKg, double celsius) =>
        (pouredInKg - cameOutKg) / Water.DensityKgPerM3(celsius) * 1000;
}
