namespace BrewDeck.Core.Physics;

/// <summary>
/// Bitterness of boiled hops by the trade's empirical utilisations. Utilisation is the fraction of alpha acids that
/// ends as bitterness; 1 IBU is taken as 1 mg/L.
/// </summary>
public static class Bitterness
{
    /// <summary>
    /// IBU·US gal per AAU at full utilisation as the trade rounds it (exact: <see cref="ExactAauConstant"/>).
    /// </summary>
    public const double RoundedAauConstant = 75.0;

    /// <summary>IBU·US gal per AAU (oz times % alpha) at full utilisation: 74.89.</summary>
    public const double ExactAauConstant = UsUnits.GramsPerOunce * 10.0 / UsUnits.LitresPerGallon;

    /// <summary>Rager's printed constant, mg/L·gal/oz.</summary>
    public const double RagerConstant = 7462.0;

    /// <summary>Utilisation of pellets boiled an hour below SG 1.050, a magazine's standardised convention.</summary>
    public const double MagazineHourUtilisation = 0.25;

    /// <summary>Utilisation of a 30 min hop stand after the boil below SG 1.050, same convention.</summary>
    public const double MagazineHopStandUtilisation = 0.10;

    /// <summary>Whole cones to take in place of pellets, same convention.</summary>
    public const double MagazineConeFactor = 1.10;

    /// <summary>
    /// Tinseth 1997: 1.65·0.000125^(SG−1) · (1 − exp(−0.04 t))/4.15. SG of the wort in the kettle, boiled minutes; made
    /// for cones at sea level, 1.030..1.130 and 0..120 min.
    /// </summary>
    public static double TinsethUtilisation(double sg, double minutes) =>
        1.65 * Math.Pow(0.000125, sg - 1.0) * (1.0 - Math.Exp(-0.04 * Math.Max(0.0, minutes))) / 4.15;

    /// <summary>
    /// Rager's table as a smooth fit, fraction: (18.11 + 13.86 tanh((t − 31.32)/18.27))/100, Hall 1997. 0..120 min.
    /// Divide the bitterness by 1 + <see cref="RagerGravityAdjustment"/>.
    /// </summary>
    public static double RagerUtilisation(double minutes) =>
        (18.11 + 13.86 * Math.Tanh((minutes - 31.32) / 18.27)) / 100.0;

    /// <summary>
    /// Rager's gravity adjustment: (SG − 1.050)/0.2 above 1.050, else 0. Rager 1990, Zymurgy Special.
    /// </summary>
    public static double RagerGravityAdjustment(double sg) => Math.Max(0.0, (sg - 1.050) / 0.2);

    /// <summary>IBU of an addition: mass in g, alpha and utilisation as fractions, volume in L of cold wort.</summary>
    public static double Ibu(double massG, double alphaFraction, double utilisation, double litres) =>
        massG * alphaFraction * utilisation * 1000.0 / litres;

    /// <summary>Hop mass in g for a bitterness: the inverse of <see cref="Ibu"/>.</summary>
    public static double MassG(double ibu, double alphaFraction, double utilisation, double litres) =>
        ibu * litres / (alphaFraction * utilisation * 1000.0);

    /// <summary>Rager's IBU with his printed constant: ounces, fractions, US gallons.</summary>
    public static double RagerIbu(
        double ounces, double alphaFraction, double utilisation, double gallons, double gravityAdjustment) =>
        ounces * alphaFraction * utilisation * RagerConstant / (gallons * (1.0 + gravityAdjustment));

    /// <summary>Ounces for a bitterness: the inverse of <see cref="RagerIbu"/>.</summary>
    public static double RagerOunces(
        double ibu, double alphaFraction, double utilisation, double gallons, double gravityAdjustment) =>
        ibu * gallons * (1.0 + gravityAdjustment) / (alphaFraction * utilisation * RagerConstant);

    /// <summary>Alpha acid units: ounces times percent alpha.</summary>
    public static double AlphaAcidUnits(double ounces, double alphaFraction) => ounces * alphaFraction * 100.0;

    /// <summary>IBU from alpha acid units in US gallons.</summary>
    public static double IbuFromAau(
        double alphaAcidUnits, double utilisation, double gallons, double constant = ExactAauConstant) =>
        alphaAcidUnits * utilisation * constant / gallons;

    /// <summary>Papazian's form: W·U%·A%/(V·1.34), ounces and US gallons, fractions here.</summary>
    public static double PapazianIbu(double ounces, double alphaFraction, double utilisation, double gallons) =>
        ounces * utilisation * 100.0 * alphaFraction * 100.0 / (1.34 * gallons);

    /// <summary>Mass that carries the same alpha acids at another alpha.</summary>
    public static double SubstituteMassG(double massG, double alphaFraction, double newAlphaFraction) =>
        massG * alphaFraction / newAlphaFraction;
}
