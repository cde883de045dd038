using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>Which lines of a grist are there for their colour: those on the dark side of the widest gap between the colours of the mash.</summary>
internal static class ColouredMalts
{
    /// <summary>Sugar and the palest malts colour alike next to any coloured malt (common practice, no source).</summary>
    private const double PalestEbc = 3;

    /// <summary>Malts nearer to each other than this make up the body of a grist together: common practice, no source.</summary>
    private const double LeastGap = 2;

    /// <summary>Depends on the colours alone and not on the masses, so that a scaled recipe parts as the old one did.</summary>
    /// <returns>Colour of the palest coloured line, EBC; null: all lines colour alike.</returns>
    public static double? LeastEbc(Recipe recipe)
    {
        // pale sugar is there for strength: next to it the body of the grist would count as coloured
        var colours = recipe.Grist.Where(g => g.Use == GristUse.Mash).Select(Colour).Order().ToArray();
        if (colours.Length < 2)
            return null;
        var (gap, least) = colours.Zip(colours.Skip(1), (pale, dark) => (dark / pale, dark)).MaxBy(g => g.Item1);
        return gap < LeastGap ? null : least;
    }

    /// <summary>What the coloured lines give of the malt colour, 0..1.</summary>
    public static double ColourShare(Recipe recipe, double leastEbc) =>
        recipe.Grist.Where(g => Colour(g) >= leastEbc).Sum(Given) / recipe.Grist.Sum(Given);

    public static Recipe Times(Recipe recipe, double leastEbc, double factor) => recipe with
    {
        Grist = [.. recipe.Grist.Select(g => Colour(g) >= leastEbc ? g with { MassKg = g.MassKg * factor } : g)],
    };

    private static double Colour(GristLine line) => Math.Max(PalestEbc, line.ColourEbc);

    private static double Given(GristLine line) => line.MassKg * line.ColourEbc;
}
