using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>Reads what is typed into a recipe. A change that would make it unreadable as a file is refused here.</summary>
internal static class RecipeReaders
{
    private const int LongestText = 200;

    public static RecipeReader Text(bool required, Func<Recipe, string, Recipe> with) =>
        (Recipe recipe, string text, Notation notation, out string fault) =>
        {
            var line = text.Trim();
            fault = line.Length > LongestText || line.Any(char.IsControl) ? notation.Text($"Write up to {LongestText} letters.") : required && line.Length == 0 ? notation.Text("Write a name.") : "";
            return fault.Length == 0 ? with(recipe, line) : null;
        };

    /// <param name="unit">Of the limits and of what is handed on.</param>
    public static RecipeReader Quantity(
        Dimension dimension, string unit, double least, double most, Func<Recipe, double, Recipe> with, string example) =>
        (Recipe recipe, string text, Notation notation, out string fault) =>
        {
            if (One(dimension, unit, least, most, example, text, notation, out fault) is not { } value)
                return null;
            var changed = with(recipe, value);
            fault = Trouble(changed, notation);
            return fault.Length == 0 ? changed : null;
        };

    /// <summary>The same, and nothing typed takes the wish away.</summary>
    public static RecipeReader Wish(
        Dimension dimension, string unit, double least, double most, Func<Recipe, double?, Recipe> with, string example) =>
        (Recipe recipe, string text, Notation notation, out string fault) =>
        {
            fault = "";
            return text.Trim().Length == 0 ? with(recipe, null)
                : One(dimension, unit, least, most, example, text, notation, out fault) is { } value ? with(recipe, value) : null;
        };

    /// <summary>When a hop goes in: minutes before knock-out, or <c>first wort</c>, <c>whirlpool 20</c>, <c>dry hop</c>.</summary>
    public static RecipeReader HopTime(int at) => (Recipe recipe, string text, Notation notation, out string fault) =>
    {
        if (When(text, recipe, notation, out fault) is not { } when)
            return null;
        var hop = recipe.Hops[at] with { Use = when.Use, Minutes = when.Minutes };
        var changed = recipe with { Hops = recipe.Hops.SetItem(at, hop) };
        fault = Trouble(changed, notation);
        return fault.Length == 0 ? changed : null;
    };

    private static (HopUse Use, double Minutes)? When(string text, Recipe recipe, Notation notation, out string fault)
    {
        var line = text.Trim();
        fault = "";
        if (Is(line, "first wort", notation))
            return (HopUse.FirstWort, recipe.BoilMin);
        if (Is(line, "dry", notation) || Is(line, "dry hop", notation))
            return (HopUse.DryHop, 0);
        var stands = After(line, "whirlpool", notation) ?? After(line, "stand", notation);
        if (stands is "")
            return (HopUse.Whirlpool, recipe.StandMin);
        if (One(Dimension.Time, "min", 0, 1440, "60 min", stands ?? line, notation, out fault) is { } value)
            return (stands is null ? HopUse.Boil : HopUse.Whirlpool, value);
        fault = stands is null
            ? notation.Text("Write minutes before knock-out such as 60, or first wort, whirlpool 20, dry hop.")
            : notation.Text("Write only the minutes of the stand, such as whirlpool 20: the wort stands as hot as it comes from the boil.");
        return null;
    }

    /// <summary>What is typed behind a word; null: it does not begin with it.</summary>
    public static string? After(string typed, string word, Notation notation) =>
        new[] { word, notation.Name(word) }.FirstOrDefault(w => typed.StartsWith(w, StringComparison.OrdinalIgnoreCase)) is { } said ? typed[said.Length..].Trim() : null;

    /// <summary>In English, or as this brewer's language calls it.</summary>
    public static bool Is(string typed, string word, Notation notation) =>
        typed.Equals(word, StringComparison.OrdinalIgnoreCase) || typed.Equals(notation.Name(word), StringComparison.OrdinalIgnoreCase);

    public static double? One(Dimension dimension, string unit, double least, double most, string example, string text, Notation notation, out string fault)
    {
        var value = SumReader.One(new SumInput.Quantity("", "", dimension, unit, least, most, example), text, notation, out var why);
        fault = value is null ? Names.Sentence(why) + "." : "";
        return value is { } read ? QuantityUnits.Tidy(read) : null;
    }

    private static string Trouble(Recipe recipe, Notation notation)
    {
        foreach (var hop in recipe.Hops.Where(h => h.Use == HopUse.Boil && h.Minutes > recipe.BoilMin))
            return notation.Text($"{hop.Name} would boil {hop.Minutes:0} min, but the boil lasts {recipe.BoilMin:0} min.");
        foreach (var other in recipe.Others.Where(o => o.Use == AdditionUse.Boil && o.Minutes > recipe.BoilMin))
            return notation.Text($"{other.Name} would boil {other.Minutes:0} min, but the boil lasts {recipe.BoilMin:0} min.");
        return "";
    }
}
