namespace BrewDeck.Core.Physics;

/// <summary>
/// The trade's short mash formulas: constant specific heat, no slaking heat. The temperatures may be in any one scale
/// and the masses in any one unit. BrewDeck plans with <see cref="MashHeat"/>; these are for printed worksheets.
/// </summary>
public static class MashConventions
{
    /// <summary>
    /// Palmer's grain constant with the ratio in qt/lb: Tw = (0.2/r)(T2 − T1) + T2. Palmer, How to Brew, ch. 16.
    /// </summary>
    public const double PalmerQuartsPerPound = 0.2;

    /// <summary>Heat of grain relative to water in the magazine worksheet of September 1997.</summary>
    public const double WorksheetRelativeHeat = 0.382;

    /// <summary>Thick end of the usual homebrew mash in qt/lb, Palmer, How to Brew, 16.5: 1.5 to 2.</summary>
    public const double ThickMashQuartsPerPound = 1.5;

    /// <summary>Thin end of the same.</summary>
    public const double ThinMashQuartsPerPound = 2.0;

    /// <summary>Cool end of the usual single-infusion mash in °C: 150 to 155 °F for an hour, Palmer, How to Brew, 16.5.</summary>
    public const double UsualMashLowC = 590.0 / 9.0;

    /// <summary>Warm end of the same.</summary>
    public const double UsualMashHighC = 615.0 / 9.0;

    /// <summary>Thick end of the usual mash in L/kg, brewing-guild course: 3.0 to 3.5.</summary>
    public const double CourseThickLPerKg = 3.0;

    /// <summary>Thin end of the same, for pale dry beers.</summary>
    public const double CourseThinLPerKg = 3.5;

    /// <summary>
    /// Strike temperature: grain constant over ratio, times the grain's rise, above the target. The constant and ratio
    /// share a unit: 0.2 with qt/lb, 0.38..0.42 with kg/kg.
    /// </summary>
    public static double StrikeTemp(double grainConstant, double waterPerGrain, double grainTemp, double target) =>
        target + grainConstant / waterPerGrain * (target - grainTemp);

    /// <summary>Strike temperature in °C with the vessel as a lump and one specific heat of water for all.</summary>
    public static double StrikeTempWithVesselC(
        double waterHeatCapacityJPerK,
        double grainHeatCapacityJPerK,
        double grainTempC,
        double targetC,
        double vesselHeatCapacityJPerK,
        double vesselTempC) =>
        targetC + (grainHeatCapacityJPerK * (targetC - grainTempC)
            + vesselHeatCapacityJPerK * (targetC - vesselTempC)) / waterHeatCapacityJPerK;

    /// <summary>
    /// Water to add for the next rest: (T2 − T1)(c G + W)/(Tw − T2), in the unit of the water in the mash.
    /// </summary>
    public static double Infusion(
        double grainConstant, double grain, double waterInMash, double from, double to, double added) =>
        (to - from) * (grainConstant * grain + waterInMash) / (added - to);
}
