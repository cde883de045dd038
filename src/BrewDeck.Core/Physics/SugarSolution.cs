namespace BrewDeck.Core.Physics;

/// <summary>
/// Wort taken as a sucrose solution, as the Plato scale does. °P is grams of extract in 100 g; SG is the apparent
/// specific gravity 20 °C/20 °C (weighed in air), as hydrometers and the trade's tables read. Density is the ICUMSA
/// SPS-4 polynomial of pure sucrose solutions (Bubnik, Kadlec, Urban, Bruhns 1995); SG and °P follow from it, so that
/// mass, volume and gravity always agree. It stays good far above the 1.083 where the usual cubic ends: against the
/// NBS C440 fit it is 0.001 °P away at 1.040 and 0.016 °P at 1.110. Valid 0..60 °P and 0..100 °C; smooth for slightly
/// negative °P (finished beer reads below water).
/// </summary>
public static class SugarSolution
{
    /// <summary>Density of air in kg/m³ for weighings, the usual convention (20 °C, sea level).</summary>
    public const double AirKgPerM3 = 1.2;

    /// <summary>Sucrose C12H22O11 in g/mol (IUPAC atomic weights).</summary>
    public const double SucroseGPerMol = 342.297;

    /// <summary>Ebullioscopic constant of water in K kg/mol (CRC Handbook).</summary>
    private const double EbullioscopicKKgPerMol = 0.513;

    // ICUMSA SPS-4: excess density over water, powers of the mass fraction from 1, one row per power of (t - 20)/100
    private static ReadOnlySpan<double> Excess0 => [0, 385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890];
    private static ReadOnlySpan<double> Excess1 => [0, -46.2720, -7.1720, 1.1597, 5.1126, 17.5254];
    private static ReadOnlySpan<double> Excess2 => [0, 59.7712, 7.2491, 12.3630, -35.4791];
    private static ReadOnlySpan<double> Excess3 => [0, -47.2207, -21.6977, 27.6301];
    private static ReadOnlySpan<double> Excess4 => [0, 18.3184, 12.3081];

    private static readonly double Water20KgPerM3 = Water.DensityKgPerM3(20.0);

    /// <summary>
    /// Density in kg/m³ (in vacuo). Water from Kell 1975 where SPS-4 names Bettin and Spieweck 1990, so that 0 °P is
    /// <see cref="Water"/> itself: the two differ by less than 0.015 kg/m³ from 0 to 100 °C.
    /// </summary>
    public static double DensityKgPerM3(double plato, double celsius) =>
        Water.DensityKgPerM3(celsius) + ExcessKgPerM3(plato / 100.0, (celsius - 20.0) / 100.0);

    /// <summary>°P of an apparent SG 20/20: the inverse of <see cref="SgFromPlato"/> to 1e-12.</summary>
    public static double PlatoFromSg(double sg)
    {
        var excess = (sg - 1.0) * (Water20KgPerM3 - AirKgPerM3);
        var fraction = 2.59 * (1.0 - 1.0 / sg);
        for (var i = 0; i < 8; i++)
        {
            var step = (Polynomial.At(Excess0, fraction) - excess) / Polynomial.SlopeAt(Excess0, fraction);
            fraction -= step;
            if (Math.Abs(step) < 1e-15) break;
        }

        return 100.0 * fraction;
    }

    /// <summary>Apparent SG 20/20 (weighed in air) of a °P.</summary>
    public static double SgFromPlato(double plato) =>
        1.0 + Polynomial.At(Excess0, plato / 100.0) / (Water20KgPerM3 - AirKgPerM3);

    /// <summary>Relative density 20/20 in vacuo; 0.00006 below the apparent SG at 12 °P.</summary>
    public static double RelativeDensity20(double plato) =>
        1.0 + Polynomial.At(Excess0, plato / 100.0) / Water20KgPerM3;

