using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using BrewDeck.Profiles;

namespace BrewDeck.Commands;

/// <summary>What the bags say and what stands in for them, as given on the command line.</summary>
internal static class OnHand
{
    /// <exception cref="UsageException">A name that the recipe or the catalogue does not have, or a number that cannot be read.</exception>
    public static DayChoices Apply(DayChoices choices, Recipe recipe, ProfileFolder profiles, string[] alphas, string[] insteads)
    {
        foreach (var given in alphas)
            choices = WithAlpha(choices, recipe, given);
        foreach (var given in insteads)
            choices = WithOther(choices, recipe, profiles, given);
        return choices;
    }

    private static DayChoices WithAlpha(DayChoices choices, Recipe recipe, string given)
    {
        var (name, text) = Split("--alpha", given, "HOP=8.2%");
        var hop = recipe.Hops.FirstOrDefault(h => Same(h.Name, name))
            ?? throw new UsageException($"--alpha: the recipe has no hop '{name}'; it has {string.Join(", ", recipe.Hops.Select(h => h.Name).Distinct())}");
        var read = QuantityReader.Read(text, Dimension.Fraction, "%");
        if (!read.Ok || read.Value is < 0 or > 0.25)
            throw new UsageException($"--alpha: {DayOptions.What(read, text)}; write percent from 0 to 25, such as 8.2%");
        return choices with { MeasuredAlpha = choices.MeasuredAlpha.SetItem(hop.Name, read.Value) };
    }

    private static DayChoices WithOther(DayChoices choices, Recipe recipe, ProfileFolder profiles, string given)
    {
        var (name, other) = Split("--instead", given, "NAME=OTHER");
        if (recipe.Grist.FirstOrDefault(g => Same(g.Name, name)) is { } line)
        {
            var found = profiles.GristOnHand(other) ?? throw Unknown(other);
            return choices with { GristOnHand = choices.GristOnHand.SetItem(line.Name, found) };
        }
        if (recipe.Hops.FirstOrDefault(h => Same(h.Name, name)) is { } hop)
        {
            var found = profiles.HopOnHand(other) ?? throw Unknown(other);
            return choices with { HopsOnHand = choices.HopsOnHand.SetItem(hop.Name, found) };
        }
        throw new UsageException($"--instead: the recipe has no '{name}'; name a malt or a hop of it");
    }

    private static UsageException Unknown(string name) =>
        new($"--instead: '{name}' is not in the catalogue; add it to your catalogue.toml or name one that is");

    private static (string Left, string Right) Split(string option, string given, string form)
    {
        var at = given.IndexOf('=', StringComparison.Ordinal);
        return at > 0 && at < given.Length - 1
            ? (given[..at].Trim(), given[(at + 1)..].Trim())
            : throw new UsageException($"{option}: '{given}' is not understood; write {form}");
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
