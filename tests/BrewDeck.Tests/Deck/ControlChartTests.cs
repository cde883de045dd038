using BrewDeck.Deck.Trends;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public sealed class ControlChartTests
{
    /// <summary>By hand: mean 10.5, moving ranges 1, 2, 1, 2, 1, 2, 5, limits 10.5 -+ 3/1.128 * 2.</summary>
    [Fact]
    public void Centre_and_limits_are_those_of_a_chart_of_individuals()
    {
        var chart = Chart(10, 11, 9, 10, 12, 11, 13, 8)!;
        var ranges = new[] { 1, 2, 1, 2, 1, 2, 5 };
        Assert.Equal(10.5, chart.Centre, 9);
        Assert.Equal(10.5 + 3 / 1.128 * ranges.Average(), chart.Upper, 9);
        Assert.Equal(21, chart.Upper + chart.Lower, 9);
        Assert.Empty(chart.Outside);
    }

    [Fact]
    public void A_batch_beyond_a_limit_and_a_shift_stand_out()
    {
        Assert.Equal([15], Chart([10, 10.2, 9.9, 10.1, 10, 9.8, 10.2, 10, 10.1, 9.9, 10.1, 9.9, 10, 10.1, 17])!.Outside.Select(p => p.Batch));
        var shift = Chart([10, 10.2, 9.9, 10.1, 9.8, 10.2, 9.9, 10.1, 11, 11.1, 10.9, 11, 11.1, 10.9, 11, 11.1])!;
        Assert.Equal([8, 16], shift.Shifted.Select(p => p.Batch));
    }

    [Fact]
    public void Alternating_values_are_no_shift_and_few_values_have_no_chart()
    {
        Assert.Empty(Chart([.. Enumerable.Range(0, 30).Select(i => i % 2 == 0 ? 1.0 : 2.0)])!.Shifted);
        Assert.Null(Chart(1, 2, 3, 4, 5));
    }

    [Fact]
    public void A_plan_that_misses_the_same_way_each_time_is_told()
    {
        var gravity = BatchFigures.All.Single(f => f.Name == "gravity_off_points");
        double[] low = [1.2, 0.8, 1.1, 0.4, 1.6, 0.9, 1.0];
        Assert.Equal("on average 1.0 above the plan (see the lessons)", TrendWords.StandsOut(Chart(low)!, gravity, Notation.Metric));
        Assert.Empty(TrendWords.StandsOut(Chart(1.2, -0.8, 1.1, -0.4, -1.6, 0.9, -0.5)!, gravity, Notation.Metric));
        // an efficiency has no plan to be off
        Assert.Empty(TrendWords.StandsOut(Chart(low)!, BatchFigures.All.Single(f => f.Name == "efficiency_percent"), Notation.Metric));
    }

    [Fact]
    public void Lost_minutes_are_told_finely_enough_to_see_what_lies_outside() =>
        Assert.All(BatchFigures.All.Where(f => f.Name.EndsWith("_min", StringComparison.Ordinal) && f.Name != "runoff_l_per_min"), f => Assert.Equal("0.0", f.Format));

    private static ControlChart? Chart(params double[] values) => ControlChart.Of([.. values.Select((v, i) => new TrendPoint(i + 1, v))]);
}
