using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class NotationTests
{
    private static readonly Notation Us = new(UnitSystem.Us, TimeZoneInfo.Utc);

    [Theory]
    [InlineData(65.84, "65.8 °C")]
    [InlineData(65.85, "65.9 °C")]
    [InlineData(-0.04, "0.0 °C")]
    [InlineData(double.NaN, "? °C")]
    public void Temperatures_round_to_a_tenth(double c, string text) => Assert.Equal(text, Notation.Metric.Temp(c));

    [Fact]
    public void Targets_carry_no_idle_zero()
    {
        Assert.Equal("66 °C", Notation.Metric.Target(66));
        Assert.Equal("72.4 °C", Notation.Metric.Target(72.4));
        Assert.Equal("151 °F", Us.Target((151 - 32) / 1.8));
    }

    [Theory]
    [InlineData(8.42, "8.420 kg")]
    [InlineData(0.8, "800 g")]
    [InlineData(0.9996, "1.000 kg")]
    public void Masses_round_to_a_gram(double kg, string text) => Assert.Equal(text, Notation.Metric.Mass(kg));

    [Theory]
    [InlineData(0.45359237, "1 lb 0 oz")]
    [InlineData(0.45355, "1 lb 0 oz")]
    [InlineData(0.2, "7.1 oz")]
    public void Pounds_never_show_sixteen_ounces(double kg, string text) => Assert.Equal(text, Us.Mass(kg));

    [Fact]
    public void Loads_show_no_ounces_and_rates_are_told_in_the_brewers_units()
    {
        // 0.45359237 kg a pound, 3.785411784 L a gallon, four quarts a gallon: NIST Handbook 44 (2024), appendix C
        Assert.Equal("877.4 lb", Us.Mass(398));
        Assert.Equal("10.6 lb/h", Us.Rate(4.8, "kg/h", "0.0"));
        Assert.Equal("1.20 qt/lb", Us.Rate(2.5, "L/kg", "0.00"));
        Assert.Equal("0.32 gal/min", Us.Rate(1.2, "L/min", "0.00"));
        Assert.Equal("4.8 kg/h", Notation.Metric.Rate(4.8, "kg/h", "0.0"));
        Assert.Equal("900 W/K", Us.Rate(900, "W/K", "0"));
    }

    [Fact]
    public void Volumes_and_gravities()
    {
        Assert.Equal("40.2 L", Notation.Metric.Volume(40.24));
        Assert.Equal("10.57 gal", Us.Volume(40));
        Assert.Equal("1.048", Notation.Metric.Gravity(1.0484));
    }

    [Fact]
    public void Clock_times_are_local()
    {
        var east = new Notation(UnitSystem.Metric, TimeZoneInfo.CreateCustomTimeZone("east", TimeSpan.FromHours(2), "east", "east"));

        Assert.Equal("10:00", east.Clock(Quayside.StartMs));
        Assert.Equal("2026-01-01 10:00", east.Date(Quayside.StartMs));
    }

    [Theory]
    [InlineData(45, "45 s", "45 seconds")]
    [InlineData(60, "1 min", "1 minute")]
    [InlineData(90, "2 min", "1 minute and 30 seconds")]
    [InlineData(1380, "23 min", "23 minutes")]
    [InlineData(5400, "1 h 30 min", "1 hour and 30 minutes")]
    [InlineData(7199, "2 h", "2 hours")]
    [InlineData(100_000, "27 h 47 min", "27 hours and 47 minutes")]
    [InlineData(0, "0 s", "a moment")]
    public void Durations_read_as_people_say_them(double seconds, string @short, string words)
    {
        Assert.Equal(@short, Durations.Short(seconds));
        Assert.Equal(words, Durations.Words(seconds, Notation.Metric));
    }

    [Theory]
    [InlineData(0, "0:00", false)]
    [InlineData(1421.9, "23:41", false)]
    [InlineData(5999, "99:59", false)]
    [InlineData(6000, "1:40", true)]
    [InlineData(7500, "2:05", true)]
    public void Big_digits_turn_to_hours_when_minutes_no_longer_fit(double seconds, string digits, bool hours)
    {
        Assert.Equal(digits, Durations.Digits(seconds));
        Assert.Equal(hours, Durations.DigitsAreHours(seconds));
    }
}
