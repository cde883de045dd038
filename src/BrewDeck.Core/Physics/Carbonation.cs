namespace BrewDeck.Core.Physics;

/// <summary>
/// Dissolved CO2 and priming. One volume is the gas at 0 °C and 1 atm in one volume of beer: 1.9635 g/L as an ideal gas
/// (the real gas weighs 1.977). Over-priming bursts bottles: check the final gravity first.
/// </summary>
public static class Carbonation
{
    private const double Co2GPerMol = 44.009;
    private const double GlucoseGPerMol = 180.156;
    private const double WaterGPerMol = 18.015;
    private const double IdealLPerMol = 22.414;

    /// <summary>CO2 in g/L per volume, ideal gas.</summary>
    public const double GramsPerVolumeL = Co2GPerMol / IdealLPerMol;

    /// <summary>CO2 in g/L per volume, real gas at 0 °C and 1 atm (CRC Handbook).</summary>
    public const double RealGasGramsPerVolumeL = 1.977;

    /// <summary>CO2 in g from 1 g of glucose: C6H12O6 gives 2 C2H5OH and 2 CO2.</summary>
    public const double GlucoseYield = 2.0 * Co2GPerMol / GlucoseGPerMol;

    /// <summary>Glucose in 1 g of its monohydrate (brewers' dextrose).</summary>
    public const double MonohydrateSolids = GlucoseGPerMol / (GlucoseGPerMol + WaterGPerMol);

    /// <summary>CO2 in g from 1 g of glucose monohydrate.</summary>
    public const double MonohydrateYield = GlucoseYield * MonohydrateSolids;

    /// <summary>Glucose in g/L for one volume as Draper's priming guide rounds it (a volume at about 20 °C).</summary>
    public const double DraperGlucoseGPerLVolume = 3.7;

    /// <summary>CO2 in g from 1 g of sucrose: 4 CO2.</summary>
    public const double SucroseYield = 4.0 * Co2GPerMol / SugarSolution.SucroseGPerMol;

    /// <summary>
    /// Volumes left in beer that fermented at a temperature under 1 atm of CO2: 3.0378 − 0.050062 F + 0.00026555 F²,
    /// widely printed fit, its author unknown, 0..25 °C. The warmest temperature reached after fermentation counts.
    /// </summary>
    public static double ResidualCo2Volumes(double celsius)
    {
        var f = Temperature.Fahrenheit(celsius);
        return 3.0378 + f * (-0.050062 + 0.00026555 * f);
    }

    /// <summary>
    /// Sugar in g to reach a carbonation; <paramref name="co2PerGram"/> from the yields here. 0 if already there.
    /// </summary>
    public static double PrimingSugarG(double targetVolumes, double residualVolumes, double beerL, double co2PerGram) =>
        Math.Max(0.0, targetVolumes - residualVolumes) * GramsPerVolumeL * beerL / co2PerGram;

    /// <summary>
    /// Volumes that dissolve in water under CO2 saturated with water vapour at 1 atm in all: Henry constant by IAPWS
    /// G7-04, 0..80 °C. Beer dissolves a few per cent less.
    /// </summary>
    public static double SolubilityVolumes(double celsius)
    {
        var vapourPa = Water.SaturationPressurePa(celsius);
        var moleFraction = (Atmosphere.SeaLevelPascals - vapourPa) / HenryPa(celsius);
        var molPerKg = moleFraction / (1.0 - moleFraction) / (WaterGPerMol / 1000.0);
        return molPerKg * Water.DensityKgPerM3(celsius) / 1000.0 * IdealLPerMol;
    }

    /// <summary>
    /// Gauge pressure in Pa of pure CO2 over beer at equilibrium, by <see cref="SolubilityVolumes"/> and Henry's law; sea level, 0..30
    /// °C, below 0 where less than an atmosphere does. Beer wants a few per cent more.
    /// </summary>
    public static double KegGaugePa(double volumes, double celsius)
    {
        var vapourPa = Water.SaturationPressurePa(celsius);
        return vapourPa + (Atmosphere.SeaLevelPascals - vapourPa) * volumes / SolubilityVolumes(celsius) - Atmosphere.SeaLevelPascals;
    }

    // IAPWS G7-04, CO2 in H2O: ln(kH/p*) = A/Tr + B τ^0.355/Tr + C Tr^-0.41 e^τ
    private static double HenryPa(double celsius)
    {
        var reduced = Temperature.Kelvin(celsius) / 647.096;
        var tau = 1.0 - reduced;
        return Water.SaturationPressurePa(celsius) * Math.Exp(
            -8.55445 / reduced + 4.01195 * Math.Pow(tau, 0.355) / reduced
            + 9.52345 * Math.Pow(reduced, -0.41) * Math.Exp(tau));
    }
}
