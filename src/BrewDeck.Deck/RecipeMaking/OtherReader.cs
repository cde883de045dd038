using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>Reads finings, spice or salt as one line: amount, name and minutes before knock-out.</summary>
internal static class OtherReader
{
    private static readonly string[] Units = ["g", "mL", "each"];

    public static Recipe? Read(Recipe recipe, string text, Notation notation, out string fault)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        fault = notation.Text("Write amount, name and minutes, such as 5 g carrageen finings 15 min.");
        if (words.Count > 0 && words[^1].Equals("min", StringComparison.OrdinalIgnoreCase))
            words.RemoveAt(words.Count - 1);
        var unit = words.Count < 4 ? null : Units.FirstOrDefault(u => u.Equals(words[1], StringComparison.OrdinalIgnoreCase) || notation.Name(u).Equals(words[1], StringComparison.OrdinalIgnoreCase));
        if (unit is null
            || RecipeReaders.One(Dimension.Number, "", 0.001, 100_000, "5", words[0], notation, out _) is not { } amount
            || RecipeReaders.One(Dimension.Time, "min", 0, recipe.BoilMin, "15 min", words[^1], notation, out _) is not { } minutes)
            return null;
        fault = "";
        var name = string.Join(' ', words.Skip(2).SkipLast(1));
        return recipe with { Others = recipe.Others.Add(new(name, amount, unit, AdditionUse.Boil, minutes)) };
    }
}
