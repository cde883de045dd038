using BrewDeck.Deck;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck.Tongues;

/// <summary>A German brewer's numbers: what a screen shows is read back as it is meant, and nothing is taken for thousands.</summary>
public sealed class DecimalCommaTests
{
    private static readonly Notation German = Notation.Metric with { Tongue = Tongue.Of("de")! };

    [Theory]
    [InlineData("1,041", Dimension.Gravity, 1.041)]
    [InlineData("1.041", Dimension.Gravity, 1.041)]
    [InlineData("66,5", Dimension.Temperature, 66.5)]
    [InlineData("66.5", Dimension.Temperature, 66.5)]
    [InlineData("5,000 kg", Dimension.Mass, 5)]
    [InlineData("12,125", Dimension.Volume, 12.125)]
    [InlineData("6,5gal", Dimension.Volume, 24.605)]
    [InlineData("12,1p", Dimension.Gravity, 1.0488)]
    public void Comma_and_point_mark_decimals(string typed, Dimension dimension, double value) =>
        Assert.Equal(value, QuantityReader.Read(typed, dimension, null, German).Value, 3);

    [Theory]
    [InlineData("1.500", Dimension.Volume)]
    [InlineData("1.500,5", Dimension.Volume)]
    [InlineData("12.125 kg", Dimension.Mass)]
    public void What_may_be_thousands_is_refused_in_German(string typed, Dimension dimension) =>
        Assert.Contains("zweifach", QuantityReader.Read(typed, dimension, null, German).Why, StringComparison.Ordinal);

    [Fact]
    public void English_reads_as_before()
    {
        Assert.Equal(1.5, QuantityReader.Read("1.500", Dimension.Volume).Value);
        Assert.Contains("two ways", QuantityReader.Read("1,500", Dimension.Volume).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_are_shown_with_a_comma()
    {
        Assert.Equal("66,5 °C", German.Temp(66.5));
        Assert.Equal("1,048", German.Gravity(1.048));
        Assert.Equal("8,153 kg", German.Mass(8.153));
        Assert.Equal("-0,5", German.Number(-0.5, "0.0"));
        Assert.Equal("1 Stunde und 30 Minuten", Durations.Words(5400, German));
    }
}
