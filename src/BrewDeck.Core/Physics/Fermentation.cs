namespace BrewDeck.Core.Physics;

/// <summary>
/// Attenuation and alcohol. OE is original, AE apparent (finished beer by hydrometer), RE real extract, all in °P. The
/// basis is Balling 1865; the shorter rules are kept for printed figures.
/// </summary>
public static class Fermentation
{
    /// <summary>Relative density of ethanol 20/20.</summary>
    public const double EthanolSg = 0.7907;

    /// <summary>Extract in g that gives 1 g of alcohol (Balling 1865).</summary>
    public const double ExtractPerAlcohol = 2.0665;

    /// <summary>CO2 in g that comes with 1 g of alcohol (Balling 1865).</summary>
    public const double Co2PerAlcohol = 0.9565;

    /// <summary>Apparent attenuation from extracts, fraction.</summary>
    public static double ApparentAttenuation(double originalPlato, double apparentPlato) =>
        (originalPlato - apparentPlato) / originalPlato;

    /// <summary>Apparent attenuation from gravities, fraction: (OG − FG)/(OG − 1).</summary>
    public static double ApparentAttenuationSg(double originalSg, double finalSg) =>
        (originalSg - finalSg) / (originalSg - 1.0);

    /// <summary>
    /// Final gravity from an apparent attenuation: the inverse of <see cref="ApparentAttenuationSg"/>.
    /// </summary>
    public static double FinalSg(double originalSg, double attenuation) =>
        originalSg - attenuation * (originalSg - 1.0);

    /// <summary>Real extract in °P: 0.1808 OE + 0.8192 AE (Balling, ASBC).</summary>
    public static double RealExtract(double originalPlato, double apparentPlato) =>
        0.1808 * originalPlato + 0.8192 * apparentPlato;

    /// <summary>Real attenuation, fraction: (OE − RE)/OE.</summary>
    public static double RealAttenuation(double originalPlato, double realExtractPlato) =>
        (originalPlato - realExtractPlato) / originalPlato;

    /// <summary>Real degree of fermentation, fraction: ASBC Beer-6B, with the correction for lost mass.</summary>
    public static double RealDegreeOfFermentation(double originalPlato, double realExtractPlato) =>
        RealAttenuation(originalPlato, realExtractPlato) / (1.0 - 0.005161 * realExtractPlato);

    /// <summary>Alcohol by weight in %: (OE − RE)/(2.0665 − 0.010665 OE), Balling; 5..25 °P.</summary>
    public static double Abw(double originalPlato, double realExtractPlato) =>
        (originalPlato - realExtractPlato) / (ExtractPerAlcohol - 0.010665 * originalPlato);

    /// <summary>Alcohol by volume in %: by weight, times the beer's SG over ethanol's.</summary>
    public static double Abv(double originalPlato, double apparentPlato) =>
        Abw(originalPlato, RealExtract(originalPlato, apparentPlato))
        * SugarSolution.SgFromPlato(apparentPlato) / EthanolSg;

    /// <summary>
    /// Original extract in °P from alcohol by weight in % and real extract: 100 (2.0665 A + RE)/(100 + 1.0665 A).
    /// </summary>
    public static double OriginalExtract(double abw, double realExtractPlato) =>
        100.0 * (ExtractPerAlcohol * abw + realExtractPlato) / (100.0 + 1.0665 * abw);

    /// <summary>CO2 in g from fermented extract in g (Balling).</summary>
    public static double Co2FromExtract(double fermentedExtract) =>
        fermentedExtract * Co2PerAlcohol / ExtractPerAlcohol;

    /// <summary>
    /// Alcohol by weight in %: (0.372 + 0.00357 OE)(OE − AE), Cutaia, Reid and Speers 2009, J. Inst. Brew. 115(4).
    /// </summary>
    public static double CutaiaAbw(double originalPlato, double apparentPlato) =>
        (0.372 + 0.00357 * originalPlato) * (originalPlato - apparentPlato);

    /// <summary>ABV in %: 131.25 (OG − FG), widely printed, its author unknown; ordinary strengths.</summary>
    public static double AbvRule131(double originalSg, double finalSg) => 131.25 * (originalSg - finalSg);

    /// <summary>ABV in %: 136 (OG − FG), brewing-guild course.</summary>
    public static double AbvRule136(double originalSg, double finalSg) => 136.0 * (originalSg - finalSg);

    /// <summary>ABV in %: 105 (OG − FG) by weight, times 1.27; printed by Strong 2015. Ordinary strengths.</summary>
    public static double AbvRule105(double originalSg, double finalSg) => 105.0 * 1.27 * (originalSg - finalSg);

    /// <summary>ABV in %: gravity points lost over 7.46, a brewers' guild's rule. Ordinary strengths.</summary>
    public static double AbvRule746(double originalSg, double finalSg) => 1000.0 * (originalSg - finalSg) / 7.46;

    /// <summary>ABV in %: 76.08 (OG − FG)/(1.775 − OG) · FG/0.794, Hall 1995; holds at high gravity.</summary>
    public static double AbvHall(double originalSg, double finalSg) =>
        76.08 * (originalSg - finalSg) / (1.775 - originalSg) * finalSg / 0.794;
}
