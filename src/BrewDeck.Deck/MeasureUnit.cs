namespace BrewDeck.Deck;

/// <summary>A unit as people write it, with the way to the canonical unit of its dimension.</summary>
/// <param name="Name">As shown.</param>
/// <param name="Spellings">As accepted, in <see cref="QuantityUnits.Folded"/> form.</param>
/// <param name="ToCanonical">Value in this unit to the canonical one.</param>
/// <param name="Factor">Canonical units in one of this; NaN where no plain factor does.</param>
public sealed record MeasureUnit(string Name, string[] Spellings, Func<double, double> ToCanonical, double Factor)
{
    internal static MeasureUnit Linear(string name, double factor, params string[] more) =>
        new(name, Spelled(name, more), v => v * factor, factor);

    internal static MeasureUnit Curved(string name, Func<double, double> toCanonical, params string[] more) =>
        new(name, Spelled(name, more), toCanonical, double.NaN);

    private static string[] Spelled(string name, string[] more) => [.. more.Prepend(name).Select(QuantityUnits.Folded)];
}
