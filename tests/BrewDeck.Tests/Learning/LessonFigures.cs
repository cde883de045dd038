using System.Globalization;
using BrewDeck.Core.Learning;

namespace BrewDeck.Tests.Learning;

/// <summary>The figures of the lessons over many simulated brewhouses: run on demand, they take minutes.</summary>
public sealed class LessonFigures
{
    private static readonly int[] Counts = [3, 10, 30];

    private static int Houses => int.TryParse(Environment.GetEnvironmentVariable("LESSON_HOUSES"), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 60;

    /// <summary>Instruments with the usual biases: a band must be wide enough for them.</summary>
    [Fact(Explicit = true)]
    public void Bands_hold_the_truth()
    {
        var found = Learned(calibrated: false);
        foreach (var count in Counts)
            Assert.InRange(found.Where(f => f.Count == count).Average(f => f.Held ? 1.0 : 0), 0.78, 0.82);
    }

    /// <summary>Instruments without bias, and the figure that no other unknown stands beside: only days and noise are left to average out.</summary>
    [Fact(Explicit = true)]
    public void Error_falls_with_the_square_root()
    {
        var runoff = Learned(calibrated: true).Where(f => f.Id == LessonParameters.Runoff).ToList();
        double Error(int count) => Math.Sqrt(runoff.Where(f => f.Count == count).Average(f => f.Error * f.Error));
        Assert.Equal(Math.Sqrt(10), Error(3) / Error(30), 0.8);
    }

    /// <summary>What the readings say of a brewhouse that is just as its profile: what remains is the difference of the two sets of equations.</summary>
    [Fact(Explicit = true)]
    public void A_brewhouse_like_its_profile()
    {
        foreach (var day in (int[])[1, 3])
        {
            foreach (var e in Lessons.EvidenceOf(SimulatedHouse.LikeProfile(day)))
            {
                var parameter = LessonParameters.Find(SimulatedHouse.Profile, e.Parameter)!;
                TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
                    $"{e.Parameter,-18} {(e.IsUpperLimit ? "<=" : "  ")} {e.Value:0.0000} profile {parameter.Get(SimulatedHouse.Profile):0.0000} off {(e.Value - parameter.Get(SimulatedHouse.Profile)) / parameter.PriorSd:0.00} prior sd, noise {e.Sd / parameter.PriorSd:0.00}, shared {e.SharedSd / parameter.PriorSd:0.00}"));
            }
        }
    }

    /// <summary>
    /// Each batch's evidence less the hidden number, in standard deviations of the prior: its mean over all brewhouses, how far the means of the
    /// brewhouses lie apart and how far the days of one, each beside what is stated. Shows where a band goes wrong.
    /// </summary>
    [Fact(Explicit = true)]
    public void Evidence_against_the_truth()
    {
        var off = Enumerable.Range(1, Houses).AsParallel().SelectMany(OffTruth).ToList();
        foreach (var parameter in off.GroupBy(o => o.Id).OrderBy(g => g.Key))
        {
            var houses = parameter.GroupBy(o => o.House).Where(g => g.Count() > 1).Select(g => (Mean: g.Average(o => o.Off), Var: Variance([.. g.Select(o => o.Off)]), g.Key)).ToList();
            var days = Math.Sqrt(houses.Average(h => h.Var));
            var apart = Math.Sqrt(Math.Max(0, Variance([.. houses.Select(h => h.Mean)]) - houses.Average(h => h.Var / parameter.Count(o => o.House == h.Key))));
            TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
                $"{parameter.Key,-18} n={parameter.Count()} mean {parameter.Average(o => o.Off):0.00}; between houses {apart:0.00}, stated {parameter.Average(o => o.Shared):0.00}; days {days:0.00}, stated {parameter.Average(o => o.Days):0.00}"));
        }
    }

    private static double Variance(double[] values) => values.Sum(v => InstrumentErrors.Squared(v - values.Average())) / (values.Length - 1);

    private static IEnumerable<(string Id, int House, double Off, double Shared, double Days)> OffTruth(int house)
    {
        const int Batches = 6;
        var simulated = new SimulatedHouse(house, calibrated: false);
        return Enumerable.Range(1, Batches).Select(simulated.Brew).SelectMany(Lessons.EvidenceOf)
            .Where(e => simulated.Of(e.Parameter) is not null && !e.IsUpperLimit)
            .Select(e => (e, Parameter: LessonParameters.Find(SimulatedHouse.Profile, e.Parameter)!))
            .Select(x => (x.e.Parameter, house, (x.e.Value - simulated.Of(x.e.Parameter)!.Value) / x.Parameter.PriorSd,
                x.e.SharedSd / x.Parameter.PriorSd, InstrumentErrors.Root(x.e.Sd, x.Parameter.DaySd) / x.Parameter.PriorSd));
    }

    [Fact(Explicit = true)]
    public void Planning_with_ten_batches_lessons()
    {
        var misses = Enumerable.Range(1, Houses).AsParallel().Select(h => LessonTests.Misses(h, batches: 10, days: 3)).ToList();
        double Median(Func<(double Before, double After)[], IEnumerable<double>> of) => Percentile([.. misses.SelectMany(of)], 0.5);
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
            $"{Houses} houses: median gravity error {Median(m => m.Select(x => x.Before)):0.00} points before, {Median(m => m.Select(x => x.After)):0.00} after"));
        Assert.True(Median(m => m.Select(x => x.After)) <= 0.5 * Median(m => m.Select(x => x.Before)));
    }

    private static List<(string Id, int Count, bool Held, double Error, double Bias)> Learned(bool calibrated)
    {
        var found = Enumerable.Range(1, Houses).AsParallel().SelectMany(h => One(h, calibrated)).ToList();
        foreach (var parameter in found.GroupBy(f => f.Id).OrderBy(g => g.Key))
            Say(parameter.Key, [.. parameter]);
        Say("all", found);
        return found;
    }

    internal static double Percentile(double[] values, double share)
    {
        Array.Sort(values);
        return values[(int)(share * (values.Length - 1))];
    }

    private static IEnumerable<(string Id, int Count, bool Held, double Error, double Bias)> One(int house, bool calibrated)
    {
        var simulated = new SimulatedHouse(house, calibrated);
        var batches = Enumerable.Range(1, Counts[^1]).Select(simulated.Brew).ToList();
        foreach (var count in Counts)
        {
            foreach (var lesson in Lessons.Of(SimulatedHouse.Profile, batches.Take(count)))
            {
                if (simulated.Of(lesson.Parameter.Id) is { } truth && lesson.Evidence.Length > 0)
                    yield return (lesson.Parameter.Id, count, truth >= lesson.Band.P10 && truth <= lesson.Band.P90, Math.Abs(truth - lesson.Band.Mean) / lesson.Parameter.PriorSd, (lesson.Band.Mean - truth) / lesson.Parameter.PriorSd);
            }
        }
    }

    private static void Say(string name, List<(string Id, int Count, bool Held, double Error, double Bias)> found)
    {
        var parts = Counts.Select(c => found.Where(f => f.Count == c).ToList()).Where(f => f.Count > 0).Select(f => FormattableString.Invariant(
            $"n={f[0].Count}: held {100 * f.Average(x => x.Held ? 1.0 : 0):0.0} %, rms error {Math.Sqrt(f.Average(x => x.Error * x.Error)):0.00}, bias {f.Average(x => x.Bias):0.00}"));
        TestContext.Current.TestOutputHelper?.WriteLine($"{name,-18} {string.Join("; ", parts)}");
    }
}
