using BrewDeck.Core.Running.Ensemble;

namespace BrewDeck.Tests.Running.Ensemble;

public class MembersTests
{
    private const int Sources = 6;

    private const long Seed = 1;

    /// <summary>Reads the first source plus half of the second.</summary>
    private static readonly Quadratic _reading = new(0, [1, 0.5, 0, 0, 0, 0], new double[Sources], [.. Enumerable.Repeat(double.PositiveInfinity, Sources)]);

    [Fact]
    public void The_prior_is_centred_and_without_correlation()
    {
        var prior = Members.Prior(Sources, Seed);
        for (var j = 0; j < Sources; j++)
        {
            for (var k = 0; k <= j; k++)
                Assert.Equal(j == k ? 1 : 0, Covariance(prior, j, k), 4);
            Assert.Equal(0, prior.Mean[j], 6);
        }
    }

    [Fact]
    public void Each_batch_draws_its_own_members_and_draws_the_same_again()
    {
        var first = Draw.Whitened(Sources, Members.Count, 1);
        Assert.Equal(first[2], Draw.Whitened(Sources, Members.Count, 1)[2]);
        Assert.NotEqual(first[2], Draw.Whitened(Sources, Members.Count, 2)[2]);
    }

    /// <summary>The spreads are cut at three standard deviations, so the quantiles lie a little farther out than those of a whole normal.</summary>
    [Fact]
    public void Members_are_spread_as_the_cut_normal_that_is_stated()
    {
        var sorted = Members.Prior(Sources, Seed).Of(0).ToArray().Order().ToArray();
        Assert.Equal(-1.2784 / UsualSpreads.CutSd, sorted[Members.Count / 10], 0.005);
        Assert.Equal(1.2784 / UsualSpreads.CutSd, sorted[Members.Count * 9 / 10], 0.005);
        Assert.InRange(sorted[^1], 2.9, UsualSpreads.CutAt / UsualSpreads.CutSd + 0.05);
    }

    [Fact]
    public void A_source_goes_no_farther_than_its_most()
    {
        var given = new float[Members.Count];
        var prior = Members.Prior(Sources, Seed);
        prior.Give(new(0, [1, 0, 0, 0, 0, 0], [0.5, 0, 0, 0, 0, 0], [0.8, 9, 9, 9, 9, 9]), given);
        for (var i = 0; i < given.Length; i++)
        {
            var z = Math.Min(prior.Of(0)[i], 0.8);
            Assert.Equal(z + 0.5 * z * z, given[i], 1e-5);
        }
    }

    [Fact]
    public void A_reading_moves_mean_and_covariance_as_Kalman_does()
    {
        const double errorSd = 0.7, off = 1.3, variance = 1.25 + errorSd * errorSd;
        var after = After(Members.Prior(Sources, Seed), off, errorSd);
        Assert.Equal(off / variance, after.Mean[0], 4);
        Assert.Equal(0.5 * off / variance, after.Mean[1], 4);
        Assert.Equal(0, after.Mean[2], 4);
        Assert.Equal(1 - 1 / variance, Covariance(after, 0, 0), 3);
        Assert.Equal(-0.5 / variance, Covariance(after, 0, 1), 3);
        Assert.Equal(1, Covariance(after, 2, 2), 3);
    }

    [Fact]
    public void A_reading_as_expected_moves_no_mean_and_narrows()
    {
        var after = After(Members.Prior(Sources, Seed), 0, 0.5);
        Assert.All(after.Mean, m => Assert.Equal(0, m, 5));
        Assert.True(Covariance(after, 0, 0) < 0.4);
    }

    [Fact]
    public void The_order_of_two_readings_does_not_matter()
    {
        var one = After(After(Members.Prior(Sources, Seed), 1, 0.5), 0.2, 1);
        var other = After(After(Members.Prior(Sources, Seed), 0.2, 1), 1, 0.5);
        for (var j = 0; j < Sources; j++)
            Assert.Equal(one.Mean[j], other.Mean[j], 4);
    }

    [Fact]
    public void A_surprise_widens_the_sources_that_it_tells_of_and_no_other()
    {
        var shown = new float[Members.Count];
        var prior = Members.Prior(Sources, Seed);
        prior.Give(_reading, shown);
        var wide = prior.Widened(shown, 9, 0.5);
        var more = Math.Sqrt((81 - 0.25) / 1.25);
        Assert.Equal(more, Math.Sqrt(Covariance(wide, 0, 0)), 0.01);
        Assert.Equal(1 + 0.5 * (more - 1), Math.Sqrt(Covariance(wide, 1, 1)), 0.1);
        Assert.Equal(1, Covariance(wide, 3, 3), 0.05);
    }

    [Fact]
    public void What_was_foreseen_widens_nothing()
    {
        var shown = new float[Members.Count];
        var prior = Members.Prior(Sources, Seed);
        prior.Give(_reading, shown);
        Assert.Same(prior, prior.Widened(shown, 1, 0.5));
    }

    // the reading is given against the mean member, as the belief does
    private static Members After(Members members, double reading, double errorSd)
    {
        var shown = new float[Members.Count];
        members.Give(_reading with { AsStated = -_reading.At(members.Mean) }, shown);
        return members.After(shown, reading - _reading.At(members.Mean), errorSd);
    }

    private static double Covariance(Members of, int j, int k)
    {
        double sum = 0;
        for (var i = 0; i < Members.Count; i++)
            sum += (of.Of(j)[i] - of.Mean[j]) * (of.Of(k)[i] - of.Mean[k]);
        return sum / (Members.Count - 1);
    }
}
