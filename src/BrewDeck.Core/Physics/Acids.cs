namespace BrewDeck.Core.Physics;

/// <summary>
/// Acids for treating water: strength from the label and what they give at the target pH. Concentrated acid burns: add
/// acid to water, eyes and hands covered.
/// </summary>
public static class Acids
{
    /// <summary>Molar mass of lactic acid, C3H6O3, in g/mol.</summary>
    public const double LacticGPerMol = 90.08;

    /// <summary>Dissociation of lactic acid at 25 °C, dilute; handbook value, from memory.</summary>
    public const double LacticPk = 3.86;

    /// <summary>Molar mass of phosphoric acid, H3PO4, in g/mol.</summary>
    public const double PhosphoricGPerMol = 97.994;

    /// <summary>The three dissociations of phosphoric acid at 25 °C, dilute; handbook values, from memory.</summary>
    public const double PhosphoricPk1 = 2.16;
    public const double PhosphoricPk2 = 7.21;
    public const double PhosphoricPk3 = 12.32;

    /// <summary>Strength in mmol/mL from mass fraction, density in g/mL (numerically the SG) and molar mass in g/mol.</summary>
    public static double MmolPerMl(double massFraction, double gramsPerMl, double gramsPerMol) =>
        1000.0 * massFraction * gramsPerMl / gramsPerMol;

    /// <summary>Protons that each molecule of lactic acid gives at a pH (Henderson-Hasselbalch), 0..1; dilute, any pH.</summary>
    public static double LacticProtons(double ph) => 1.0 / (1.0 + Math.Pow(10.0, LacticPk - ph));

    /// <summary>Protons that each molecule of phosphoric acid gives at a pH (stepwise dissociation), 0..3; dilute, any pH.</summary>
    public static double PhosphoricProtons(double ph)
    {
        var first = Math.Pow(10.0, ph - PhosphoricPk1);
        var second = first * Math.Pow(10.0, ph - PhosphoricPk2);
        var third = second * Math.Pow(10.0, ph - PhosphoricPk3);
        return (first + 2.0 * second + 3.0 * third) / (1.0 + first + second + third);
    }

    /// <summary>Alkalinity in mg/L as CaCO3 that acid of a strength in mEq/mL takes from water in L.</summary>
    public static double AlkalinityRemovedAsCaCO3(double millilitres, double mEqPerMl, double litres) =>
        millilitres * mEqPerMl / litres * WaterChemistry.CaCO3MgPerMEq;
}
