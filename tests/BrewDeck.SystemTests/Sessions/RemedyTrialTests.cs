using BrewDeck.Core.Planning;
using BrewDeck.Profiles;
using BrewDeck.Rehearsals;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>
/// On days that are off the plan, each rehearsed with the best remedy and without, on a plant with equations of its own.
/// The long run is <c>brewdeck calibrate --remedies</c>.
/// </summary>
public class RemedyTrialTests
{
    private const long StartMs = 1_780_000_000_000;

    [Fact]
    public void The_best_remedy_ends_nearer_to_the_plan_than_leaving_it() => Hold(days: 2, leastNearer: 1);

    [Fact(Explicit = true)]
    public void Of_many_days_it_does_so_in_nineteen_of_twenty() => Hold(days: 400, leastNearer: 0.95);

    private static void Hold(int days, double leastNearer)
    {
        var profiles = ProfileFolder.BesideProgram("");
        var drawn = Planner.Draw(
            profiles.Brewhouse(profiles.FindBrewhouse("quayside-65")), profiles.Recipe(profiles.FindRecipe("quayside-amber")), new DayChoices());
        var plan = Assert.IsType<PlanResult.Drawn>(drawn).Plan;
        var trial = new RemedyTrial(plan, StartMs);
        for (var i = 0; i < days; i++)
            trial.Add(trial.Play(HiddenTruth.Draw(plan.Brewhouse, plan.Choices, 100 + i), i));
        var (counted, nearer) = (trial.Kinds.Sum(k => k.Counted), trial.Kinds.Sum(k => k.Nearer));
        Assert.Equal((0, 0), (trial.Aborted, trial.BrokeLimits));
        Assert.True(counted >= days / 4, $"{counted} of {days} days were off");
        Assert.True(nearer >= leastNearer * counted, $"{nearer} of {counted} ended nearer");
    }
}
