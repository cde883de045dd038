using System.Collections.Immutable;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Reports;

/// <summary>The recipe as it was fitted to the brewhouse: what was weighed.</summary>
internal static class RecordRecipe
{
    public static RecordTable Of(RecordSource source)
    {
        var (recipe, notation) = (source.Plan.Recipe, source.Notation);
        return new("Recipe as fitted, before the day", ["what", "amount", "how"],
        [
            .. recipe.Grist.Select(g => ImmutableArray.Create(
                g.Name, notation.Mass(g.MassKg), $"{Names.Plainly(g.Use.ToString())}, extract {notation.Percent(g.ExtractFraction)}, {notation.Number(g.ColourEbc, "0.#")} EBC")),
            .. recipe.Rests.Select(r => ImmutableArray.Create(r.Name, Durations.Short(r.Minutes * 60), "rest at " + notation.Target(r.TempC))),
            .. recipe.Hops.Select(h => ImmutableArray.Create(
                h.Name, notation.Grams(h.MassG), $"{Use(h, notation)}, alpha {notation.Percent(h.AlphaFraction)}, {Names.Plainly(h.Form.ToString())}")),
            .. recipe.Others.Select(o => ImmutableArray.Create(
                o.Name, $"{notation.Number(o.Amount, "0.##")} {o.Unit}", o.Use == AdditionUse.Boil ? $"boil, {notation.Number(o.Minutes, "0")} min" : Names.Plainly(o.Use.ToString()))),
            [recipe.Yeast.Name, "", $"yeast, pitched at {notation.Target(recipe.Yeast.PitchC)}, attenuation {notation.Percent(recipe.Yeast.AttenuationFraction)}"],
        ]);
    }

    private static string Use(HopAddition hop, Notation notation) => hop.Use switch
    {
        HopUse.FirstWort => "first wort",
        HopUse.DryHop => "into the fermenter",
        HopUse.Whirlpool => $"whirlpool, {notation.Number(hop.Minutes, "0")} min",
        _ => $"boil, {notation.Number(hop.Minutes, "0")} min",
    };
}
