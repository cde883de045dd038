namespace BrewDeck.Core.Physics;

/// <summary>
/// Heat balances of the mash. Water by enthalpy, malt by its specific heat and the heat it gives off when wetted, the
/// vessel as a lump. Losses during the stand belong to <see cref="HeatFlow"/>.
/// </summary>
public static class MashHeat
{
    /// <summary>Specific heat of water in J/(kg K) to which the printed relative values refer.</summary>
    public const double ReferenceWaterJPerKgK = 4186.0;

    /// <summary>
    /// Liquor-to-grist ratio in kg/kg at which the printed temperature rise is taken to hold. The table names none; 2.5
    /// is the usual British infusion mash. An assumption: 2.2 or 3.0 would move the heat by a tenth to a fifth.
    /// </summary>
    public const double SlakingTableLiquorKgPerKg = 2.5;

    /// <summary>Share of the mash drawn for a decoction, usual practice: about a third.</summary>
    public const double UsualDecoctionFraction = 1.0 / 3.0;

    /// <summary>
    /// Specific heat of malt relative to water, moisture as a mass fraction: least-squares line through the table of
    /// Murphy and Son, Calculation of Initial Mash Temperature (after Pauls and Whites Brewing Room Book 1984/85):
    /// 0.38 dry to 0.42 at 8 %, within the table's rounding. Valid 0..0.10.
    /// </summary>
    public static double MaltRelativeHeat(double moistureFraction) => 0.3793 + 0.5258 * moistureFraction;

    /// <summary>
    /// Specific heat of malt in J/(kg K); moisture as a mass fraction, 0..0.10. See <see cref="MaltRelativeHeat"/>.
    /// </summary>
    public static double MaltSpecificHeatJPerKgK(double moistureFraction) =>
        ReferenceWaterJPerKgK * MaltRelativeHeat(moistureFraction);

    /// <summary>
    /// Temperature rise in K on mashing-in from the heat of wetting ("slaking heat"): exponential through the same
    /// table by log-linear least squares (3.0 K dry, 1.0 K at 8 % moisture), within 0.3 K. Valid 0..0.10.
    /// </summary>
    public static double SlakingRiseK(double moistureFraction) => 3.12 * Math.Exp(-14.52 * moistureFraction);

    /// <summary>
    /// Heat in J given off by each kg of malt when wetted: <see cref="SlakingRiseK"/> times the heat capacity of a
    /// mash of <see cref="SlakingTableLiquorKgPerKg"/>. About 21 kJ/kg at 4 % moisture.
    /// </summary>
    public static double SlakingHeatJPerKg(double moistureFraction) =>
        SlakingRiseK(moistureFraction)
        * (SlakingTableLiquorKgPerKg * ReferenceWaterJPerKgK + MaltSpecificHeatJPerKgK(moistureFraction));

    /// <summary>Heat capacity in J/K of water, malt and vessel together at a temperature.</summary>
    public static double MashHeatCapacityJPerK(
        double waterKg,
        double grainKg,
        double moistureFraction,
        double celsius,
        double vesselHeatCapacityJPerK = 0.0) =>
        waterKg * Water.SpecificHeatJPerKgK(celsius)
        + grainKg * MaltSpecificHeatJPerKgK(moistureFraction) + vesselHeatCapacityJPerK;

    /// <summary>
    /// Temperature in °C that the water must have when it meets grain and vessel so that the mash stands at
    /// <paramref name="targetC"/>: h(strike) = h(target) + (grain and vessel heating − slaking heat)/water.
    /// A vessel heated together with the water has no part in it: pass 0 J/K.
    /// </summary>
    public static double StrikeTempC(
        double waterKg,
        double grainKg,
        double grainTempC,
        double moistureFraction,
        double targetC,
        double vesselHeatCapacityJPerK,
        double vesselTempC)
    {
        var grainJ = grainKg * (MaltSpecificHeatJPerKgK(moistureFraction) * (targetC - grainTempC)
            - SlakingHeatJPerKg(moistureFraction));
        var vesselJ = vesselHeatCapacityJPerK * (targetC - vesselTempC);
        return Water.TempFromEnthalpyC(Water.EnthalpyJPerKg(targetC) + (grainJ + vesselJ) / waterKg);
    }

    /// <summary>Mash temperature in °C that a strike gives: the inverse of <see cref="StrikeTempC"/>.</summary>
    public static double MashTempC(
        double waterKg,
        double grainKg,
        double grainTempC,
        double moistureFraction,
        double strikeC,
        double vesselHeatCapacityJPerK,
        double vesselTempC)
    {
        var grainJPerK = grainKg * MaltSpecificHeatJPerKgK(moistureFraction);
        var given = waterKg * Water.EnthalpyJPerKg(strikeC) + grainJPerK * grainTempC
            + grainKg * SlakingHeatJPerKg(moistureFraction) + vesselHeatCapacityJPerK * vesselTempC;
        var celsius = strikeC;
        for (var i = 0; i < 8; i++)
        {
            var excess = waterKg * Water.EnthalpyJPerKg(celsius)
                + (grainJPerK + vesselHeatCapacityJPerK) * celsius - given;
            celsius -= excess
                / (waterKg * Water.SpecificHeatJPerKgK(celsius) + grainJPerK + vesselHeatCapacityJPerK);
        }

        return celsius;
    }

    /// <summary>
    /// Water in kg at <paramref name="addedC"/> that moves a mash from one temperature to another, up with hot water or
    /// down with cold. +Infinity where the added water cannot reach the target.
    /// </summary>
    public static double InfusionKg(double mashHeatCapacityJPerK, double mashC, double targetC, double addedC)
    {
        var needed = mashHeatCapacityJPerK * (targetC - mashC);
        var givenPerKg = Water.EnthalpyJPerKg(addedC) - Water.EnthalpyJPerKg(targetC);
        if (needed == 0.0) return 0.0;
        return needed / givenPerKg > 0.0 ? needed / givenPerKg : double.PositiveInfinity;
    }

    /// <summary>Mash temperature in °C after water is mixed in: the inverse of <see cref="InfusionKg"/>.</summary>
    public static double AfterInfusionC(double mashHeatCapacityJPerK, double mashC, double addedKg, double addedC)
    {
        var celsius = mashC;
        for (var i = 0; i < 8; i++)
        {
            var excess = mashHeatCapacityJPerK * (celsius - mashC)
                + addedKg * (Water.EnthalpyJPerKg(celsius) - Water.EnthalpyJPerKg(addedC));
            celsius -= excess / (mashHeatCapacityJPerK + addedKg * Water.SpecificHeatJPerKgK(celsius));
        }

        return celsius;
    }

    /// <summary>
    /// Share of the mash to boil and return so that the whole moves from one temperature to another (the brewers'
    /// cross, no losses): (to − from)/(returned − from).
    /// </summary>
    public static double DecoctionFraction(double fromC, double toC, double returnedC) =>
        (toC - fromC) / (returnedC - fromC);

    /// <summary>
    /// Decoction volume in L; see <see cref="DecoctionFraction"/>. Real decoctions lose heat and need more.
    /// </summary>
    public static double DecoctionVolumeL(double mashL, double fromC, double toC, double returnedC) =>
        mashL * DecoctionFraction(fromC, toC, returnedC);
}
