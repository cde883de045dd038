namespace BrewDeck.Core.Physics;

/// <summary>
/// Hydrometer read away from its calibration temperature: the liquid is lighter and the glass larger when hot. Liquid
/// from <see cref="SugarSolution"/>, soda-lime glass with cubic expansion 25e-6 /K. Valid 0..80 °C; above about 40 °C
/// the correction is large and the reading itself poor (and hot glass breaks).
/// </summary>
public static class Hydrometer
{
    /// <summary>Cubic expansion of soda-lime glass in 1/K.</summary>
    public const double GlassExpansionPerK = 25e-6;

    /// <summary>60 °F, the other calibration temperature in use, in °C.</summary>
    public const double SixtyFahrenheitCelsius = 140.0 / 9.0;

    /// <summary>SG 20/20 of a sample that reads <paramref name="readingSg"/> at its temperature.</summary>
    public static double TrueSg20(double readingSg, double sampleCelsius, double calibrationCelsius = 20.0) =>
        SugarSolution.SgFromPlato(Plato(readingSg, sampleCelsius, calibrationCelsius));

    /// <summary>
    /// What the hydrometer will read in a sample of this SG 20/20: the inverse of <see cref="TrueSg20"/>.
    /// </summary>
    public static double ReadingSg(double sg20, double sampleCelsius, double calibrationCelsius = 20.0)
    {
        var density = SugarSolution.DensityKgPerM3(SugarSolution.PlatoFromSg(sg20), sampleCelsius);
        return ApparentSg(density * GlassGrowth(sampleCelsius, calibrationCelsius), calibrationCelsius);
    }

    /// <summary>Extract in °P of a sample that reads <paramref name="readingSg"/> at its temperature.</summary>
    public static double Plato(double readingSg, double sampleCelsius, double calibrationCelsius = 20.0)
    {
        var reference = Water.DensityKgPerM3(calibrationCelsius) - SugarSolution.AirKgPerM3;
        var indicated = readingSg * reference + SugarSolution.AirKgPerM3;
        return SugarSolution.PlatoFromDensity(
            indicated / GlassGrowth(sampleCelsius, calibrationCelsius), sampleCelsius);
    }

    /// <summary>
    /// What it would read with the sample at the calibration temperature (the figure older tables give).
    /// </summary>
    public static double SgAtCalibration(double readingSg, double sampleCelsius, double calibrationCelsius)
    {
        var plato = Plato(readingSg, sampleCelsius, calibrationCelsius);
        return ApparentSg(SugarSolution.DensityKgPerM3(plato, calibrationCelsius), calibrationCelsius);
    }

    /// <summary>
    /// SG to add to a 60 °F hydrometer's reading: Lyons 1992 cubic in °F, as widely printed; 32..160 °F, made for
    /// 1.000.
    /// </summary>
    public static double LyonsCorrectionSg(double sampleCelsius)
    {
        var f = Temperature.Fahrenheit(sampleCelsius);
        return 1e-3 * (1.313454 + f * (-0.132674 + f * (2.057793e-3 - 2.627634e-6 * f)));
    }

    private static double GlassGrowth(double sampleCelsius, double calibrationCelsius) =>
        1.0 + GlassExpansionPerK * (sampleCelsius - calibrationCelsius);

    private static double ApparentSg(double kgPerM3, double celsius) =>
        (kgPerM3 - SugarSolution.AirKgPerM3) / (Water.DensityKgPerM3(celsius) - SugarSolution.AirKgPerM3);
}
