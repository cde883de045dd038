using BrewDeck.Core.Learning;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Tests.Learning;

public sealed class EstimatorTests
{
    private const double Prior = 5, PriorSd = 0.3;

    public static TheoryData<int, double, double> Cases => new()
    {
        { 3, 0.2, 0 }, { 10, 0.2, 0 }, { 30, 0.2, 0 },
        { 3, 0.05, 0.1 }, { 10, 0.05, 0.1 }, { 30, 0.05, 0.1 },
    };

    /// <summary>2,500 brewhouses drawn as the priors say: two standard deviations of the share are 1.6 %.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void The_band_holds_the_truth_four_times_of_five(int batches, double noiseSd, double sharedSd) =>
        Assert.InRange(Held(batches, c => 0.1 * Math.Exp(0.5 * c.Normal()), noiseSd, sharedSd), 0.78, 0.82);

    /// <summary>Days that really differ twice as much or half as much as the table says.</summary>
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.05)]
    public void A_wrongly_stated_spread_of_days_does_little_harm(double daySd) => Assert.InRange(Held(30, _ => daySd, 0.1, 0), 0.75, 0.88);

    private static double Held(int batches, Func<Chance, double> daySd, double noiseSd, double sharedSd)
    {
        var held = Enumerable.Range(0, 2500).AsParallel().Count(i =>
        {
            var (truth, estimate) = Drawn(i, batches, daySd, noiseSd, sharedSd);
            return truth >= estimate.P10 && truth <= estimate.P90;
        }) / 2500.0;
        TestContext.Current.TestOutputHelper?.WriteLine($"{batches} batches, noise {noiseSd}, shared {sharedSd}: {held:P1}");
        return held;
    }

    [Fact]
    public void The_error_falls_with_the_square_root_of_the_number()
    {
        double Error(int batches) => Math.Sqrt(Enumerable.Range(0, 2000).Average(i =>
        {
            var (truth, estimate) = Drawn(i, batches, _ => 0.1, 0.2, 0);
            return (truth - estimate.Mean) * (truth - estimate.Mean);
        }));

        Assert.Equal(Math.Sqrt(10 / 3.0), Error(10) / Error(33), 0.15);
    }

    [Fact]
    public void What_all_batches_share_does_not_average_out()
    {
        var (_, few) = Drawn(1, 10, _ => 0.1, 0.1, 0.2);
        var (_, many) = Drawn(1, 1000, _ => 0.1, 0.1, 0.2);

        Assert.True(many.Sd > 0.8 * few.Sd);
        Assert.Equal(PriorSd * 0.2 / Math.Sqrt(PriorSd * PriorSd + 0.04), many.Sd, 0.005);
    }

    [Fact]
    public void One_wild_reading_hardly_moves_it()
    {
        List<Evidence> calm = [.. Enumerable.Range(0, 9).Select(i => Says(5.2 + 0.02 * (i - 4), 0.1, 0))];
        var without = Estimator.Of(Prior, PriorSd, 0.05, calm);
        var with = Estimator.Of(Prior, PriorSd, 0.05, [.. calm, Says(9, 0.1, 0)]);

        Assert.InRange(with.Mean - without.Mean, 0, 0.06);
    }

    [Fact]
    public void A_bound_pulls_below_itself_and_counts_as_no_measurement()
    {
        var bounded = Estimator.Of(Prior, PriorSd, 0.05, [.. Enumerable.Range(0, 5).Select(_ => Says(4.9, 0.1, 0) with { IsUpperLimit = true })]);

        Assert.InRange(bounded.Mean, 4.3, 4.9);
        Assert.Equal(0, bounded.Batches);
        Assert.True(bounded.Sd < PriorSd);
    }

    [Fact]
    public void Nothing_seen_leaves_the_prior()
    {
        var nothing = Estimator.Of(Prior, PriorSd, 0.05, []);
        Assert.Equal(Prior, nothing.Mean, 1e-9);
        Assert.Equal(PriorSd, nothing.Sd, 1e-3);
    }

    private static (double Truth, Estimate Estimate) Drawn(int seed, int batches, Func<Chance, double> days, double noiseSd, double sharedSd)
    {
        var chance = new Chance(seed, "estimator");
        var daySd = days(chance);
        double truth = Prior + PriorSd * chance.Normal(), shared = sharedSd * chance.Normal();
        List<Evidence> seen = [.. Enumerable.Range(0, batches).Select(_ => Says(truth + shared + daySd * chance.Normal() + noiseSd * chance.Normal(), noiseSd, sharedSd))];
        return (truth, Estimator.Of(Prior, PriorSd, 0.1, seen));
    }

    private static Evidence Says(double value, double sd, double shared) => new("any", 1, value, sd, shared, []);
}
