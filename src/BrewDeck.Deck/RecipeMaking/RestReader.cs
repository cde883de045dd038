using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>Reads a rest as one line: temperature, minutes, and a name.</summary>
internal static class RestReader
{
    public static Recipe? Read(Recipe recipe, string text, Notation notation, out string fault)
    {
        var parts = text.Split(' ', 3, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        fault = notation.Text("Write temperature, minutes and a name, such as 72 20 dextrins.");
        if (parts.Length < 2)
            return null;
        if (RecipeReaders.One(Dimension.Temperature, "°C", 20, 85, "66 °C", parts[0], notation, out fault) is not { } celsius
            || RecipeReaders.One(Dimension.Time, "min", 1, 720, "60 min", parts[1], notation, out fault) is not { } minutes)
            return null;
        var rest = new MashRest(parts.Length == 3 ? parts[2] : "rest", celsius, minutes);
        return recipe with { Rests = RecipeRows.Rising(recipe.Rests.Add(rest)) };
    }
}
