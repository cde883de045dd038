using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>The moments at which heat is switched in a run-off are those at which the levels are there.</summary>
public class HeatSwitchTests
{
    private const double StepMin = 0.5;

    private readonly PerfectDay _day = new(Demo.Plan());

    [Fact]
    public void Heat_is_to_be_switched_when_the_levels_are_there()
    {
        _day.RunUntil("lauter.run");
        var house = Demo.House;
        var ahead = _day.Forecast.Switches;
        Assert.Equal(["kettle", "liquor"], ahead.Select(s => s.Vessel).Order());
        Assert.Equal(ahead[0].AtS, _day.Forecast.HandsNeededS);
        Assert.All(ahead, s => Assert.Equal(s.Vessel == "kettle", s.On));

        var (covered, shows) = (double.NaN, double.NaN);
        for (var i = 0; i < 300 && _day.Focus.Act == FocusAct.Wait; i++)
        {
            if (double.IsNaN(covered) && Level("kettle") >= house.Kettle.CoverL)
                covered = NowS;
            if (double.IsNaN(shows) && Level("liquor") <= house.HotLiquorTank.CoverL)
                shows = NowS;
            _day.Wait(StepMin);
        }

        Assert.Equal(covered, ahead.First(s => s.Vessel == "kettle").AtS, 60.0);
        Assert.Equal(shows, ahead.First(s => s.Vessel == "liquor").AtS, 120.0);
        Assert.Empty(_day.Forecast.Switches);
    }

    /// <summary>On one circuit the plug is in the kettle: nobody is sent to switch off what is not plugged in.</summary>
    [Fact]
    public void A_tank_that_is_unplugged_has_no_heat_to_switch_off()
    {
        var house = Demo.House with
        {
            Circuits = [new Circuit("A", 240, 30, 0.8)],
            Vessels = [.. Demo.House.Vessels.Select(v => v with { Elements = [.. v.Elements.Select(e => e with { CircuitId = "A" })] })],
        };
        var day = new PerfectDay(Demo.Plan(house: house, choices: new DayChoices { BatchL = 30 }));
        day.RunUntil("lauter.run");

        Assert.Equal(house.Vessels.ToList().FindIndex(v => v.Id == "kettle"), day.State.Live!.Plant.PlugAt[0]);
        Assert.DoesNotContain(day.Forecast.Switches, s => s.Vessel == "liquor");
    }

    /// <summary>What has run off already is in the levels: the moments stay where they were.</summary>
    [Fact]
    public void A_while_into_the_run_off_the_moments_are_the_same()
    {
        _day.RunUntil("lauter.run");
        var ahead = _day.Forecast.Switches;
        var first = (ahead[0].AtS - NowS) / 60;
        _day.Wait(0.5 * first);
        var later = _day.Forecast.Switches;
        Assert.Equal(ahead.Select(s => (s.Vessel, s.On)), later.Select(s => (s.Vessel, s.On)));
        for (var i = 0; i < ahead.Length; i++)
            Assert.Equal(ahead[i].AtS, later[i].AtS, 120.0);
        Assert.True(Level("kettle") > 1);
    }

    private double NowS => _day.State.SecondsAt(_day.NowMs);

    private double Level(string vessel) =>
        Contents.LiquidL(_day.Forecast.Now.Vessels[_day.State.Live!.Setting.IndexOf(vessel)]);
}
