using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Waters;

public enum AcidKind
{
    Lactic,
    Phosphoric,
}

/// <summary>An acid by its label. Concentrated acid burns: add acid to water, eyes and hands covered.</summary>
/// <param name="MassFraction">0..0.9.</param>
public sealed record AcidOnHand(AcidKind Kind, double MassFraction)
{
    /// <summary>Of a syringe, mL.</summary>
    public const double ResolutionMl = 0.1;

    /// <summary>g/mL at 20 °C by mass fraction: usual trade densities (common practice), straight lines between.</summary>
    private static readonly (double Fraction, double GPerMl)[] LacticDensity =
        [(0, 0.998), (0.10, 1.02), (0.80, 1.19), (0.88, 1.206)];

    /// <summary>As for lactic acid; the curve is bent, so more points.</summary>
    private static readonly (double Fraction, double GPerMl)[] PhosphoricDensity =
        [(0, 0.998), (0.10, 1.053), (0.20, 1.113), (0.30, 1.181), (0.50, 1.335), (0.75, 1.579), (0.85, 1.685)];

    private double DensityGPerMl => Between(Kind == AcidKind.Lactic ? LacticDensity : PhosphoricDensity, MassFraction);

    public double MmolPerMl => Acids.MmolPerMl(MassFraction, DensityGPerMl, GramsPerMol);

    public double GramsPerMol => Kind == AcidKind.Lactic ? Acids.LacticGPerMol : Acids.PhosphoricGPerMol;

    /// <summary>Protons that a millilitre gives at a pH, mEq.</summary>
    public double MEqPerMl(double ph) =>
        MmolPerMl * (Kind == AcidKind.Lactic ? Acids.LacticProtons(ph) : Acids.PhosphoricProtons(ph));

    private static double Between((double Fraction, double GPerMl)[] table, double fraction)
    {
        var i = 1;
        while (i < table.Length - 1 && table[i].Fraction < fraction)
            i++;
        var (from, to) = (table[i - 1], table[i]);
        return from.GPerMl + (fraction - from.Fraction) / (to.Fraction - from.Fraction) * (to.GPerMl - from.GPerMl);
    }
}
