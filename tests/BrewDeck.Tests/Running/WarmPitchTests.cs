using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>Wort that has come into the fermenter too warm or too cold for the yeast.</summary>
public class WarmPitchTests
{
    private const double WarmC = 24;

    private static readonly Lazy<PerfectDay> _castOut = new(() => Past(Demo.Plan()));

    private static double WantedC(PerfectDay day) => day.State.Plan!.Recipe.Yeast.PitchC;

    private static PerfectDay Past(Plan plan)
    {
        var day = new PerfectDay(plan);
        day.RunPast("cool.cast-out");
        return day;
    }

    private static PerfectDay Warm() => Read(_castOut.Value.Copy(), WarmC);

    private static PerfectDay Read(PerfectDay day, double celsius)
    {
        day.Read(ReadingKind.Temperature, "fermenter", celsius);
        return day;
    }

    private static bool Rings(PerfectDay day) => AlarmRules.At(day.State, day.Forecast, day.Focus, day.NowMs)
        .Any(a => a is { Kind: AlarmKind.LimitAhead, About: LimitName.PitchInFermenter });

    private static Remedy Offered(PerfectDay day, RemedyKind kind) => day.Offers.Single(r => r.Kind == kind);

    [Fact]
    public void Wort_at_its_temperature_calls_for_nothing() => Assert.Empty(Read(_castOut.Value.Copy(), WantedC(_castOut.Value) + 0.3).Offers);

    [Fact]
    public void The_chiller_brings_it_down_before_the_yeast_goes_in()
    {
        var day = Warm();
        var remedy = Offered(day, RemedyKind.ChillFermenter);
        Assert.InRange(remedy.Minutes, 1, 60);
        Assert.Equal(WantedC(day), remedy.Gives.Single(s => s.Figure == "pitch_c").After, 0.2);
        day.Accepted(new RunCommand.Choose(remedy));
        Assert.Empty(day.Offers);
        day.RunPast("pitch.pitch");
        Assert.Equal(RunStatus.Complete, day.State.Step("remedy.cool-1")!.Status);
        Assert.Equal(WantedC(day), day.Vessel("fermenter").TempC, 0.2);
    }

    /// <summary>Warm wort takes up little oxygen and is harmed by it (common practice, no source).</summary>
    [Fact]
    public void Warm_wort_is_chilled_before_it_is_aerated_on()
    {
        var day = _castOut.Value.Copy();
        day.RunUntil("pitch.aerate");
        Read(day, WarmC);
        Assert.Equal("pitch_c", Remedies.OffPlan(day.Offers).First().Figure);
        day.Accepted(new RunCommand.Choose(Offered(day, RemedyKind.ChillFermenter)));
        Assert.Equal((FocusAct.Start, "remedy.cool-1"), (day.Focus.Act, day.Focus.StepId));
        day.GoOn();
        Assert.Equal(RunStatus.Held, day.State.Step("pitch.aerate")!.Status);
        day.RunPast("remedy.cool-1");
        Assert.Equal(WantedC(day), day.Vessel("fermenter").TempC, 0.2);
        Assert.Equal(RunStatus.Running, day.State.Step("pitch.aerate")!.Status);
        day.RunPast("pitch.pitch");
        Assert.Equal(RunStatus.Complete, day.State.Step("pitch.aerate")!.Status);
    }

    [Fact]
    public void A_chiller_in_use_is_cleaned_after_it()
    {
        var day = Warm();
        day.Accepted(new RunCommand.Choose(Offered(day, RemedyKind.ChillFermenter)));
        Assert.False(StepOrder.CanStart(day.State, day.State.Step("clean.chiller")!));
        day.Accepted(new RunCommand.Undo());
        Assert.Null(day.State.Step("remedy.cool-1"));
        Assert.Empty(day.State.Step("clean.chiller")!.Spec.AfterStepId);
    }

    [Fact]
    public void A_chiller_that_is_clean_takes_no_wort()
    {
        var day = Warm();
        day.Accepted(new RunCommand.Skip("clean.chiller", "done already"));
        Assert.DoesNotContain(day.Offers, r => r.Kind == RemedyKind.ChillFermenter);
    }

    [Fact]
    public void Water_that_is_too_warm_cools_nothing_and_a_cold_room_does()
    {
        var day = Past(Demo.Plan(choices: new DayChoices { AmbientC = 10 }));
        day.Read(ReadingKind.Temperature, "source", 22);
        Read(day, WarmC);
        Assert.Equal([RemedyKind.WaitForRoom, RemedyKind.LeaveIt], day.Offers.Select(r => r.Kind));
        var hours = Offered(day, RemedyKind.WaitForRoom).Minutes / 60;
        // 40 L lose 3 W for each K: half of what is above the room goes in ten hours
        Assert.InRange(hours, 1, 16);
        day.Accepted(new RunCommand.Choose(day.Offers[0]));
        day.RunPast("pitch.pitch");
        Assert.Equal(WantedC(day), day.Vessel("fermenter").TempC, 0.2);
    }

    [Fact]
    public void A_warm_room_brings_up_what_came_too_cold()
    {
        var day = Read(Past(Demo.Plan(choices: new DayChoices { AmbientC = 28 })), WantedC(_castOut.Value) - 4);
        Assert.Equal([RemedyKind.WaitForRoom, RemedyKind.LeaveIt], day.Offers.Select(r => r.Kind));
    }

    [Fact]
    public void The_alarm_lives_until_it_is_fit_for_the_yeast()
    {
        var day = Warm();
        Assert.True(Rings(day));
        day.Wait(5);
        Assert.True(Rings(day));
        Read(day, WantedC(day));
        Assert.False(Rings(day));
    }

    [Fact]
    public void The_alarm_is_over_when_the_brewer_has_decided()
    {
        var left = Warm();
        left.Accepted(new RunCommand.Choose(Offered(left, RemedyKind.LeaveIt)));
        Assert.False(Rings(left));
        Read(left, WarmC);
        Assert.True(Rings(left));

        var chilled = Warm();
        chilled.Accepted(new RunCommand.Choose(Offered(chilled, RemedyKind.ChillFermenter)));
        Assert.False(Rings(chilled));

        var pitched = Warm();
        pitched.RunUntil("pitch.pitch");
        Assert.False(Rings(pitched));
    }

    [Fact]
    public void Leaving_it_says_how_warm_the_yeast_will_have_it()
    {
        var day = Warm();
        var pitch = Offered(day, RemedyKind.LeaveIt).Gives.Single(s => s.Figure == "pitch_c");
        Assert.Equal((WantedC(day), WarmC), (pitch.Before, Math.Round(pitch.After, 1)));
    }

    [Fact]
    public void A_chiller_that_was_set_colder_for_the_rest_is_held_against_the_plan()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("cool.cast-out");
        day.Wait(5);
        Read(day, WantedC(day) + 2.5);
        day.Accepted(new RunCommand.Choose(Offered(day, RemedyKind.SetChiller)));
        Assert.False(Rings(day));
        day.RunPast("cool.cast-out");
        Read(day, WantedC(day));
        Assert.Empty(day.Offers);
    }

    [Fact]
    public void A_coil_is_hung_into_the_fermenter()
    {
        var house = Demo.House with { Chiller = Demo.House.Chiller with { Kind = ChillerKind.Immersion }, Pumps = [] };
        var day = Read(Past(Demo.Plan(house: house)), WarmC);
        Assert.InRange(Offered(day, RemedyKind.ChillFermenter).Minutes, 1, 60);
    }
}
