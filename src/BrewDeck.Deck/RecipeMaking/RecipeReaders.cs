using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>Reads what is typed into a recipe. A change that would make it unreadable as a file is refused here.</summary>
internal static class RecipeReaders
{
    public static RecipeReader Text(int longest, bool required, Func<Recipe, string, Recipe> with) =>
        (Recipe recipe, string text, UnitSystem _, out string fault) =>
        {
            var line = text.Trim();
            fault = line.Length > longest || line.Any(char.IsControl) ? $"Write up to {longest} letters." : required && line.Length == 0 ? "Write a name." : "";
            return fault.Length == 0 ? with(recipe, line) : null;
        };

    /// <param name="unit">Of the limits and of what is handed on.</param>
    public static RecipeReader Quantity(
        Dimension dimension, string unit, double least, double most, Func<Recipe, double, Recipe> with, string example) =>
        (Recipe recipe, string text, UnitSystem units, out string fault) =>
        {
            if (One(dimension, unit, least, most, example, text, units, out fault) is not { } value)
                return null;
            var changed = with(recipe, value);
            fault = Trouble(changed);
            return fault.Length == 0 ? changed : null;
        };

    /// <summary>The same, and nothing typed takes the wish away.</summary>
    public static RecipeReader Wish(
        Dimension dimension, string unit, double least, double most, Func<Recipe, double?, Recipe> with, string example) =>
        (Recipe recipe, string text, UnitSystem units, out string fault) =>
        {
            fault = "";
            return text.Trim().Length == 0 ? with(recipe, null)
                : One(dimension, unit, least, most, example, text, units, out fault) is { } value ? with(recipe, value) : null;
        };

    /// <summary>When a hop goes in: minutes before knock-out, or <c>first wort</c>, <c>whirlpool 20</c>, <c>dry hop</c>.</summary>
    public static RecipeReader HopTime(int at) => (Recipe recipe, string text, UnitSystem units, out string fault) =>
    {
        if (When(text, recipe.BoilMin, units, out fault) is not { } when)
            return null;
        var hop = recipe.Hops[at] with { Use = when.Use, Minutes = when.Minutes };
        var changed = recipe with { Hops = recipe.Hops.SetItem(at, hop) };
        fault = Trouble(changed);
        return fault.Length == 0 ? changed : null;
    };

    public static (HopUse Use, double Minutes)? When(string text, double boilMin, UnitSystem units, out string fault)
    {
        var line = text.Trim().ToLowerInvariant();
        fault = "";
        if (line is "first wort")
            return (HopUse.FirstWort, boilMin);
        if (line is "dry hop" or "dry")
            return (HopUse.DryHop, 0);
        var stands = line.StartsWith("whirlpool", StringComparison.Ordinal);
        var minutes = stands ? line["whirlpool".Length..].Trim() : line;
        if (stands && minutes.Length == 0)
            minutes = "15";
        if (One(Dimension.Time, "min", 0, 1440, "60 min", minutes, units, out fault) is { } value)
            return (stands ? HopUse.Whirlpool : HopUse.Boil, value);
        fault = "Write minutes before knock-out such as 60, or first wort, whirlpool 20, dry hop.";
        return null;
    }

    public static double? One(Dimension dimension, string unit, double least, double most, string example, string text, UnitSystem units, out string fault)
    {
        var value = SumReader.One(new SumInput.Quantity("", "", dimension, unit, least, most, example), text, units, out var why);
        fault = value is null ? Names.Sentence(why) + "." : "";
        return value is { } read ? QuantityUnits.Tidy(read) : null;
    }

    private static string Trouble(Recipe recipe)
    {
        foreach (var hop in recipe.Hops.Where(h => h.Use == HopUse.Boil && h.Minutes > recipe.BoilMin))
            return $"{hop.Name} would boil {hop.Minutes:0} min, but the boil lasts {recipe.BoilMin:0} min.";
        foreach (var other in recipe.Others.Where(o => o.Use == AdditionUse.Boil && o.Minutes > recipe.BoilMin))
            return $"{other.Name} would boil {other.Minutes:0} min, but the boil lasts {recipe.BoilMin:0} min.";
        return "";
    }
}
