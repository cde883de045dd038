using BrewDeck.Core.Learning;

namespace BrewDeck.Tests.Learning;

public sealed class LessonTests(LessonTests.Brewed brewed) : IClassFixture<LessonTests.Brewed>
{
    /// <summary>Five brewhouses, six batches each, brewed once for all tests.</summary>
    public sealed class Brewed
    {
        internal IReadOnlyList<(SimulatedHouse House, List<BatchTrace> Batches)> All { get; } = [.. Enumerable.Range(1, 5).AsParallel().AsOrdered().Select(h =>
        {
            var house = new SimulatedHouse(h, calibrated: false);
            return (house, Enumerable.Range(1, 6).Select(house.Brew).ToList());
        })];
    }

    [Fact]
    public void Each_parameter_that_readings_reach_is_measured()
    {
        var lessons = Lessons.Of(SimulatedHouse.Profile, brewed.All[0].Batches).ToDictionary(l => l.Parameter.Id);
        string[] reached =
        [
            LessonParameters.ConversionYield, LessonParameters.SpargeStages, LessonParameters.Absorption, LessonParameters.Evaporation,
            LessonParameters.Runoff, LessonParameters.PumpFlow, LessonParameters.CastOutLoss, LessonParameters.Chiller, "net:liquor", "net:tun",
        ];
        Assert.All(reached, id => Assert.True(lessons[id].Band.Batches >= 3, id));
        Assert.All(reached, id => Assert.All(lessons[id].Evidence, e => Assert.NotEmpty(e.Readings)));
    }

    [Fact]
    public void Too_few_data_say_so()
    {
        var (_, batches) = brewed.All[0];
        Assert.All(Lessons.Of(SimulatedHouse.Profile, batches.Take(2)), l => Assert.False(l.EnoughData));
        // the tun is held at temperature and nobody packaged anything
        Assert.All(Lessons.Of(SimulatedHouse.Profile, batches).Where(l => l.Parameter.Stem is "heat_loss" or "fermenter_loss"), l => Assert.False(l.EnoughData));
    }

    /// <summary>Nine figures of five brewhouses: three standard deviations of a share of 80 % of 45 are 18 %.</summary>
    [Fact]
    public void Bands_hold_the_hidden_truth_about_four_times_of_five()
    {
        var held = brewed.All.SelectMany(b => Lessons.Of(SimulatedHouse.Profile, b.Batches)
            .Where(l => b.House.Of(l.Parameter.Id) is not null && l.Evidence.Length > 0)
            .Select(l => b.House.Of(l.Parameter.Id) >= l.Band.P10 && b.House.Of(l.Parameter.Id) <= l.Band.P90)).ToList();
        Assert.True(held.Count >= 40);
        Assert.InRange(held.Average(h => h ? 1.0 : 0), 0.62, 0.98);
    }

    [Fact]
    public void A_batch_is_never_predicted_from_its_own_result()
    {
        var batches = brewed.All[0].Batches;
        var sixth = batches[5];
        var before = Lessons.Of(SimulatedHouse.Profile, batches, sixth.OpenedMs);
        var without = Lessons.Of(SimulatedHouse.Profile, batches.Take(5));

        Assert.Equal(without.Select(l => l.Band), before.Select(l => l.Band));
        Assert.All(before.SelectMany(l => l.Evidence), e => Assert.True(e.Batch < sixth.Number));
    }

    [Fact]
    public void Accepted_lessons_bring_the_plan_nearer_to_what_comes_out()
    {
        var misses = Enumerable.Range(0, 5).AsParallel().SelectMany(i => Misses(i + 1, brewed.All[i].Batches, days: 5)).ToList();
        var before = LessonFigures.Percentile([.. misses.Select(m => m.Before)], 0.5);
        var after = LessonFigures.Percentile([.. misses.Select(m => m.After)], 0.5);
        TestContext.Current.TestOutputHelper?.WriteLine($"median gravity error {before:0.00} points before, {after:0.00} after");
        Assert.True(after < before, $"{before:0.00} before, {after:0.00} after");
    }

    internal static (double Before, double After)[] Misses(int house, int batches, int days) =>
        Misses(house, [.. Enumerable.Range(1, batches).Select(new SimulatedHouse(house, calibrated: false).Brew)], days);

    private static (double Before, double After)[] Misses(int house, List<BatchTrace> batches, int days)
    {
        var simulated = new SimulatedHouse(house, calibrated: false);
        var better = Lessons.Of(SimulatedHouse.Profile, batches).Where(l => l.CanBeAccepted).Aggregate(SimulatedHouse.Profile, (p, l) => l.AppliedTo(p));
        return [.. Enumerable.Range(100, days).Select(d => (Math.Abs(simulated.MissOfPoints(SimulatedHouse.Profile, d)), Math.Abs(simulated.MissOfPoints(better, d))))];
    }
}
