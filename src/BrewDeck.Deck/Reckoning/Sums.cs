using System.Collections.Immutable;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Reckoning;

/// <summary>The one table of sums: the command line, the reckoner's page and the help all come from it.</summary>
public static class Sums
{
    public static ImmutableArray<Sum> All { get; } =
        [.. GravitySums.All, .. MashSums.All, .. YieldSums.All, .. KettleSums.All, .. HopSums.All, .. BeerSums.All, .. WaterSums.All, .. PlantSums.All, .. LiquorSums.All, .. ElementSums.All];

    public static Sum? Find(string name) => All.FirstOrDefault(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Two inputs by their names, of which the first cannot be more than the second.</summary>
    internal static (string Lower, string Upper) NotAbove(string id, string key) => (id, key);

    internal static SumInput.Quantity Gravity(string name, Phrase label, string example, string? preset = null) =>
        new(name, label, Dimension.Gravity, "SG", 0.98, 1.2, example, preset);

    internal static SumInput.Quantity Temp(string name, Phrase label, double least, double most, string example, string? preset = null) =>
        new(name, label, Dimension.Temperature, "°C", least, most, example, preset);

    internal static SumInput.Quantity Volume(string name, Phrase label, string example) =>
        new(name, label, Dimension.Volume, "L", 0.01, 20_000, example);

    internal static SumInput.Quantity Share(string name, Phrase label, double least, double most, string example, string? preset = null) =>
        new(name, label, Dimension.Fraction, "%", least, most, example, preset);

    internal static SumInput.Quantity Grist() => new("grain", "grist", Dimension.Mass, "kg", 0.05, 5000, "9 kg");

    internal static SumInput.Quantity Number(string name, Phrase label, string unit, double least, double most, string example, string? preset = null) =>
        new(name, label, Dimension.Number, unit, least, most, example, preset);
}
