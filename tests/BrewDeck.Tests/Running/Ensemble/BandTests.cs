using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Ensemble;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running.Ensemble;

public class BandTests
{
    [Fact]
    public void Every_figure_has_its_band_around_its_middle()
    {
        var outlook = new PerfectDay(Demo.Plan()).Forecast.Outlook;
        foreach (var figure in All(outlook).Where((_, i) => i != ColourIndex))
            Assert.True(figure.P10 < figure.P50 && figure.P50 < figure.P90, $"{figure}");
        // colour has no spread of its own and follows the litres
        Assert.True(outlook.ColourEbc.P10 <= outlook.ColourEbc.P50 && outlook.ColourEbc.P50 <= outlook.ColourEbc.P90);
    }

    [Fact]
    public void The_band_narrows_as_the_day_is_read()
    {
        var day = new PerfectDay(Demo.Plan());
        var start = Width(day.Forecast.Outlook.OriginalGravitySg);
        day.RunUntil(s => s.Step("lauter.run")!.Status == RunStatus.Complete);
        Read(day, ReadingKind.Gravity, "kettle", 0);
        var preBoil = Width(day.Forecast.Outlook.OriginalGravitySg);
        day.RunUntil(s => s.Step("cool.knock-out")!.Status == RunStatus.Complete);
        Read(day, ReadingKind.Gravity, "kettle", 0);
        var end = Width(day.Forecast.Outlook.OriginalGravitySg);
        Assert.True(preBoil < 0.85 * start, $"{preBoil} of {start}");
        Assert.True(end < 0.85 * preBoil, $"{end} of {preBoil}");
    }

    [Fact]
    public void A_low_reading_moves_the_middle_towards_it_but_not_beyond()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Step("lauter.run")!.Status == RunStatus.Complete);
        var before = day.Forecast.Outlook.PreBoilGravitySg.P50;
        Read(day, ReadingKind.Gravity, "kettle", -0.001);
        var moved = day.Forecast.Outlook.PreBoilGravitySg.P50 - before;
        Assert.InRange(moved, -0.001, -0.0003);
    }

    [Fact]
    public void A_reading_that_no_spread_explains_is_believed()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Step("lauter.run")!.Status == RunStatus.Complete);
        Read(day, ReadingKind.Gravity, "kettle", -0.008);
        var kettle = day.State.Live!.Plant.Vessels[2];
        Assert.Equal(day.Expected(ReadingKind.Gravity, "kettle"), day.State.Readings[^1].Reading.Value, 5);
        Assert.True(kettle.ExtractKg > 0);
    }

    [Fact]
    public void Late_power_is_learnt_from_the_time_that_a_heat_up_took()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Step("liquor.heat-strike")!.Status == RunStatus.Running);
        day.Wait(25);
        day.Do(new RunCommand.Finish("liquor.heat-strike"));
        var before = Demo.Plan().Steps.Single(s => s.Spec.Id == "liquor.heat-strike").DurationS;
        var factor = day.State.Live!.Setting.HeatFactor[0];
        Assert.True(before / 60 < 24, $"{before}");
        Assert.InRange(factor, before / 60 / 25 - 0.02, 0.99);
    }

    [Fact]
    public void The_same_log_gives_the_same_bands()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Step("lauter.run")!.Status == RunStatus.Complete);
        Read(day, ReadingKind.Gravity, "kettle", -0.001);
        var again = Forecasts.At(RunFold.Of(day.Events), day.NowMs).Outlook;
        Assert.Equal(All(day.Forecast.Outlook), All(again));
    }

    [Fact]
    public void Undoing_a_reading_brings_the_bands_back()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(s => s.Step("lauter.run")!.Status == RunStatus.Complete);
        var before = day.Forecast.Outlook;
        Read(day, ReadingKind.Gravity, "kettle", -0.001);
        day.Do(new RunCommand.Undo());
        Assert.Equal(All(before), All(day.Forecast.Outlook));
    }

    /// <summary>Hops that wait in hot wort go on giving bitterness until the wort is cold, after the boil too.</summary>
    [Fact]
    public void What_a_slow_hand_adds_to_bitterness_ends_with_the_cast_out()
    {
        var plan = Demo.Plan();
        var response = Response.Of(plan);
        double Adds(string step) => response.Figures.BitternessIbu.PacesFrom(response.IndexOf(step));
        Assert.True(Adds("setup.check") > Adds("cool.whirlpool"), $"{Adds("setup.check")} {Adds("cool.whirlpool")}");
        Assert.InRange(Adds("cool.whirlpool"), 0.01, 1);
        Assert.Equal(0, Adds("pitch.pitch"), 6);
    }

    /// <summary>A mash cannot dissolve more than the laboratory does.</summary>
    [Fact]
    public void No_member_dissolves_more_than_all()
    {
        var house = Demo.House with { Habits = Demo.House.Habits with { ConversionYield = 0.99 } };
        var sources = Response.Of(Demo.Plan(house: house)).Sources;
        var yields = sources.Single(s => s.Name == "conversion_yield");
        Assert.Equal(0.01, yields.Most * yields.Sd, 9);
        Assert.All(sources.Where(s => s != yields), s => Assert.Equal(double.PositiveInfinity, s.Most));
    }

    [Fact]
    public void Half_of_the_members_lie_below_the_middle()
    {
        var day = new PerfectDay(Demo.Plan());
        var outlook = day.Forecast.Outlook;
        Assert.Equal(0.5, OutlookRanks.Of(day.State, outlook, OutlookFigure.FermenterVolume, outlook.FermenterL.P50), 0.001);
        Assert.Equal(0.1, OutlookRanks.Of(day.State, outlook, OutlookFigure.Finish, outlook.FinishMs.P10!.Value), 0.001);
    }

    private const int ColourIndex = 6;

    private static void Read(PerfectDay day, ReadingKind kind, string vessel, double off) =>
        day.Do(new RunCommand.Take(new Reading(kind, vessel, day.Expected(kind, vessel) + off, ""), Confirmed: true));

    private static double Width(Figure figure) => figure.P90!.Value - figure.P10!.Value;

    private static Figure[] All(Outlook o) =>
    [
        o.PreBoilL, o.PreBoilGravitySg, o.PostBoilL, o.FermenterL, o.OriginalGravitySg, o.BitternessIbu, o.ColourEbc, o.PitchC, o.FinishMs,
    ];
}
