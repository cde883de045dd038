using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>How much yeast the planned wort wants, by the reckoner's sum.</summary>
public static class YeastWords
{
    /// <summary>"ale yeast, 36 g dried (358 billion cells)".</summary>
    public static string Of(Plan plan, Notation notation) => $"{plan.Recipe.Yeast.Name}, {Amount(plan, notation)}";

    /// <summary>"36 g dried (358 billion cells)".</summary>
    public static string Amount(Plan plan, Notation notation)
    {
        var billion = Pitching.CellsBillion(
            plan.Recipe.Yeast.PitchRateMillionPerMlPlato, plan.Totals.FermenterL, SugarSolution.PlatoFromSg(plan.Totals.OriginalGravitySg));
        return notation.Text($"{notation.Grams(billion / Pitching.DriedBillionPerG)} dried ({notation.Number(billion, "0")} billion cells)");
    }
}
