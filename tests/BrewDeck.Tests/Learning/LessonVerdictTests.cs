using BrewDeck.Core.Learning;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Learning;

/// <summary>A lesson is a change only where the 80 % band does not hold the profile's number.</summary>
public sealed class LessonVerdictTests
{
    private static readonly LessonParameter Stages = LessonParameters.Find(Demo.House, LessonParameters.SpargeStages)!;
    private static readonly LessonParameter Net = LessonParameters.Find(Demo.House, "net:liquor")!;

    [Theory]
    [InlineData(1.0, "as it is")]
    [InlineData(1.27, "as it is")]
    [InlineData(-1.27, "as it is")]
    [InlineData(1.30, "change")]
    [InlineData(-1.30, "change")]
    public void The_band_decides(double sds, string verdict)
    {
        var (current, sd) = (Net.Get(Demo.House), 0.1 * Net.PriorSd);
        var lesson = new Lesson(Net, current, new Estimate(current + sds * sd, sd, 9), []);

        Assert.Equal(verdict, LessonWords.Verdict(lesson, Notation.Metric));
        Assert.Equal(verdict == "change", lesson.CanBeAccepted);
        Assert.Equal(verdict == "change", lesson.AppliedTo(Demo.House) != Demo.House);
        Assert.Equal(verdict != "change", Details(lesson).Contains("No reason to change: the band holds it.", StringComparison.Ordinal));
    }

    /// <summary>As a reader saw it: 2.50 in the profile, 2.73 believed, 2.24 to 3.21 the band.</summary>
    [Fact]
    public void A_number_inside_a_wide_band_stays_and_only_the_spread_may_be_accepted()
    {
        var current = Stages.Get(Demo.House);
        var lesson = new Lesson(Stages, current, new Estimate(current + 0.1, 0.15, 9), []);

        Assert.True(lesson.CanBeAccepted);
        Assert.Equal(current, lesson.Proposed);
        Assert.Equal("narrower", LessonWords.Verdict(lesson, Notation.Metric));
        Assert.Equal(Demo.House.Habits, lesson.AppliedTo(Demo.House).Habits);
        Assert.NotEqual(Demo.House.Spreads, lesson.AppliedTo(Demo.House).Spreads);
        Assert.Contains("No reason to change the number.", Details(lesson), StringComparison.Ordinal);
    }

    [Fact]
    public void Evidence_that_is_not_shown_is_counted_and_a_rate_is_named_once()
    {
        var said = Enumerable.Range(1, 9).Select(b => new Evidence(Net.Id, b, 0.9, 0.01, 0.01, [new DrivingReading("cast_out_l_per_min", 4.77)]));
        var details = Details(new Lesson(Net, 0.9, new Estimate(0.9, 0.1 * Net.PriorSd, 9), [.. said]));

        Assert.Contains("from cast out 4.77 L/min", details, StringComparison.Ordinal);
        Assert.Contains("\nand 1 older", details, StringComparison.Ordinal);
    }

    private static string Details(Lesson lesson) => string.Join("\n", LessonWords.Details(lesson, [], Notation.Metric).Select(l => l.ToString()));
}
