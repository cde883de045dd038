using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>Why what is weighed in is not what the recipe says: its amounts are fitted to the brewhouse and the day.</summary>
public static class FittedWords
{
    /// <summary>Nearer than this to the recipe needs no word; share.</summary>
    private const double Noticed = 0.005;

    /// <param name="recipe">As written.</param>
    /// <param name="plan">Of the same recipe, its amounts fitted.</param>
    public static IEnumerable<Line> Of(Recipe recipe, Plan plan, Notation notation)
    {
        double written = Mass(recipe, GristUse.Mash), fitted = Mass(plan.Recipe, GristUse.Mash);
        double hops = recipe.Hops.Sum(h => h.MassG), fittedHops = plan.Recipe.Hops.Sum(h => h.MassG);
        if (Math.Abs(fitted - written) > Noticed * written || Math.Abs(fittedHops - hops) > Noticed * hops)
            yield return Line.Of(notation.Text($"fitted to this brewhouse: {notation.Mass(fitted)} grist (recipe {notation.Mass(written)}), {notation.Grams(fittedHops)} hops (recipe {notation.Grams(hops)})"));
        double extract = Mass(recipe, GristUse.Kettle), fittedExtract = Mass(plan.Recipe, GristUse.Kettle);
        if (Math.Abs(fittedExtract - extract) > Noticed * extract)
            yield return Line.Of(notation.Text($"into the kettle, beside the grist: {notation.Mass(fittedExtract)} sugar and extract (recipe {notation.Mass(extract)})"));
    }

    /// <summary>What is milled for the mash, or what is stirred into the kettle.</summary>
    private static double Mass(Recipe recipe, GristUse use) => recipe.Grist.Where(g => g.Use == use).Sum(g => g.MassKg);
}
