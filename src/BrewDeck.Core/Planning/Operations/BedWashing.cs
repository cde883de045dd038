namespace BrewDeck.Core.Planning.Operations;

/// <summary>
/// How sparge liquor washes extract out of a grain bed: ideal mixed stages in a row (the tanks-in-series model of chemical
/// engineering, e.g. Levenspiel, Chemical Reaction Engineering, ch. 14; from memory). One stage mixes fully, many displace. Between whole
/// numbers of stages the time in the bed is gamma distributed as it is for whole ones (Buffham and Gibilaro 1968, AIChE Journal 14; from memory).
/// </summary>
internal static class BedWashing
{
    /// <summary>Terms after which a series or fraction has long settled for the stages of a bed.</summary>
    private const int MostTerms = 100;

    /// <summary>Share of the extract that is left after <paramref name="washed"/> litres per litre of liquid in the bed, 0..1.</summary>
    /// <param name="stages">1 and more.</param>
    public static double Left(double stages, double washed) =>
        washed <= 0 ? 1 : (1 - washed) * Strength(stages, washed) + Term(stages, stages * washed);

    /// <summary>Strength of what runs off against the strength at the beginning: the share of liquid that stays longer in the bed.</summary>
    public static double Strength(double stages, double washed)
    {
        var x = stages * washed;
        return x <= 0 ? 1 : x < stages + 1 ? 1 - Series(stages, x) : Fraction(stages, x);
    }

    /// <summary>x^a e^-x / Γ(a + 1).</summary>
    private static double Term(double a, double x) => Math.Exp(a * Math.Log(x) - x - LogGamma(a + 1));

    /// <summary>Lower incomplete gamma function, regularised: its power series.</summary>
    private static double Series(double a, double x)
    {
        double term = 1, sum = 1;
        for (var n = 1; n < MostTerms && term > 1e-17 * sum; n++)
        {
            term *= x / (a + n);
            sum += term;
        }
        return sum * Term(a, x);
    }

    /// <summary>Upper incomplete gamma function, regularised: Legendre's continued fraction, from its far end.</summary>
    private static double Fraction(double a, double x)
    {
        var tail = x + 2 * MostTerms + 1 - a;
        for (var n = MostTerms; n > 0; n--)
            tail = x + 2 * n - 1 - a - n * (n - a) / tail;
        return a * Term(a, x) / tail;
    }

    /// <summary>Stirling's series after steps up to where it is exact to 1e-15.</summary>
    private static double LogGamma(double x)
    {
        double product = 1;
        for (; x < 12; x++)
            product *= x;
        var inverse = 1 / (x * x);
        var series = (1 / 12.0 - inverse * (1 / 360.0 - inverse * (1 / 1260.0 - inverse * (1 / 1680.0 - inverse / 1188)))) / x;
        return (x - 0.5) * Math.Log(x) - x + 0.5 * Math.Log(2 * Math.PI) + series - Math.Log(product);
    }
}
