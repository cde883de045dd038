namespace BrewDeck.Core.Physics;

/// <summary>
/// Hardness, alkalinity and residual alkalinity. "As CaCO3" is mg/L of calcium carbonate that would bring the same
/// equivalents. Mind the basis: hardness as CaCO3 and mg/L of the ion give different sums.
/// </summary>
public static class WaterChemistry
{
    private const double CalciumCarbonateGPerMol = AtomicMass.Ca + AtomicMass.C + 3.0 * AtomicMass.O;

    /// <summary>mg of CaCO3 in one mEq.</summary>
    public const double CaCO3MgPerMEq = CalciumCarbonateGPerMol / 2.0;

    /// <summary>German degree: 10 mg CaO per L, in mg/L as CaCO3.</summary>
    public const double GermanDegreeAsCaCO3 = 10.0 * CalciumCarbonateGPerMol / (AtomicMass.Ca + AtomicMass.O);

    /// <summary>Clark (English) degree: 1 grain per imperial gallon, in mg/L as CaCO3.</summary>
    public const double ClarkDegreeAsCaCO3 = 64.79891 / 4.54609;

    /// <summary>Kolbach 1953: knock-out wort pH rises by 0.3 for 10 German degrees of residual alkalinity.</summary>
    public const double PhPerGermanDegree = 0.03;

    /// <summary>Least mash pH to aim for, measured at room temperature (brewing-guild course).</summary>
    public const double MashPhLow = 5.2;

    /// <summary>Most of the same.</summary>
    public const double MashPhHigh = 5.6;

    /// <summary>Mash pH of Pilsner malt in distilled water: 5.7 to 5.8 (brewing-guild course).</summary>
    public const double PilsnerMaltDistilledPh = 5.75;

    /// <summary>First dissociation of carbonic acid near 25 °C, dilute; handbook value, from memory.</summary>
    public const double CarbonicPk1 = 6.35;

    /// <summary>Second dissociation of the same.</summary>
    public const double CarbonicPk2 = 10.33;

    /// <summary>End point of the alkalinity titration.</summary>
    public const double TitrationEndPh = 4.3;

    /// <summary>mEq/L of an ion in mg/L.</summary>
    public static double MEqPerL(Ion ion, double mgPerL) => mgPerL / Ions.EquivalentMass(ion);

    /// <summary>Hardness in mg/L as CaCO3 from the ions in mg/L.</summary>
    public static double HardnessAsCaCO3(double calciumMgPerL, double magnesiumMgPerL) =>
        CaCO3MgPerMEq * (MEqPerL(Ion.Calcium, calciumMgPerL) + MEqPerL(Ion.Magnesium, magnesiumMgPerL));

    /// <summary>Alkalinity as CaCO3 from bicarbonate; pH below 8.5.</summary>
    public static double AlkalinityAsCaCO3(double bicarbonateMgPerL) =>
        CaCO3MgPerMEq * MEqPerL(Ion.Bicarbonate, bicarbonateMgPerL);

    /// <summary>
    /// Alkalinity as CaCO3 as a titration to <see cref="TitrationEndPh"/> finds it: acid for the carbonates and the
    /// end point.
    /// </summary>
    public static double TitratedAlkalinityAsCaCO3(double bicarbonateMgPerL, double ph)
    {
        var bicarbonate = MEqPerL(Ion.Bicarbonate, bicarbonateMgPerL);
        var carbonateMmolPerL = bicarbonate / BicarbonateShare(ph, CarbonicPk1, CarbonicPk2);
        var forCarbonates = carbonateMmolPerL
            * (ChargeNumber(ph, CarbonicPk1, CarbonicPk2) - ChargeNumber(TitrationEndPh, CarbonicPk1, CarbonicPk2));
        return CaCO3MgPerMEq * (forCarbonates + 1000.0 * Math.Pow(10.0, -TitrationEndPh));
    }

    /// <summary>Residual alkalinity, Kolbach 1953: alkalinity − Ca/3.5 − Mg/7, all as CaCO3.</summary>
    public static double ResidualAlkalinityAsCaCO3(
        double alkalinityAsCaCO3, double calciumHardnessAsCaCO3, double magnesiumHardnessAsCaCO3) =>
        alkalinityAsCaCO3 - calciumHardnessAsCaCO3 / 3.5 - magnesiumHardnessAsCaCO3 / 7.0;

    /// <summary>Residual alkalinity as CaCO3 with calcium and magnesium in mg/L of the ions.</summary>
    public static double ResidualAlkalinityFromIons(
        double alkalinityAsCaCO3, double calciumMgPerL, double magnesiumMgPerL) =>
        ResidualAlkalinityAsCaCO3(
            alkalinityAsCaCO3, HardnessAsCaCO3(calciumMgPerL, 0.0), HardnessAsCaCO3(0.0, magnesiumMgPerL));

    /// <summary>Change of knock-out wort pH with residual alkalinity (Kolbach 1953).</summary>
    public static double WortPhChange(double residualAlkalinityAsCaCO3) =>
        PhPerGermanDegree * residualAlkalinityAsCaCO3 / GermanDegreeAsCaCO3;

    /// <summary>
    /// Acid in mEq/L that takes water from one pH to another, closed to the air, OH⁻ and H⁺ neglected: pH 5..9.
    /// </summary>
    public static double AcidMEqPerL(
        double alkalinityAsCaCO3, double fromPh, double toPh, double pk1 = CarbonicPk1, double pk2 = CarbonicPk2)
    {
        var alkalinity = alkalinityAsCaCO3 / CaCO3MgPerMEq;
        return alkalinity * (1.0 - ChargeNumber(toPh, pk1, pk2) / ChargeNumber(fromPh, pk1, pk2));
    }

    private static double BicarbonateShare(double ph, double pk1, double pk2) =>
        1.0 / (1.0 + Math.Pow(10.0, pk1 - ph) + Math.Pow(10.0, ph - pk2));

    // mean charge of the dissolved carbonates
    private static double ChargeNumber(double ph, double pk1, double pk2) =>
        BicarbonateShare(ph, pk1, pk2) * (1.0 + 2.0 * Math.Pow(10.0, ph - pk2));
}
