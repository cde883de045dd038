using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

public class RunningDayTests
{
    [Fact]
    public void A_day_that_goes_to_plan_gives_what_the_plan_says()
    {
        var plan = Demo.Plan();
        var day = new PerfectDay(plan);
        day.RunToEnd();
        var outlook = day.Forecast.Outlook;
        // nothing was read: the middle allows for the tun that may have run dry before the mark, but never after it
        Assert.InRange(outlook.OriginalGravitySg.P50 - plan.Totals.OriginalGravitySg, 0, 0.0005);
        Assert.InRange(outlook.FermenterL.P50 - plan.Totals.FermenterL, -0.4, 0.1);
        Assert.Equal(plan.Totals.BitternessIbu, outlook.BitternessIbu.P50, 0);
        Assert.Equal(plan.Totals.DayS / 60, (outlook.FinishMs.P50 - day.State.DayStartMs!.Value) / 60_000, 3.0);
    }
}
