using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class ClockReaderTests
{
    private static readonly DateTimeOffset Eight = DateTimeOffset.FromUnixTimeMilliseconds(Quayside.StartMs);

    [Theory]
    [InlineData("14:30", "2026-01-01T14:30:00Z")]
    [InlineData("1430", "2026-01-01T14:30:00Z")]
    [InlineData("9", "2026-01-01T09:00:00Z")]
    [InlineData("930", "2026-01-01T09:30:00Z")]
    [InlineData("7:15", "2026-01-02T07:15:00Z")]
    [InlineData("8:00", "2026-01-02T08:00:00Z")]
    public void The_next_such_moment_is_meant(string text, string at) =>
        Assert.Equal(DateTimeOffset.Parse(at, System.Globalization.CultureInfo.InvariantCulture), ClockReader.Next(text, Eight, TimeZoneInfo.Utc));

    [Theory]
    [InlineData("")]
    [InlineData("25:00")]
    [InlineData("12:60")]
    [InlineData("noon")]
    [InlineData("-9")]
    [InlineData("123456")]
    public void What_is_no_time_of_day_is_not_taken(string text) => Assert.Null(ClockReader.Next(text, Eight, TimeZoneInfo.Utc));

    [Fact]
    public void Times_are_those_of_the_wall()
    {
        var east = TimeZoneInfo.CreateCustomTimeZone("east", TimeSpan.FromHours(2), "east", "east");

        Assert.Equal(Eight.AddHours(1), ClockReader.Next("11:00", Eight, east));
    }
}
