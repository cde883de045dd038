namespace BrewDeck.Core.Physics;

/// <summary>
/// Alpha acids turn into iso-alpha acids (k1), which degrade (k2): two first-order steps. Malowicki and Shellhammer
/// 2005, J. Agric. Food Chem. 53:4434-4439, buffered water pH 5.2, measured 90..130 °C; used down to about 70 °C by
/// extrapolation. Rates per minute.
/// </summary>
public static class Isomerisation
{
    private const double K1FactorPerMin = 7.9e11;
    private const double K1Kelvin = 11858.0;
    private const double K2FactorPerMin = 4.1e12;
    private const double K2Kelvin = 12994.0;
    private const double GasConstantJPerMolK = 8.314462618;

    /// <summary>Activation energy of isomerisation in J/mol.</summary>
    public const double K1ActivationJPerMol = K1Kelvin * GasConstantJPerMolK;

    /// <summary>Activation energy of degradation in J/mol.</summary>
    public const double K2ActivationJPerMol = K2Kelvin * GasConstantJPerMolK;

    /// <summary>About the most alpha acid in mg/L that dissolves at pH 5.2: Malowicki 2004, thesis.</summary>
    public const double AlphaSolubilityMgPerL = 90.0;

    /// <summary>Rate of isomerisation, 1/min.</summary>
    public static double K1PerMin(double celsius) =>
        K1FactorPerMin * Math.Exp(-K1Kelvin / Temperature.Kelvin(celsius));

    /// <summary>Rate of degradation, 1/min.</summary>
    public static double K2PerMin(double celsius) =>
        K2FactorPerMin * Math.Exp(-K2Kelvin / Temperature.Kelvin(celsius));

    /// <summary>
    /// k1 at a temperature over k1 at 100 °C: how much slower hops give bitterness below a sea-level boil.
    /// </summary>
    public static double RelativeRate(double celsius) =>
        Math.Exp(-K1Kelvin * (1.0 / Temperature.Kelvin(celsius) - 1.0 / Temperature.Kelvin(100.0)));

    /// <summary>
    /// Iso-alpha acids as a fraction of the alpha acids at the start, after minutes at one temperature.
    /// </summary>
    public static double IsoFraction(double celsius, double minutes) =>
        After(1.0, 0.0, K1PerMin(celsius), K2PerMin(celsius), minutes).Iso;

    /// <summary>
    /// Alpha and iso-alpha acids (any one unit) after minutes at constant rates: the exact solution, so that a
    /// changing temperature can be stepped without error within a step.
    /// </summary>
    public static (double Alpha, double Iso) After(
        double alpha, double iso, double k1PerMin, double k2PerMin, double minutes)
    {
        var alphaLeft = Math.Exp(-k1PerMin * minutes);
        var isoLeft = Math.Exp(-k2PerMin * minutes);
        // equal rates: the limit
        var gained = Math.Abs(k2PerMin - k1PerMin) < 1e-12
            ? k1PerMin * minutes * alphaLeft
            : k1PerMin / (k2PerMin - k1PerMin) * (alphaLeft - isoLeft);
        return (alpha * alphaLeft, iso * isoLeft + alpha * gained);
    }
}
