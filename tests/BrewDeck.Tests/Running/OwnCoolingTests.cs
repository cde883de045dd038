using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>Tap water that is warmer than the yeast likes it, and a fermenter that stands in the cold.</summary>
public sealed class OwnCoolingTests
{
    private const double WarmSourceC = 18, CoolingW = 100;

    private static readonly Core.Brewhouses.Brewhouse _cooled = Demo.House with { Fermenter = Demo.House.Fermenter with { CoolingW = CoolingW } };

    private static readonly DayChoices _warm = new() { SourceWaterC = WarmSourceC };

    private static readonly Lazy<Plan> _plan = new(() => ((PlanResult.Drawn)Planner.Draw(_cooled, Demo.Amber, _warm)).Plan);

    private static double PitchC => Demo.Amber.Yeast.PitchC;

    private static PlanStep Step(string id) => _plan.Value.Steps.Single(s => s.Spec.Id == id);

    [Fact]
    public void What_the_water_leaves_warm_is_cooled_on_before_the_yeast()
    {
        Assert.True(Step("cool.cast-out").Spec.TargetC > PitchC);
        Assert.Equal(PitchC, Step("cool.fermenter").Spec.TargetC);
        Assert.Equal(PitchC, Step("pitch.pitch").After.Vessels[^1].TempC, 0.2);
        Assert.True(Step("pitch.aerate").StartS >= Step("cool.fermenter").EndS);
    }

    [Fact]
    public void The_hands_clean_while_it_cools()
    {
        Assert.True(Step("clean.down").EndS <= Step("cool.fermenter").EndS);
    }

    /// <summary>
    /// Heat is mass times specific heat times fall, less what the room gives: worked by hand with water's 4.18 kJ/(kg K) as an upper bound for a wort
    /// (the table of specific heats of sucrose solutions in the reference rows is lower), so the time lies under it and above nine tenths of it.
    /// </summary>
    [Fact]
    public void It_takes_as_long_as_its_heat_over_its_cooling()
    {
        var before = Step("cool.cast-out").After.Vessels[^1];
        var room = 3 * (_plan.Value.Choices.AmbientC - 0.5 * (before.TempC + PitchC));
        var byHand = (before.LiquidKg * 4180 + 2000) * (before.TempC - PitchC) / (CoolingW - room);
        Assert.InRange(Step("cool.fermenter").EndS - Step("cool.fermenter").StartS, 0.9 * byHand, byHand);
    }

    [Fact]
    public void Cold_water_needs_none_of_it()
    {
        var plan = ((PlanResult.Drawn)Planner.Draw(_cooled, Demo.Amber, new DayChoices { SourceWaterC = 8 })).Plan;
        Assert.DoesNotContain(plan.Steps, s => s.Spec.Kind == StepKind.CoolInFermenter);
        Assert.Equal(PitchC, plan.Steps.Single(s => s.Spec.Kind == StepKind.CastOut).Spec.TargetC);
    }

    [Fact]
    public void Without_it_the_day_is_refused_with_the_way_out()
    {
        var refused = Assert.IsType<PlanResult.Refused>(Planner.Draw(Demo.House, Demo.Amber, new DayChoices { SourceWaterC = 25 }));
        Assert.Contains(refused.Refusals.Single(r => r.Code == "pitch_temperature").Mends, m => m.Code == "cool_in_fermenter" && m.Value == PitchC);
    }

    [Fact]
    public void A_brewhouse_of_its_own_equations_pitches_such_a_day_near_its_temperature()
    {
        for (var seed = 1; seed <= 4; seed++)
        {
            var day = RehearsalRun.Of(_plan.Value, seed, PerfectDay.StartMs);
            Assert.Equal(RehearsalResult.Pitched, day.Ended);
            // a probe's bias of four standard deviations, and what the reader of the cabinet sees as there
            Assert.Equal(PitchC, day.Truth.PitchC, 1.5);
            Assert.True(day.Final.Steps.Single(s => s.Spec.Kind == StepKind.CoolInFermenter).Status == RunStatus.Complete);
        }
    }

    [Fact]
    public void Wort_that_came_too_warm_may_wait_for_it()
    {
        var day = new PerfectDay(((PlanResult.Drawn)Planner.Draw(_cooled, Demo.Amber, new DayChoices())).Plan);
        day.RunPast("cool.cast-out");
        day.Read(ReadingKind.Temperature, Places.Fermenter, PitchC + 5);
        var remedy = day.Offers.Single(r => r.Kind == RemedyKind.OwnCooling);
        day.Accepted(new RunCommand.Choose(remedy));
        day.RunPast("pitch.pitch");
        Assert.Equal(PitchC, day.Vessel(Places.Fermenter).TempC, 0.2);
    }
}
