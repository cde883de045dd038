using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>What a brewer may want kept when a recipe moves to another brewhouse.</summary>
[Flags]
public enum KeptFigures
{
    None = 0,

    /// <summary>Original gravity.</summary>
    Gravity = 1,

    Bitterness = 2,

    Colour = 4,

    /// <summary>Strike liquor to grist.</summary>
    Ratio = 8,

    All = Gravity | Bitterness | Colour | Ratio,
}

/// <summary>A recipe moved from one brewhouse to another, and what each of them makes of it.</summary>
/// <param name="Asked">What was to be kept.</param>
/// <param name="Kept">What of it the planner foresees on the new brewhouse as on the old one.</param>
public sealed record Scaling(ScaledSide Old, ScaledSide New, KeptFigures Asked, KeptFigures Kept)
{
    public KeptFigures Missed => Asked & ~Kept;

    /// <summary>The new recipe as one is written: amounts that a scale shows, wishes as fine as they are read. The planner fits the rest.</summary>
    public Recipe Written => New.Recipe with
    {
        BatchL = Math.Round(New.Recipe.BatchL, 2),
        OriginalGravitySg = Rounded(New.Recipe.OriginalGravitySg, 4),
        BitternessIbu = Rounded(New.Recipe.BitternessIbu, 1),
        MashThicknessLPerKg = Rounded(New.Recipe.MashThicknessLPerKg, 2),
        Grist = [.. New.Recipe.Grist.Select(g => g with { MassKg = Math.Max(0.001, Math.Round(g.MassKg, 3)) })],
        Hops = [.. New.Recipe.Hops.Select(h => h with { MassG = Math.Max(0.1, Math.Round(h.MassG, 1)) })],
        Others = [.. New.Recipe.Others.Select(o => o with { Amount = Math.Max(0.01, Math.Round(o.Amount, 2)) })],
    };

    private static double? Rounded(double? value, int digits) => value is { } number ? Math.Round(number, digits) : null;
}

/// <summary>One side of a scaling.</summary>
/// <param name="Recipe">Its masses as the planner fits them to this brewhouse, written for the day's batch.</param>
public sealed record ScaledSide(Brewhouse House, Recipe Recipe, DayFigures Day)
{
    /// <summary>Strike liquor to grist, L/kg.</summary>
    public double RatioLPerKg => Day.Totals.StrikeWaterL / Recipe.MashKg;

    /// <summary>Extract in the fermenter over the laboratory extract of all that was weighed, 0..1.</summary>
    public double EfficiencyFraction =>
        Extract.MassKg(Day.Totals.FermenterL, SugarSolution.PlatoFromSg(Day.Totals.OriginalGravitySg)) / Recipe.Grist.Sum(g => g.ExtractKg);

    /// <summary>Bitterness in the fermenter over the alpha acids of the hot hops, 0..1; 0 without such hops.</summary>
    public double HopYieldFraction =>
        Recipe.Hops.Where(h => h.Use != HopUse.DryHop).Sum(h => 1000 * h.MassG * h.AlphaFraction) is > 0 and var alphaMg
            ? Day.Totals.BitternessIbu * Day.Totals.FermenterL / alphaMg
            : 0;

    /// <summary>Between the end of the lauter and the end of the boil, L at 20 °C.</summary>
    public double EvaporatedL => Day.Totals.PreBoilL - Day.Totals.PostBoilL;

    /// <summary>What keeps it from being brewed there; empty: nothing does.</summary>
    public ImmutableArray<Limit> Failed => [.. Day.Failed];
}
