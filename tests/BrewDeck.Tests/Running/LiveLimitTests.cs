using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>The limits held against the rest of the day: one reading that keeps inside of each, and one that does not.</summary>
public sealed class LiveLimitTests
{
    [Theory]
    [InlineData("liquor_in_tank", "liquor.heat-strike", ReadingKind.Volume, "liquor", 33, 41)]
    [InlineData("mash_in_tun", "mash.transfer", ReadingKind.Volume, "tun", 48, 56)]
    [InlineData("wort_in_fermenter", "cool.knock-out", ReadingKind.Volume, "kettle", 56, 63)]
    [InlineData("wort_covers_elements", "lauter.run", ReadingKind.Volume, "kettle", 38, 26)]
    [InlineData("mash_covers_elements", "mash.transfer", ReadingKind.Volume, "tun", 22, 12)]
    [InlineData("pitch_temperature", "lauter.run", ReadingKind.Temperature, "source", 12, 23)]
    [InlineData("heats_to_target:liquor.heat-sparge", "mash.transfer", ReadingKind.Temperature, "room", 5, -19)]
    [InlineData("strike_temperature", "setup.check", ReadingKind.Temperature, "tun", 16, 1)]
    [InlineData("mash_in_lauter_tun", "mash.transfer", ReadingKind.Volume, "tun", 48, 56)]
    [InlineData("wort_in_whirlpool", "boil.hot-break", ReadingKind.Volume, "kettle", 58, 62)]
    public void A_reading_that_leads_beyond_a_limit_raises_it_and_one_inside_does_not(
        string name, string past, ReadingKind kind, string vessel, double inside, double beyond)
    {
        var day = new PerfectDay(Demo.Plan(house: HouseFor(name)));
        day.RunPast(past);
        Assert.DoesNotContain(Ahead(day), a => a.About == name);

        Assert.DoesNotContain(Ahead(After(day, kind, vessel, inside)), a => a.About == name);
        var alarm = Assert.Single(Ahead(After(day, kind, vessel, beyond)), a => a.About == name);
        Assert.True(alarm.Limit!.Margin < 0);
        Assert.Equal((alarm.Limit.Value, alarm.Limit.Bound), (alarm.Value, alarm.Bound));
        Assert.Equal(AlarmPriority.Medium, alarm.Priority);
    }

    /// <summary>A mash that came out colder asks for more to be boiled, a warmer one for less than covers the kettle's element.</summary>
    [Theory]
    [InlineData("decoction_share", "mash.rest-1", 55, 40)]
    [InlineData("decoction_covers_elements", "mash.rest-2", 71, 76.5)]
    public void A_mash_that_is_off_moves_the_decoction_past_its_limit(string name, string past, double inside, double beyond)
    {
        // a tun that heats itself would bring the mash back to its rest
        var house = Demo.House with
        {
            Vessels = [.. Demo.House.Vessels.Select(v => v.Id == "tun" ? v with { Elements = [] } : v with { Elements = [v.Elements[0] with { CoverL = 5 }] })],
        };
        var recipe = Demo.Amber with { Rests = [new("maltose", 63, 30), new("saccharification", 72, 30), new("mash-out", 77, 10)] };
        var day = new PerfectDay(Demo.Plan(recipe, new DayChoices { MashHeating = MashHeating.Decoction }, house));
        day.RunPast(past);
        Assert.DoesNotContain(Ahead(day), a => a.About == name);

        Assert.DoesNotContain(Ahead(After(day, ReadingKind.Temperature, "tun", inside)), a => a.About == name);
        Assert.True(Assert.Single(Ahead(After(day, ReadingKind.Temperature, "tun", beyond)), a => a.About == name).Limit!.Margin < 0);
    }

    /// <summary>Without heat a wort is at its warmest now, and what comes after it is no news of its own.</summary>
    [Fact]
    public void What_has_no_heat_left_reaches_what_it_has()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("boil.heat");
        day.Wait(5);
        var celsius = day.Vessel("kettle").TempC;
        day.Accepted(new RunCommand.Report(new(TroubleKind.CircuitTripped, "C")));

        var limit = Assert.Single(LiveLimits.Of(day.State, day.Forecast), l => l.Name.StartsWith("heats_to_target", StringComparison.Ordinal));

