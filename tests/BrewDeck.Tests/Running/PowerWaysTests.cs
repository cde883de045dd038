using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>Heat that is missing: an element that has failed, or a heat-up that lags.</summary>
public class PowerWaysTests
{
    private const double PointSg = 0.0015;

    private static PerfectDay Failed(string step, double minutes, string vessel = "liquor")
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(step);
        day.Wait(minutes);
        day.Accepted(new RunCommand.Report(new(TroubleKind.ElementFailed, Trouble.Element(vessel, 1))));
        return day;
    }

    [Theory]
    [InlineData("liquor.heat-strike")]
    [InlineData("liquor.heat-sparge")]
    public void Liquor_whose_tank_is_dead_is_heated_in_the_kettle(string step)
    {
        var day = Failed(step, 5);
        var remedy = day.Offers.Single(r => r.Kind == RemedyKind.HeatElsewhere);
        Assert.Equal(RemedyKind.HeatElsewhere, day.Offers[0].Kind);
        Assert.Equal(5500, remedy.PowerW!.Value, 1.0);
        day.Accepted(new RunCommand.Choose(remedy));
        Assert.Equal(RunStatus.Skipped, day.State.Step(step)!.Status);
        if (step == "liquor.heat-strike")
        {
            day.RunPast("mash.dough-in");
            Assert.Equal(66, day.Vessel("tun").TempC, 0.5);
            // the tank is as dead for the sparge liquor as it was for the strike
            day.RunUntil("liquor.heat-sparge");
            day.Accepted(new RunCommand.Choose(day.Offers.First(r => r.Kind == RemedyKind.HeatElsewhere)));
        }
        day.RunToEnd();
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, day.Forecast.Outlook.OriginalGravitySg.P50, PointSg);
        Assert.Equal(day.State.Plan.Totals.FermenterL, day.Forecast.Outlook.FermenterL.P50, 0.6);
    }

    [Fact]
    public void Sparge_liquor_comes_back_as_hot_as_it_was_wanted()
    {
        var day = Failed("liquor.heat-sparge", 5);
        day.Accepted(new RunCommand.Choose(day.Offers[0]));
        day.RunPast("remedy.back-1");
        Assert.Equal(77, day.Vessel("liquor").TempC, 1.0);
        Assert.InRange(day.Vessel("kettle").LiquidKg, 0, 1.5);
    }

    [Fact]
    public void Undo_takes_the_steps_off_and_heats_on()
    {
        var day = Failed("liquor.heat-strike", 5);
        var before = Laws.Same.Text(day.State);
        day.Accepted(new RunCommand.Choose(day.Offers[0]));
        day.Accepted(new RunCommand.Undo());
        Assert.Equal(before, Laws.Same.Text(day.State));
    }

    [Fact]
    public void A_kettle_that_is_in_use_heats_no_liquor()
    {
        var day = Failed("lauter.run", 20);
        Assert.DoesNotContain(day.Offers, r => r.Kind == RemedyKind.HeatElsewhere);
    }

    [Fact]
    public void A_heat_up_that_lags_is_seen_and_its_minutes_are_told()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("liquor.heat-strike");
        day.Wait(10);
        var planned = day.Forecast.Outlook.FinishMs.P50;
        // half the heat: half of what it has gained is missing
        var missing = 0.5 * (day.Vessel("liquor").TempC - day.State.Plan!.Choices.SourceWaterC);
        day.ReadOff(ReadingKind.Temperature, "liquor", -missing);
        Assert.InRange(day.State.Live!.Setting.HeatFactor[0], 0.4, 0.6);
        Assert.True(day.Forecast.Outlook.FinishMs.P50 > planned + 10 * 60_000);
        Assert.Equal([RemedyKind.HeatElsewhere, RemedyKind.LeaveIt], day.Offers.Select(r => r.Kind));
        Assert.Contains(day.Offers[^1].Gives, s => s.Figure == "finish_ms");
        Assert.True(day.Offers[0].Minutes < 0);
    }

    [Fact]
    public void A_heat_up_that_lags_no_more_than_a_stir_calls_for_nothing()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("liquor.heat-strike");
        day.Wait(20);
        day.ReadOff(ReadingKind.Temperature, "liquor", -2);
        Assert.Empty(day.Offers);
        Assert.Equal(1, day.State.Live!.Setting.HeatFactor[0]);
    }
}
