using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>Reads finings, spice or salt: amount, name, and minutes before knock-out or mash or fermenter.</summary>
internal static class OtherReader
{
    private static readonly string[] Units = ["g", "mL", "each"];

    /// <summary>All of it in one line.</summary>
    public static Recipe? Read(Recipe recipe, string text, Notation notation, out string fault)
    {
        var words = Words(text);
        fault = notation.Text("Write amount, name and when, such as 5 g carrageen finings 15 min, or 4 g gypsum mash, or 2 g yeast nutrient fermenter.");
        var cut = words.FindLastIndex(w => w.Any(char.IsAsciiDigit) || Place(w, notation) is not null);
        if (cut > 2 && words[cut - 1].Equals("boil", StringComparison.OrdinalIgnoreCase))
            cut--;
        var unit = cut < 3 ? null : Units.FirstOrDefault(u => u.Equals(words[1], StringComparison.OrdinalIgnoreCase) || notation.Name(u).Equals(words[1], StringComparison.OrdinalIgnoreCase));
        if (unit is null
            || RecipeReaders.One(Dimension.Number, "", 0.001, 100_000, "5", words[0], notation, out _) is not { } amount
            || When(string.Join(' ', words.Skip(cut)), recipe, notation) is not { } when)
            return null;
        fault = "";
        return recipe with { Others = recipe.Others.Add(new(string.Join(' ', words.Take(cut).Skip(2)), amount, unit, when.Use, when.Minutes)) };
    }

    /// <summary>When one that stands there already goes in.</summary>
    public static RecipeReader Time(int at) => (Recipe recipe, string text, Notation notation, out string fault) =>
    {
        fault = notation.Text($"Write minutes before knock-out from 0 to {recipe.BoilMin:0}, or mash, or fermenter.");
        return When(text.Trim(), recipe, notation) is { } when
            ? recipe with { Others = recipe.Others.SetItem(at, recipe.Others[at] with { Use = when.Use, Minutes = when.Minutes }) }
            : null;
    };

    private static (AdditionUse Use, double Minutes)? When(string text, Recipe recipe, Notation notation)
    {
        if (Place(text, notation) is { } place)
            return (place, 0);
        var minutes = RecipeReaders.After(text, "boil", notation) ?? text;
        return RecipeReaders.One(Dimension.Time, "min", 0, recipe.BoilMin, "15 min", minutes, notation, out _) is { } value ? (AdditionUse.Boil, value) : null;
    }

    private static AdditionUse? Place(string word, Notation notation) =>
        RecipeReaders.Is(word, "mash", notation) ? AdditionUse.Mash : RecipeReaders.Is(word, "fermenter", notation) ? AdditionUse.Fermenter : null;

    /// <summary>With the unit parted from its number: 10g is 10 g.</summary>
    private static List<string> Words(string text)
    {
        var line = text.Trim();
        var digits = line.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or ',').Count();
        return [.. $"{line[..digits]} {line[digits..]}".Split(' ', StringSplitOptions.RemoveEmptyEntries)];
    }
}
