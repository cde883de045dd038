using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>What the amounts of a recipe give on a brewhouse, as they stand: nothing is fitted to a wish.</summary>
internal static class RecipeFigures
{
    private static readonly string[] Fills = [LimitName.MashInTun, LimitName.WortInKettle, LimitName.WortInFermenter];

    public static ImmutableArray<Line> Of(Brewhouse house, Recipe recipe, Notation notation)
    {
        if (recipe.MashKg <= 0 || recipe.Rests.IsEmpty)
            return [Line.Of(recipe.MashKg <= 0 ? notation.Text("Add malt: there is nothing to mash yet.") : notation.Text("Add a rest: the mash needs one."), Tone.Due)];
        var asWritten = recipe with { OriginalGravitySg = null, BitternessIbu = null };
        if (Planner.Figures(house, asWritten, new DayChoices { BatchL = recipe.BatchL }) is not { } figures)
            return [Line.Of(notation.Text($"{house.Name} cannot mash this: it cannot raise the mash from rest to rest."), Tone.Warning)];
        var t = figures.Totals;
        return
        [
            Line.Of(notation.Text($"These amounts give {notation.Gravity(t.OriginalGravitySg)}, {notation.Number(t.BitternessIbu, "0")} IBU, {notation.Number(t.ColourEbc, "0")} EBC"), Tone.Strong),
            .. recipe.Hops.IsEmpty ? new[] { Line.Of(notation.Text("No hops yet."), Tone.Due) } : [],
            .. Wishes(recipe, t, notation),
            .. figures.Failed.Select(l => Line.Of(LimitWords.Of(l, notation), Tone.Warning)),
            Line.Of(notation.Text("at the fullest, hot: ") + string.Join(", ", figures.Limits.Where(l => l.Ok && Fills.Contains(l.Name)).Select(l => notation.Text($"{notation.Lowered(LimitWords.Name(l.Name, notation))} {notation.Number(l.Value, "0")} of {notation.Volume(l.Bound)}"))), Tone.Muted),
        ];
    }

    private static IEnumerable<Line> Wishes(Recipe recipe, Totals given, Notation notation)
    {
        if (recipe.OriginalGravitySg is { } sg && Math.Abs(sg - given.OriginalGravitySg) > 0.0005)
            yield return Line.Of(notation.Text($"Wanted {notation.Gravity(sg)}: a plan takes {Times((sg - 1) / (given.OriginalGravitySg - 1), notation)} of the grist."));
        if (recipe.BitternessIbu is { } ibu && given.BitternessIbu > 0 && Math.Abs(ibu - given.BitternessIbu) > 0.5)
            yield return Line.Of(notation.Text($"Wanted {notation.Number(ibu, "0")} IBU: a plan takes {Times(ibu / given.BitternessIbu, notation)} of the hops."));
    }

    private static string Times(double factor, Notation notation) => notation.Text($"about {notation.Number(100 * factor, "0")} %");
}
