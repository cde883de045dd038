using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Ensemble;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running.Ensemble;

/// <summary>One person notices each end once, and the fall of the foam besides: it has a key of its own.</summary>
public class PaceTests
{
    private static readonly Plan Plan = Demo.Plan();
    private static readonly Pace Pace = new(Plan, PlantSetting.Of(Plan.Brewhouse, Plan.Choices));

    [Fact]
    public void The_first_hops_wait_for_somebody_to_see_that_the_foam_has_fallen()
    {
        var first = IndexOf(StepKind.HotBreak) + 1;

        Assert.Equal(StepKind.AddToBoil, Plan.Steps[first].Spec.Kind);
        Assert.Equal(UsualPace.MeanNoticeS, Pace.BeforeS(first));
    }

    [Fact]
    public void Hops_at_the_end_of_a_boil_are_what_its_end_is_seen_for()
    {
        var later = Enumerable.Range(IndexOf(StepKind.Boil), Plan.Steps.Length - IndexOf(StepKind.Boil)).Where(i => Plan.Steps[i].Spec.Kind == StepKind.AddToBoil).ToList();

        Assert.NotEmpty(later);
        Assert.All(later, i => Assert.Equal(0, Pace.BeforeS(i)));
    }

    [Fact]
    public void One_key_ends_the_whirlpool_and_adds_its_hops_and_another_ends_the_stand_and_casts_out()
    {
        Assert.Equal(0, Pace.AfterS(IndexOf(StepKind.Whirlpool)));
        Assert.Equal(0, Pace.BeforeS(IndexOf(StepKind.AddToWhirlpool)));
        Assert.Equal(0, Pace.BeforeS(IndexOf(StepKind.Stand)));
        Assert.Equal(0, Pace.AfterS(IndexOf(StepKind.Stand)));
        Assert.Equal(UsualPace.MeanNoticeS, Pace.BeforeS(IndexOf(StepKind.CastOut)));
    }

    private static int IndexOf(StepKind kind) => Plan.Steps.ToList().FindIndex(s => s.Spec.Kind == kind);
}