    /// <summary>
    /// Specific heat in J/(kg K): water's, less the sugar-liquor correlation's terms
    /// B(−2971 + 460 q + 7.5 t) with B the mass fraction and purity q = 1 (as printed with 4184 J/(kg K) for water:
    /// the change is below 0.8 %). Valid 0..60 °P, 0..100 °C, about 1 %.
    /// </summary>
    public static double SpecificHeatJPerKgK(double plato, double celsius) =>
        Water.SpecificHeatJPerKgK(celsius) + plato / 100.0 * (-2511.0 + 7.5 * celsius);

    /// <summary>Specific enthalpy in J/kg above 0 °C: the integral of <see cref="SpecificHeatJPerKgK"/>.</summary>
    public static double EnthalpyJPerKg(double plato, double celsius) =>
        Water.EnthalpyJPerKg(celsius) + plato / 100.0 * (-2511.0 * celsius + 3.75 * celsius * celsius);

    /// <summary>
    /// Specific heat in J/(kg K) of crystalline sucrose: 0.2712 + 0.00103 t kcal/(kg °C), Mohos 2010, Confectionery and
    /// Chocolate Engineering, appendix 2. Valid 0..100 °C.
    /// </summary>
    public static double CrystalSpecificHeatJPerKgK(double celsius) => 4184.0 * (0.2712 + 0.00103 * celsius);

    /// <summary>
    /// Rise of the boiling point in K over water at the same pressure: ebullioscopic law, molality as sucrose. Dilute
    /// limit: real solutions rise up to 15 % more. 0..30 °P.
    /// </summary>
    public static double BoilingPointRiseK(double plato) =>
        EbullioscopicKKgPerMol * 1000.0 / SucroseGPerMol * plato / (100.0 - plato);

    /// <summary>Volume in L of a mass at a temperature.</summary>
    public static double VolumeL(double massKg, double plato, double celsius) =>
        1000.0 * massKg / DensityKgPerM3(plato, celsius);

    /// <summary>Mass in kg of a volume measured at a temperature.</summary>
    public static double MassKg(double volumeL, double plato, double celsius) =>
        volumeL / 1000.0 * DensityKgPerM3(plato, celsius);

    /// <summary>Extract in kg per litre measured at a temperature.</summary>
    public static double ExtractKgPerL(double plato, double celsius) =>
        plato / 100.0 * DensityKgPerM3(plato, celsius) / 1000.0;

    /// <summary>Fraction of the hot volume lost on cooling; pure water from 100 to 20 °C: 0.040.</summary>
    public static double ShrinkageFraction(double plato, double hotCelsius, double coldCelsius) =>
        1.0 - DensityKgPerM3(plato, hotCelsius) / DensityKgPerM3(plato, coldCelsius);

    /// <summary>
    /// °P of a solution that has this density in kg/m³ at this temperature: the inverse of
    /// <see cref="DensityKgPerM3"/> in °P.
    /// </summary>
    public static double PlatoFromDensity(double kgPerM3, double celsius)
    {
        var plato = (kgPerM3 - Water.DensityKgPerM3(celsius)) / 4.0;
        for (var i = 0; i < 20; i++)
        {
            var step = (DensityKgPerM3(plato, celsius) - kgPerM3) / DensitySlope(plato, celsius);
            plato -= step;
            if (Math.Abs(step) < 1e-13) break;
        }

        return plato;
    }

    private static double ExcessKgPerM3(double fraction, double tau) =>
        Polynomial.At(Excess0, fraction)
        + tau * (Polynomial.At(Excess1, fraction)
        + tau * (Polynomial.At(Excess2, fraction)
        + tau * (Polynomial.At(Excess3, fraction)
        + tau * Polynomial.At(Excess4, fraction))));

    private static double DensitySlope(double plato, double celsius)
    {
        var fraction = plato / 100.0;
        var tau = (celsius - 20.0) / 100.0;
        return (Polynomial.SlopeAt(Excess0, fraction)
            + tau * (Polynomial.SlopeAt(Excess1, fraction)
            + tau * (Polynomial.SlopeAt(Excess2, fraction)
            + tau * (Polynomial.SlopeAt(Excess3, fraction)
            + tau * Polynomial.SlopeAt(Excess4, fraction))))) / 100.0;
    }
}
