using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>What the plan was held against.</summary>
public static class LimitWords
{
    public static string Name(Limit limit) => Names.Sentence(WaterWords.Limit(limit.Name) ?? Names.Plainly(limit.Name));

    /// <summary>"Mash tun volume 58.2 of at most 61.0 L, 2.8 L to spare".</summary>
    public static string Of(Limit limit, Notation notation)
    {
        var bound = $"{(limit.AtMost ? "at most" : "at least")} {notation.Value(limit.Bound, limit.Unit)}";
        var margin = Difference(Math.Abs(limit.Margin), limit.Unit, notation);
        return $"{Name(limit)} {notation.Value(limit.Value, limit.Unit)}, {bound}: {(limit.Ok ? margin + " to spare" : margin + " beyond")}";
    }

    private static string Difference(double value, string unit, Notation notation) =>
        unit is "°C" ? notation.Kelvin(value) : notation.Value(value, unit);
}
