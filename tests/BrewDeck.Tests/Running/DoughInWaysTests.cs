using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>A mash whose temperature is read before its doughing in is ended.</summary>
public class DoughInWaysTests
{
    private static readonly Lazy<PerfectDay> _doughedIn = new(() =>
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("mash.dough-in");
        day.WaitUntil(day.Forecast.Rest.First(s => s.Spec.Id == "mash.dough-in").EndS);
        return day;
    });

    private static PerfectDay Off(double by)
    {
        var day = _doughedIn.Value.Copy();
        day.ReadOff(ReadingKind.Temperature, "tun", by);
        return day;
    }

    [Fact]
    public void A_mash_as_planned_calls_for_nothing() => Assert.Empty(Off(0.2).Offers);

    [Theory]
    [InlineData(-3, new[] { RemedyKind.HeatMash, RemedyKind.AddHotWater })]
    [InlineData(3, new[] { RemedyKind.AddColdWater })]
    public void Each_remedy_brings_the_first_rest_to_its_temperature(double by, RemedyKind[] kinds)
    {
        Assert.Equal(kinds.Append(RemedyKind.LeaveIt).Order(), Off(by).Offers.Select(r => r.Kind).Order());
        foreach (var kind in kinds)
        {
            var day = Off(by);
            var remedy = day.Offers.Single(r => r.Kind == kind);
            Assert.Equal(66, remedy.Gives.Single(s => s.Figure == "mash_c").After, 0.1);
            day.Accepted(new RunCommand.Choose(remedy));
            Assert.Empty(day.Offers);
            day.RunPast(remedy.Insert[0].Id);
            Assert.Equal(66, day.Vessel("tun").TempC, 0.3);
            Assert.Equal(RunStatus.Running, day.State.Step("mash.rest-1")!.Status);
        }
    }

    /// <summary>A stove needs some four minutes for each litre that comes from a cold tap.</summary>
    [Fact]
    public void Boiling_water_has_to_be_boiled_first()
    {
        var remedy = Off(-3).Offers.Single(r => r.Kind == RemedyKind.AddHotWater);
        Assert.InRange((remedy.Insert[0].HandsS - 120) / remedy.Amount, 200, 300);
        Assert.Equal(120, Off(3).Offers.Single(r => r.Kind == RemedyKind.AddColdWater).Insert[0].HandsS);
    }

    [Fact]
    public void A_morning_that_began_late_is_no_fault_of_the_mash()
    {
        var day = _doughedIn.Value.Copy();
        day.Wait(45);
        day.ReadOff(ReadingKind.Temperature, "tun", -3);
        Assert.DoesNotContain(day.Offers[^1].Gives, s => s.Figure == "finish_ms");
    }

    [Fact]
    public void Leaving_it_says_what_the_mash_has()
    {
        var mash = Off(-3).Offers[^1].Gives.Single(s => s.Figure == "mash_c");
        Assert.Equal((66, 63), (mash.Before, Math.Round(mash.After)));
        Assert.True(mash.Low < mash.After && mash.After < mash.High);
    }

    [Fact]
    public void Water_into_a_mash_that_is_heated_wants_its_heat_off()
    {
        var day = new PerfectDay(Demo.Plan(choices: new DayChoices { MashHeating = Core.Brewhouses.MashHeating.Direct }));
        day.RunUntil("mash.rest-1");
        day.Wait(10);
        day.ReadOff(ReadingKind.Temperature, "tun", -3);
        var holds = day.Vessel("tun").HoldsTemperature;
        var water = day.Offers.Single(r => r.Kind == RemedyKind.AddHotWater);
        Assert.Equal(holds ? StepLabels.HeatOff : "", water.Insert[0].Label);
        Assert.True(holds);
    }
}
