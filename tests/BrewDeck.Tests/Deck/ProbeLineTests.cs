using System.Text;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Probes;

namespace BrewDeck.Tests.Deck;

public class ProbeLineTests
{
    private static readonly DateTimeOffset Now = new(2026, 5, 30, 8, 0, 0, TimeSpan.Zero);

    [Fact]
    public void One_line_may_hold_one_value_of_each_kind()
    {
        var values = Read("""{"vessel":"tun","temperature_c":66.4,"volume_l":41,"ph":5.35,"gravity_sg":1.048,"at":"2026-05-30T07:59:50Z","rssi":-60}""", out var why);

        var age = TimeSpan.FromSeconds(10);
        Assert.Equal("", why);
        Assert.Equal(
            [
                new(ReadingKind.Temperature, "tun", 66.4, age), new(ReadingKind.Volume, "tun", 41, age),
                new(ReadingKind.Ph, "tun", 5.35, age), new(ReadingKind.Gravity, "tun", 1.048, age),
            ],
            values);
    }

    [Theory]
    [InlineData("2026-05-30T09:59:30+02:00", 30)]
    [InlineData("2026-05-30T07:59:30", 30)] // UTC unless it says otherwise
    [InlineData("2026-05-30T08:00:30Z", 0)] // a clock that is a little ahead
    public void A_time_makes_an_age(string at, double ageS) =>
        Assert.Equal(TimeSpan.FromSeconds(ageS), Assert.Single(Read($$"""{"vessel":"tun","ph":5.4,"at":"{{at}}"}""", out _)).Age);

    [Theory]
    [InlineData("", "it is no JSON")]
    [InlineData("66.4", "it is no JSON object")]
    [InlineData("[]", "it is no JSON object")]
    [InlineData("{\"vessel\":\"tun\",\"temperature_c\":66.4", "it is no JSON")]
    [InlineData("{\"vessel\":\"tun\",\"temperature_c\":66.4}{}", "it is no JSON")]
    [InlineData("[[[[[[[[[[[[[[[[[[", "it is no JSON")]
    [InlineData("{\"temperature_c\":66.4}", "vessel is no id of a vessel")]
    [InlineData("{\"vessel\":7,\"temperature_c\":66.4}", "vessel is no id of a vessel")]
    [InlineData("{\"vessel\":\"\\u001b[2J\",\"temperature_c\":66.4}", "vessel is no id of a vessel")]
    [InlineData("{\"vessel\":\"\\ud800\",\"temperature_c\":66.4}", "it is no JSON")]
    [InlineData("{\"vessel\":\"12345678901234567890123456789012345678901\",\"ph\":5}", "vessel is no id of a vessel")]
    [InlineData("{\"vessel\":\"tun\"}", "it has none of temperature_c, volume_l, ph, gravity_sg")]
    [InlineData("{\"vessel\":\"tun\",\"temperature_c\":\"66.4\"}", "temperature_c is no number of a size that is measured")]
    [InlineData("{\"vessel\":\"tun\",\"temperature_c\":1e999}", "temperature_c is no number of a size that is measured")]
    [InlineData("{\"vessel\":\"tun\",\"temperature_c\":NaN}", "it is no JSON")]
    [InlineData("{\"vessel\":\"tun\",\"ph\":5.4,\"at\":\"soon\"}", "at is no ISO 8601 time")]
    [InlineData("{\"vessel\":\"tun\",\"ph\":5.4,\"at\":1}", "at is no ISO 8601 time")]
    [InlineData("{\"vessel\":\"tun\",\"ph\":5.4,\"at\":\"\\udc00\"}", "it is no JSON")]
    [InlineData("{\"vessel\":\"tun\",\"ph\":5.4,\"at\":\"2026-05-30T08:02:00Z\"}", "at is ahead of this clock")]
    public void A_hostile_line_gives_nothing_and_says_why(string line, string expected)
    {
        Assert.Empty(Read(line, out var why));
        Assert.Equal(expected, why);
    }

    private static System.Collections.Immutable.ImmutableArray<ProbeValue> Read(string line, out string why) =>
        ProbeLine.Read(Encoding.UTF8.GetBytes(line), Now, out why);
}
