using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
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
        // less than a brewer notices: nobody is as punctual as a model, and that teaches a little
        Assert.Equal(plan.Totals.OriginalGravitySg, outlook.OriginalGravitySg.P50, 0.0005);
        Assert.Equal(plan.Totals.FermenterL, outlook.FermenterL.P50, 1);
        Assert.Equal(plan.Totals.BitternessIbu, outlook.BitternessIbu.P50, 0);
        Assert.Equal(plan.Totals.DayS / 60, (outlook.FinishMs.P50 - day.State.DayStartMs!.Value) / 60_000, 0);
    }
}
