namespace BrewDeck.Core.Physics;

/// <summary>Refractometer readings in °Bx (temperature-compensated, sodium D line).</summary>
public static class Refractometer
{
    /// <summary>
    /// Usual wort correction factor (literature 1.02..1.06): wort refracts a little more than sucrose.
    /// </summary>
    public const double UsualWortCorrectionFactor = 1.04;

    // Least-squares cubic through the ICUMSA 1974 scale, every whole °Bx 0..40: largest difference 5.3e-6, one unit in
    // the table's last place is 1e-5.
    private static ReadOnlySpan<double> IndexCoefficients =>
        [1.33298645, 0.00142819289, 5.36706412e-6, 1.80701914e-8];

    /// <summary>Extract of unfermented wort in °P from the reading in °Bx.</summary>
    public static double WortPlato(double brix, double wortCorrectionFactor = UsualWortCorrectionFactor) =>
        brix / wortCorrectionFactor;

    /// <summary>
    /// Final gravity from original and final readings (both already wort-corrected, °Bx): linear correlation, Terrill
    /// 2011. About ±0.002 SG; poor at low attenuation.
    /// </summary>
    public static double FinalGravityLinearSg(double initialBrix, double finalBrix) =>
        1.0 - 0.00085683 * initialBrix + 0.0034941 * finalBrix;

    /// <summary>
    /// Final gravity from original and final readings (both already wort-corrected, °Bx): cubic correlation, Terrill
    /// 2011. About ±0.002 SG; not for low attenuation.
    /// </summary>
    public static double FinalGravityCubicSg(double initialBrix, double finalBrix) =>
        1.0
        + initialBrix * (-0.0044993 + initialBrix * (0.00027581 - 0.0000072800 * initialBrix))
        + finalBrix * (0.011774 + finalBrix * (-0.0012717 + 0.000063293 * finalBrix));

    /// <summary>Refractive index nD at 20 °C of a sucrose solution: ICUMSA 1974 scale, 0..40 °Bx.</summary>
    public static double RefractiveIndex(double brix) => Polynomial.At(IndexCoefficients, brix);

    /// <summary>
    /// °Bx from the refractive index nD at 20 °C: the widely printed ICUMSA quintic, whose rounded coefficients leave
    /// it about 0.02 °Bx low at 20 °Bx.
    /// </summary>
    public static double BrixFromIndex(double index) =>
        ((((11758.74 * index - 88885.21) * index + 270177.93) * index - 413145.80) * index + 318417.95) * index
        - 99127.4536;
}