        Assert.Equal("heats_to_target:boil.heat", limit.Name);
        Assert.Equal(celsius, limit.Value, 0.2);
    }

    /// <summary>What a tripped circuit fed goes onto another one: A carries it for hours, B does not.</summary>
    [Theory]
    [InlineData("A", true)]
    [InlineData("B", false)]
    public void A_plug_in_a_circuit_that_is_too_weak_raises_its_limit(string circuit, bool carries)
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunPast("lauter.vorlauf");
        day.Accepted(new RunCommand.Report(new(TroubleKind.CircuitTripped, "C")));
        day.Accepted(new RunCommand.Choose(new Remedy(RemedyKind.OtherCircuit, "kettle", 5500, 0, [], "", [], []) { CircuitId = circuit }));

        var limit = LiveLimits.Of(day.State, day.Forecast).Single(l => l.Name == $"circuit_{circuit}_for_kettle");
        Assert.Equal((5.5, carries), (limit.Value, limit.Ok));
        Assert.Equal(!carries, Ahead(day).Any(a => a.About == limit.Name));
    }

    /// <summary>No reading moves what a pump pulls on the plate: the plan's own number stands as long as wort may be drawn through it, and no longer.</summary>
    [Theory]
    [InlineData(1.01, true)]
    [InlineData(0.99, false)]
    public void A_false_bottom_is_held_against_the_pump_until_the_lauter_is_over(double share, bool ok)
    {
        var needs = Demo.Plan().Limits.Single(l => l.Name == "false_bottom_load").Value;
        var day = new PerfectDay(Demo.Plan(house: Changed("tun", v => v with { FalseBottom = v.FalseBottom! with { RatedLoadKg = share * needs } })));
        day.RunPast("mash.dough-in");
        Assert.Equal(ok, LiveLimits.Of(day.State, day.Forecast).Single(l => l.Name == "false_bottom_load").Ok);

        day.RunPast("lauter.run");
        Assert.DoesNotContain(LiveLimits.Of(day.State, day.Forecast), l => l.Name == "false_bottom_load");
    }

    /// <summary>Water for a gravity that came out high does not fit into the kettle: choosing that remedy is told like a reading.</summary>
    [Fact]
    public void A_remedy_that_overfills_the_kettle_raises_its_limit()
    {
        var full = Demo.Plan().Limits.Single(l => l.Name == "wort_in_kettle").Value;
        var day = new PerfectDay(Demo.Plan(house: Changed("kettle", v => v with { CapacityL = v.HeadroomL + full + 1 })));
        day.RunPast("lauter.run");
        day.ReadOff(ReadingKind.Gravity, "kettle", 0.008);
        Assert.DoesNotContain(Ahead(day), a => a.About == "wort_in_kettle");

        var spec = new StepSpec { Id = "remedy.water-1", Kind = StepKind.AddWater, Unit = UnitProcedure.Boil, Vessel = "kettle", VolumeL = 3, TargetC = 77, HandsS = 120 };
        var kettle = day.State.Steps.First(s => s.Open && s.Spec.Vessel == "kettle").Spec.Id;
        day.Accepted(new RunCommand.Choose(new Remedy(RemedyKind.AddHotWater, "kettle", 3, 0, [spec], kettle, [], [])));
        Assert.Contains(Ahead(day), a => a.About == "wort_in_kettle");
    }

    [Fact]
    public void What_the_plan_said_would_not_hold_is_no_news()
    {
        var weak = Changed("tun", v => v with { FalseBottom = v.FalseBottom! with { RatedLoadKg = 100 } });
        var day = new PerfectDay(Demo.Plan(house: weak));
        day.RunPast("mash.dough-in");
        Assert.False(LiveLimits.Of(day.State, day.Forecast).Single(l => l.Name == "false_bottom_load").Ok);
        Assert.Empty(Ahead(day));
    }

    [Fact]
    public void An_alarm_of_a_limit_goes_when_a_reading_takes_it_back()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunPast("lauter.run");
        day.Read(ReadingKind.Temperature, "source", 23);
        var raised = AlarmDesk.Watch(day.State, day.Forecast, day.Focus, day.NowMs);
        var state = raised.Aggregate(day.State, RunFold.Then);
        Assert.Contains(state.Alarms, a => a.Alarm.Kind == AlarmKind.LimitAhead);

        day.Read(ReadingKind.Temperature, "source", 10);
        var cleared = AlarmDesk.Watch(day.State with { Alarms = state.Alarms }, day.Forecast, day.Focus, day.NowMs);
        Assert.Contains(cleared, e => e is AlarmCleared { Alarm: AlarmKind.LimitAhead, About: "pitch_temperature" });
    }

    private static PerfectDay After(PerfectDay day, ReadingKind kind, string vessel, double value)
    {
        var copy = day.Copy();
        copy.Read(kind, vessel, value);
        return copy;
    }

    private static IEnumerable<Alarm> Ahead(PerfectDay day) =>
        AlarmRules.At(day.State, day.Forecast, day.Focus, day.NowMs).Where(a => a.Kind == AlarmKind.LimitAhead);

    /// <summary>A house in which a reading that people can take leads to the limit.</summary>
    private static Brewhouse HouseFor(string name) => name switch
    {
        "mash_in_lauter_tun" => Demo.FiveVessels with
        {
            // the tun itself has room
            Vessels = [.. Demo.FiveVessels.Vessels.Select(v => v.Id == "tun" ? v with { CapacityL = 90 } : v)],
        },
        "wort_in_whirlpool" => Demo.FiveVessels with
        {
            Vessels = [.. Demo.FiveVessels.Vessels.Select(v => v.Id == "whirlpool" ? v with { CapacityL = 57 } : v)],
        },
        // a level read while a fill is due says what that fill has done: what leads beyond the limit is read before
        "liquor_in_tank" => Changed("liquor", v => v with { CapacityL = 45 }),
        "wort_covers_elements" => Changed("kettle", v => v with { Elements = [v.Elements[0] with { CoverL = 30 }] }),
        "mash_covers_elements" => Changed("tun", v => v with { Elements = [v.Elements[0] with { CoverL = 25 }] }),
        "heats_to_target:liquor.heat-sparge" => Changed("liquor", v => v with { Elements = [v.Elements[0] with { PowerW = 560 }] }),
        "strike_temperature" => Changed("tun", v => v with { HeatCapacityJPerK = 45_000 }),
        _ => Demo.House,
    };

    private static Brewhouse Changed(string id, Func<Vessel, Vessel> change) =>
        Demo.House with { Vessels = [.. Demo.House.Vessels.Select(v => v.Id == id ? change(v) : v)] };
}
