using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>
/// Moves a recipe from one brewhouse to another. The planner is run on both: what each of them yields, evaporates and gets out of its
/// hops is what its own day says, not a factor.
/// </summary>
public static class RecipeScaling
{
    /// <summary>A figure is kept when it is nearer than this share: far finer than it can be measured.</summary>
    private const double Near = 1e-4;

    private const int ColourRounds = 12;

    /// <summary>Share of the colour at which it is no longer corrected; the planner's own figures are good to 1e-7.</summary>
    private const double ColourClose = 1e-6;

    /// <summary>A recipe with so many times more or less of its coloured malts is another recipe: its colour is not kept then.</summary>
    private const double MostColoured = 10;

    /// <summary>Morey's colour grows with this power of the malt colour.</summary>
    private const double MoreyPower = 0.6859;

    /// <param name="recipe">As written for the old brewhouse; what is scaled is what the planner makes of it there.</param>
    /// <param name="day">Weather and sparge of both days; its batch is the one on the old brewhouse.</param>
    /// <param name="batchL">Into the fermenter on the new brewhouse, litres at 20 °C; null: what is usual there, or as on the old one.</param>
    /// <returns>Null where one of them cannot mash this at all.</returns>
    public static Scaling? Of(Brewhouse from, Brewhouse to, Recipe recipe, KeptFigures keep, DayChoices day, double? batchL)
    {
        var there = day with { BatchL = batchL, Circuits = null };
        if (Side(from, recipe, day) is not { } old || Side(to, Wished(old, keep), there, moved: true) is not { } plain)
            return null;
        var moved = keep.HasFlag(KeptFigures.Colour) ? WithColour(plain, Wished(old, keep), old.Day.Totals.ColourEbc, there) : plain;
        return new(old, moved, keep, keep & Alike(old, moved));
    }

    /// <param name="moved">Its hops keep their proportion on the way, or it would come back as another recipe.</param>
    private static ScaledSide? Side(Brewhouse house, Recipe recipe, DayChoices day, bool moved = false) =>
        Planner.Figures(house, recipe, day, hopsAlike: moved) is { } figures ? new(house, figures.Recipe, figures) : null;

    /// <summary>A figure that is not to be kept falls where the new brewhouse lets it: masses go with the litres.</summary>
    private static Recipe Wished(ScaledSide old, KeptFigures keep) => old.Recipe with
    {
        OriginalGravitySg = keep.HasFlag(KeptFigures.Gravity) ? old.Day.Totals.OriginalGravitySg : null,
        BitternessIbu = keep.HasFlag(KeptFigures.Bitterness) ? old.Day.Totals.BitternessIbu : null,
        MashThicknessLPerKg = keep.HasFlag(KeptFigures.Ratio) ? old.RatioLPerKg : null,
    };

    /// <summary>More or less of the coloured malts until the planner foresees the colour; as it is where no amount of them does.</summary>
    private static ScaledSide WithColour(ScaledSide plain, Recipe wished, double wantedEbc, DayChoices day)
    {
        if (ColouredMalts.LeastEbc(wished) is not { } leastEbc || wantedEbc <= 0)
            return plain;
        var slope = MoreyPower * ColouredMalts.ColourShare(wished, leastEbc);
        double factor = 1, miss = Miss(plain, wantedEbc);
        var (side, lastFactor, lastMiss) = (plain, factor, miss);
        for (var round = 0; round < ColourRounds && Math.Abs(miss) > ColourClose; round++)
        {
            (lastFactor, lastMiss, factor) = (factor, miss, factor * Math.Exp(-miss / slope));
            if (!(factor is > 1 / MostColoured and < MostColoured))
                return plain;
            if (Side(plain.House, ColouredMalts.Times(wished, leastEbc, factor), day, moved: true) is not { } next)
                return plain;
            (side, miss) = (next, Miss(next, wantedEbc));
            // malts that turn the colour the other way, or not at all, leave the slope as it was
            if ((miss - lastMiss) / Math.Log(factor / lastFactor) is > 0.01 and < 1 and var seen)
                slope = seen;
        }
        return Math.Abs(miss) <= ColourClose ? side : plain;
    }

    private static double Miss(ScaledSide side, double wantedEbc) => Math.Log(Math.Max(1e-6, side.Day.Totals.ColourEbc) / wantedEbc);

    private static KeptFigures Alike(ScaledSide old, ScaledSide moved)
    {
        var (a, b) = (old.Day.Totals, moved.Day.Totals);
        return (IsNear(Extract.Points(a.OriginalGravitySg), Extract.Points(b.OriginalGravitySg)) ? KeptFigures.Gravity : 0)
            | (IsNear(a.BitternessIbu, b.BitternessIbu) ? KeptFigures.Bitterness : 0)
            | (IsNear(a.ColourEbc, b.ColourEbc) ? KeptFigures.Colour : 0)
            | (IsNear(old.RatioLPerKg, moved.RatioLPerKg) ? KeptFigures.Ratio : 0);
    }

    private static bool IsNear(double a, double b) => Math.Abs(a - b) <= Near * Math.Abs(a);
}
