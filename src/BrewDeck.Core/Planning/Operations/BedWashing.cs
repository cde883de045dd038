namespace BrewDeck.Core.Planning.Operations;

/// <summary>
/// How sparge liquor washes extract out of a grain bed: ideal mixed stages in a row (the tanks-in-series model of chemical
/// engineering, e.g. Levenspiel, Chemical Reaction Engineering, ch. 14; from memory). One stage mixes fully, many displace.
/// </summary>
internal static class BedWashing
{
    /// <summary>Share of the extract that is left after <paramref name="washed"/> litres per litre of liquid in the bed, 0..1.</summary>
    /// <param name="stages">1 and more; between whole numbers the two neighbours are mixed.</param>
    public static double Left(double stages, double washed) => Mixed(stages, washed, LeftOf);

    /// <summary>Strength of what runs off against the strength at the beginning.</summary>
    public static double Strength(double stages, double washed) => Mixed(stages, washed, StrengthOf);

    private static double Mixed(double stages, double washed, Func<int, double, double> of)
    {
        var low = Math.Max(1, (int)Math.Floor(stages));
        var share = Math.Clamp(stages - low, 0, 1);
        return share == 0 ? of(low, washed) : (1 - share) * of(low, washed) + share * of(low + 1, washed);
    }

    private static double LeftOf(int stages, double washed)
    {
        double x = stages * washed, term = 1, sum = 0;
        for (var i = 0; i < stages; i++)
        {
            sum += (stages - i) * term;
            term *= x / (i + 1);
        }
        return Math.Exp(-x) * sum / stages;
    }

    private static double StrengthOf(int stages, double washed)
    {
        double x = stages * washed, term = 1, sum = 0;
        for (var i = 0; i < stages; i++)
        {
            sum += term;
            term *= x / (i + 1);
        }
        return Math.Exp(-x) * sum;
    }
}
