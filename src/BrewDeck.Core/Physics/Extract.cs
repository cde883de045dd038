namespace BrewDeck.Core.Physics;

/// <summary>
/// Extract of malts and worts. A gravity point is 0.001 SG over water; a potential is the points that a mass gives in a
/// volume. Points times volume is not quite conserved (see <see cref="PointsErrorFraction"/>): plans use mass.
/// </summary>
public static class Extract
{
    /// <summary>Points·gal/lb of sucrose as SG 20/20 in air.</summary>
    public const double SucrosePointsGalPerLb = 46.21;

    /// <summary>Extract of dry malt extract as sucrose, a fraction (Manning 1993).</summary>
    public const double DryMaltExtractYield = 0.97;

    /// <summary>Extract of dextrose as sucrose, a fraction (Manning 1993).</summary>
    public const double DextroseYield = 0.90;

    /// <summary>Gravity points of an SG: 48 of 1.048.</summary>
    public static double Points(double sg) => 1000.0 * (sg - 1.0);

    /// <summary>SG of gravity points: the inverse of <see cref="Points"/>.</summary>
    public static double SgFromPoints(double points) => 1.0 + points / 1000.0;

    /// <summary>
    /// Points·gal/lb of 1 lb sucrose in 1 US gal of solution with the trade's 60 °F basis: P = 259 − 259/SG and water
    /// of 8.338 lb/gal (Manning 1993): 46.31.
    /// </summary>
    // m/V = P/100 · SG · 8.338 with P SG = 259 (SG − 1), so that SG − 1 = 100/(259 · 8.338)
    public const double SucrosePointsSixtyFahrenheit = 1000.0 * 100.0 / (259.0 * 8.338);

    /// <summary>Points·L/kg from points·gal/lb.</summary>
    public static double PointsLPerKg(double pointsGalPerLb) => pointsGalPerLb * UsUnits.LitresPerKgFromGallonsPerPound;

    /// <summary>As-is extract from the dry-basis figure of a malt analysis, fractions.</summary>
    public static double AsIs(double dryBasisFraction, double moistureFraction) =>
        dryBasisFraction * (1.0 - moistureFraction);

    /// <summary>
    /// Coarse-grind as-is extract: fine grind dry basis less the fine-coarse difference, then moisture off.
    /// </summary>
    public static double CoarseGrindAsIs(
        double fineGrindDryBasis, double fineCoarseDifference, double moistureFraction) =>
        AsIs(fineGrindDryBasis - fineCoarseDifference, moistureFraction);

    /// <summary>Potential in points·gal/lb of an extract fraction.</summary>
    public static double PotentialPoints(double extractFraction, double sucrosePoints = SucrosePointsGalPerLb) =>
        extractFraction * sucrosePoints;

    /// <summary>Points in the wort: mass times potential times efficiency over volume, in matching units.</summary>
    public static double WortPoints(double mass, double potential, double efficiency, double volume) =>
        mass * potential * efficiency / volume;

    /// <summary>Mass that gives total points (points times volume), in the units of the potential.</summary>
    public static double MassForPoints(double totalPoints, double potential, double efficiency = 1.0) =>
        totalPoints / (potential * efficiency);

    /// <summary>Lauter efficiency: points times volume over mass times potential, in matching units.</summary>
    public static double PointsEfficiency(double points, double volume, double mass, double potential) =>
        points * volume / (mass * potential);

    /// <summary>Volume after concentrating (or diluting) to other points: points times volume kept.</summary>
    public static double VolumeForPoints(double volume, double points, double targetPoints) =>
        volume * points / targetPoints;

    /// <summary>Points after a change of volume: points times volume kept.</summary>
    public static double PointsAfter(double volume, double points, double newVolume) => points * volume / newVolume;

    /// <summary>Boil time in h to reach other points at an evaporation per h, volume in its unit.</summary>
    public static double BoilHoursForPoints(
        double volume, double points, double targetPoints, double evaporationPerH) =>
        (volume - VolumeForPoints(volume, points, targetPoints)) / evaporationPerH;

    /// <summary>
    /// Fraction by which points times volume misses when wort goes from one gravity to another by boiling or watering:
    /// extract per litre and point at the second against the first. 0.4 % from 1.050 to 1.090.
    /// </summary>
    public static double PointsErrorFraction(double fromSg, double toSg) =>
        ExtractPerPoint(toSg) / ExtractPerPoint(fromSg) - 1.0;

    /// <summary>Extract in kg in a volume of wort in L measured at a temperature.</summary>
    public static double MassKg(double wortL, double plato, double celsius = 20.0) =>
        wortL * SugarSolution.ExtractKgPerL(plato, celsius);

    /// <summary>Brewhouse yield, fraction: extract in the wort over extract in the grist.</summary>
    public static double BrewhouseYield(
        double grainKg, double asIsExtractFraction, double wortL, double plato, double celsius = 20.0) =>
        MassKg(wortL, plato, celsius) / (grainKg * asIsExtractFraction);

    /// <summary>Grist in kg for an extract in kg at a yield: the mass-balance inverse.</summary>
    public static double GrainKg(double extractKg, double asIsExtractFraction, double brewhouseYield) =>
        extractKg / (asIsExtractFraction * brewhouseYield);

    /// <summary>
    /// Extract to weigh in, in kg, the course's short way: 10 g per L and °P (density left out: 4 % low at 12 °P).
    /// </summary>
    public static double CourseExtractKg(double plato, double litres, double efficiency) =>
        0.01 * plato * litres / efficiency;

    private static double ExtractPerPoint(double sg) =>
        SugarSolution.ExtractKgPerL(SugarSolution.PlatoFromSg(sg), 20.0) / Points(sg);
}
