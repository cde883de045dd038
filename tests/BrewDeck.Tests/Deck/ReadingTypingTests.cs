using BrewDeck.Core.Physics;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class ReadingTypingTests
{
    private readonly ReadingTyping _typing = new(new Typed(Notation.Metric), Quayside.Brewhouse, Notation.Metric);

    [Fact]
    public void A_plain_value_goes_to_the_reader()
    {
        var reading = Read(ReadingKind.Temperature, "tun", " 65.4 ");

        Assert.Equal(new Reading(ReadingKind.Temperature, "tun", 65.4, "65.4"), reading);
    }

    [Fact]
    public void A_hydrometer_is_corrected_to_its_sample()
    {
        // usual tables add 0.006 to 0.007 at 40 °C for an instrument made for 20 °C
        Assert.InRange(Read(ReadingKind.Gravity, "kettle", "1.046@40")!.Value, 1.0515, 1.0535);
        Assert.Equal(1.046, Read(ReadingKind.Gravity, "kettle", "1.046@20")!.Value, 4);
    }

    [Theory]
    [InlineData("11.8bx")]
    [InlineData("11.8 Bx")]
    [InlineData("11,8brix")]
    public void A_refractometer_is_corrected(string text) =>
        Assert.Equal(SugarSolution.SgFromPlato(Refractometer.WortPlato(11.8)), Read(ReadingKind.Gravity, "kettle", text)!.Value, 9);

    [Fact]
    public void Hot_litres_keep_their_temperature()
    {
        var reading = Read(ReadingKind.Volume, "kettle", "47.1@77");

        Assert.Equal((47.1, 77.0), (reading!.Value, reading.AtC));
    }

    [Theory]
    [InlineData("32cm", 40.212)]
    [InlineData("12in", 38.302)]
    public void A_depth_becomes_litres_in_a_vessel_of_known_diameter(string text, double litres) =>
        Assert.Equal(litres, Read(ReadingKind.Volume, "kettle", text)!.Value, 3);

    [Theory]
    [InlineData(ReadingKind.Volume, "fermenter", "32cm", "diameter")]
    [InlineData(ReadingKind.Temperature, "tun", "65@40", "Only a gravity or a volume")]
    [InlineData(ReadingKind.Gravity, "kettle", "60bx", "0 to 40")]
    [InlineData(ReadingKind.Volume, "kettle", "-3cm", "0 or more")]
    [InlineData(ReadingKind.Temperature, "tun", "  ", "Type a value")]
    [InlineData(ReadingKind.Temperature, "tun", "warm", "warm")]
    [InlineData(ReadingKind.Gravity, "kettle", "1.046@", "temperature")]
    public void What_cannot_be_taken_says_why(ReadingKind kind, string vessel, string text, string why)
    {
        Assert.Null(_typing.Read(new ReadingPlace(kind, vessel), text, out var reason));
        Assert.Contains(why, reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Bare_numbers_are_in_the_units_of_the_screen()
    {
        var us = new ReadingTyping(new Typed(Notation.Metric with { Units = UnitSystem.Us }), Quayside.Brewhouse, Notation.Metric);

        Assert.Equal(66.667, us.Read(new ReadingPlace(ReadingKind.Temperature, "tun"), "152", out _)!.Value, 3);
        Assert.Equal(66.5, us.Read(new ReadingPlace(ReadingKind.Temperature, "tun"), "66.5c", out _)!.Value, 3);
        Assert.Equal(24.605, us.Read(new ReadingPlace(ReadingKind.Volume, "tun"), "6.5", out _)!.Value, 3);
    }

    [Theory]
    [InlineData("1.040@60", true)]
    [InlineData("1.040@38", false)]
    [InlineData("1.040", false)]
    public void A_sample_hotter_than_a_hydrometer_can_bear_is_known(string text, bool hot) =>
        Assert.Equal(hot, _typing.IsOfHotSample(Read(ReadingKind.Gravity, "kettle", text)!));

    private Reading? Read(ReadingKind kind, string vessel, string text) => _typing.Read(new ReadingPlace(kind, vessel), text, out _);
}
