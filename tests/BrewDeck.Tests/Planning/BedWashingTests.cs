using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Tests.Planning;

public class BedWashingTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(12)]
    public void Whole_stages_wash_as_mixed_tanks_in_a_row(int stages)
    {
        foreach (var washed in new[] { 0.05, 0.4, 1.0, 1.3, 2.5 })
        {
            var (left, strength) = Tanks(stages, washed);
            Assert.Equal(left, BedWashing.Left(stages, washed), 6);
            Assert.Equal(strength, BedWashing.Strength(stages, washed), 6);
        }
    }

    [Theory]
    [InlineData(1.3)]
    [InlineData(2.5)]
    [InlineData(4.8)]
    public void What_is_gone_between_whole_stages_is_what_ran_off(double stages)
    {
        const int Steps = 1200;
        var gone = Enumerable.Range(0, Steps).Average(i => 1.2 * BedWashing.Strength(stages, 1.2 * (i + 0.5) / Steps));
        Assert.Equal(1 - gone, BedWashing.Left(stages, 1.2), 6);
    }

    [Fact]
    public void More_stages_leave_less()
    {
        var left = Enumerable.Range(0, 90).Select(i => BedWashing.Left(1 + 0.1 * i, 0.9)).ToList();
        Assert.All(left.Zip(left.Skip(1)), pair => Assert.True(pair.Second < pair.First));
    }

    /// <summary>Tanks in a row by small steps, Runge and Kutta.</summary>
    private static (double Left, double Strength) Tanks(int stages, double washed)
    {
        const int Steps = 400;
        var (strength, share) = (Enumerable.Repeat(1.0, stages).ToArray(), washed * stages / Steps);
        for (var k = 0; k < Steps; k++)
        {
            var a = Slope(strength);
            var b = Slope(Moved(strength, a, share / 2));
            var c = Slope(Moved(strength, b, share / 2));
            var d = Slope(Moved(strength, c, share));
            for (var i = 0; i < stages; i++)
                strength[i] += share / 6 * (a[i] + 2 * b[i] + 2 * c[i] + d[i]);
        }
        return (strength.Average(), strength[^1]);
    }

    private static double[] Slope(double[] of) => [.. of.Select((s, i) => (i > 0 ? of[i - 1] : 0) - s)];

    private static double[] Moved(double[] from, double[] by, double share) => [.. from.Zip(by, (f, b) => f + share * b)];
}
