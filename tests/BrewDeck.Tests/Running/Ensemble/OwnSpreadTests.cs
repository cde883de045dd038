using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Ensemble;
using BrewDeck.Simulator.Truth;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running.Ensemble;

/// <summary>A brewhouse that has been learned of is less uncertain in the morning.</summary>
public class OwnSpreadTests
{
    private static readonly Brewhouse Known = Demo.House with
    {
        Spreads = new DaySpreads { ConversionYield = 0.005, Absorption = 0.02, SpargeStages = 0.05, Runoff = 0.03, Evaporation = 0.02, ChillerTransfer = 0.03 },
    };

    [Fact]
    public void What_a_profile_states_of_itself_narrows_the_bands()
    {
        Assert.True(Width(Known) < 0.7 * Width(Demo.House), $"{Width(Known):0.00000} of {Width(Demo.House):0.00000}");
    }

    /// <summary>The rehearsal draws its plant from the same stated spreads.</summary>
    [Fact]
    public void The_simulated_plant_lies_nearer_to_such_a_profile()
    {
        double Sd(Brewhouse house) => Math.Sqrt(Enumerable.Range(1, 400)
            .Average(seed => Math.Pow(HiddenTruth.Draw(house, new DayChoices(), seed).ConversionYield - house.Habits.ConversionYield, 2)));
        Assert.InRange(Sd(Known), 0.9 * 0.005, 1.1 * 0.005);
        Assert.InRange(Sd(Demo.House), 0.85 * UsualSpreads.ConversionYield.Sd, 1.1 * UsualSpreads.ConversionYield.Sd);
    }

    [Fact]
    public void An_accepted_lesson_says_how_far_a_day_will_be_off()
    {
        var parameter = LessonParameters.Find(Demo.House, LessonParameters.ConversionYield)!;
        var lesson = new Lesson(parameter, Demo.House.Habits.ConversionYield, new Estimate(Demo.House.Habits.ConversionYield, 0.003, 10), []);
        Assert.True(lesson.CanBeAccepted);
        Assert.Equal(Math.Sqrt(0.003 * 0.003 + parameter.DaySd * parameter.DaySd), lesson.AppliedTo(Demo.House).Spreads!.ConversionYield!.Value, 1e-9);
        Assert.False((lesson with { CurrentSpread = lesson.ProposedSpread }).CanBeAccepted);
    }

    private static double Width(Brewhouse house)
    {
        var plan = Demo.Plan(house: house);
        var state = RunFold.Of([new BatchOpened(0, plan, "", Rehearsed: true)]);
        var gravity = Forecasts.At(state, 0).Outlook.OriginalGravitySg;
        return gravity.P90!.Value - gravity.P10!.Value;
    }
}
