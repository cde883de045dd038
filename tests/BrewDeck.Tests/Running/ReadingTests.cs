using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Tests.Laws;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>What a reading means depends on where and when it is taken.</summary>
public class ReadingTests
{
    private readonly PerfectDay _day = new(Demo.Plan());

    [Theory]
    [InlineData(ReadingKind.Temperature, "cellar", 20, "no_such_place")]
    [InlineData(ReadingKind.Gravity, "grain", 1.05, "no_such_place")]
    [InlineData(ReadingKind.Temperature, "tun", 140, "reading_impossible")]
    [InlineData(ReadingKind.Volume, "kettle", -1, "reading_impossible")]
    [InlineData(ReadingKind.Volume, "kettle", 239, "over_the_brim")]
    [InlineData(ReadingKind.Gravity, "kettle", double.NaN, "reading_impossible")]
    public void What_cannot_be_is_refused(ReadingKind kind, string place, double value, string code) =>
        Assert.Equal(new Decision.Refused(code), _day.Do(new RunCommand.Take(new Reading(kind, place, value, ""), Confirmed: true)));

    [Fact]
    public void The_implausible_is_asked_again_and_taken_when_confirmed()
    {
        _day.RunUntil("mash.rest-1");
        var reading = new Reading(ReadingKind.Temperature, "tun", 45, "45");
        var asked = Assert.IsType<Decision.AskAgain>(_day.Do(new RunCommand.Take(reading)));
        Assert.InRange(_day.Expected(ReadingKind.Temperature, "tun"), asked.Low, asked.High);
        _day.Accepted(new RunCommand.Take(reading, Confirmed: true));
        Assert.Equal(45, _day.Vessel("tun").TempC, 1);
    }

    /// <summary>A sample of 50 °C in the hydrometer's jar shows 0.010 too little: it was taken in one keystroke.</summary>
    [Fact]
    public void A_gravity_that_a_hot_sample_would_show_is_asked_about_unless_its_temperature_is_told()
    {
        _day.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == StepKind.Boil && x.Status == RunStatus.Running));
        var expected = _day.Expected(ReadingKind.Gravity, "kettle");
        Reading Off(double by, string typed) => new(ReadingKind.Gravity, "kettle", expected + by, typed);

        Assert.True(Assert.IsType<Decision.AskAgain>(_day.Do(new RunCommand.Take(Off(-0.010, "1.031")))).HotSample);
        Assert.False(Assert.IsType<Decision.AskAgain>(_day.Do(new RunCommand.Take(Off(0.010, "1.051")))).HotSample);
        Assert.All([Off(-0.007, "1.034"), Off(-0.010, "1.021@50"), Off(-0.010, "8.1bx")], r => Assert.True(RunDesk.Believes(_day.State, r, _day.NowMs), r.AsTyped));
        _day.Accepted(new RunCommand.Take(Off(-0.010, "1.031"), Confirmed: true));
    }

    [Fact]
    public void Of_cold_wort_a_gravity_as_far_off_is_taken()
    {
        _day.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == StepKind.Pitch && x.Status == RunStatus.Running || x.Spec.Kind == StepKind.CastOut && x.Status == RunStatus.Complete));
        var expected = _day.Expected(ReadingKind.Gravity, Places.Fermenter);
        Assert.False(_day.Do(new RunCommand.Take(new(ReadingKind.Gravity, Places.Fermenter, expected - 0.010, "1.038"))) is Decision.AskAgain);
    }

    /// <summary>To tell what a reading moves it is folded; when it happens, the plant is that one, and the forecast drawn for it.</summary>
    [Fact]
    public void What_was_decided_on_is_not_reckoned_again()
    {
        _day.RunUntil("mash.rest-1");
        var (state, now) = (_day.State, _day.NowMs);
        var taken = Assert.IsType<Decision.Accepted>(RunDesk.Decide(state, new RunCommand.Take(new Reading(ReadingKind.Gravity, "tun", 1.06, "1.060"), Confirmed: true), now)).Events[0];
        var what = Assert.IsType<ReadingTaken>(taken);
        var (untold, told) = (RunFold.Then(state, what with { Moved = [], Expected = null }), RunFold.Then(state, what));
        Assert.Same(untold.Live, told.Live);
        Assert.Same(Forecasts.At(untold, now), Forecasts.At(told, now));
        Assert.NotSame(Forecasts.At(told, now), Forecasts.At(told, now + 1000));
        Assert.NotSame(Forecasts.At(told, now), Forecasts.At(state, now));
        var other = RunFold.Then(state, what with { Reading = what.Reading with { Value = 1.061 } });
        Assert.NotSame(told.Live, other.Live);
        Assert.Equal(untold.Readings[^1].Expected, told.Readings[^1].Expected);
    }

    /// <summary>Weigh-in and heat-up go on at once: a reading belongs to what goes on in its vessel.</summary>
    [Fact]
    public void A_reading_is_booked_under_the_step_of_its_vessel()
    {
        _day.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == StepKind.HeatStrike && x.Status == RunStatus.Running) && s.Steps.Any(x => x.Spec.Kind == StepKind.WeighIn && x.Status == RunStatus.Running));
        _day.ReadOff(ReadingKind.Temperature, "liquor", 0.3);
        Assert.Equal(StepKind.HeatStrike, _day.State.Step(_day.State.Readings[^1].StepId)!.Spec.Kind);
        _day.Read(ReadingKind.Temperature, "room", 19);
        Assert.Equal(RunStatus.Running, _day.State.Step(_day.State.Readings[^1].StepId)!.Status);
    }

    [Fact]
    public void A_kettle_volume_during_the_run_off_is_about_the_flow_and_keeps_every_litre()
    {
        _day.RunUntil("lauter.run");
        _day.Wait(20);
        var mass = Ledger.MassKg(_day.State.Live!.CutAt(_day.State.SecondsAt(_day.NowMs)).Plant);
        var before = _day.Forecast.Outlook;
        _day.ReadOff(ReadingKind.Volume, "kettle", 3);
        Assert.Equal(mass, Ledger.MassKg(_day.State.Live!.Plant), 0.002);
        var after = _day.Forecast.Outlook;
        Assert.Equal(before.FermenterL.P50, after.FermenterL.P50, 0.15);
        Assert.Equal(before.OriginalGravitySg.P50, after.OriginalGravitySg.P50, 0.0005);
        Assert.True(after.FinishMs.P50 < before.FinishMs.P50);
    }

    /// <summary>Twenty minutes at 1.2 L/min gave 24 L; 21 L means 1.05 L/min, and the rest will take longer too.</summary>
    [Fact]
    public void A_slow_run_off_moves_the_finish()
    {
        _day.RunUntil("lauter.run");
        _day.Wait(20);
        var left = _day.Forecast.Rest.First(s => s.Spec.Id == "lauter.run").DurationS;
        _day.ReadOff(ReadingKind.Volume, "kettle", -3);
        Assert.InRange(_day.State.Live!.Setting.Habits.RunoffLPerMin, 1.0, 1.1);
        Assert.InRange(_day.Forecast.Rest.First(s => s.Spec.Id == "lauter.run").DurationS, left + 300, left + 900);
    }

    /// <summary>Beyond belief for any stated spread, so it is simply believed: half a kettle of wort is spilt, not boiled away.</summary>
    [Fact]
    public void A_fermenter_volume_far_off_is_wort_of_the_same_gravity()
    {
        _day.RunPast("cool.cast-out");
        var gravity = _day.Expected(ReadingKind.Gravity, "fermenter");
        _day.ReadOff(ReadingKind.Volume, "fermenter", -20);
        Assert.Equal(gravity, _day.Expected(ReadingKind.Gravity, "fermenter"), 9);
    }

    [Fact]
    public void A_volume_low_in_the_boil_is_mostly_steam_and_teaches_the_evaporation()
    {
        _day.RunUntil("boil.boil-1");
        _day.Wait(40);
        var (evaporation, gravity) = (EvaporationKgPerH, _day.Expected(ReadingKind.Gravity, "kettle"));
        var moved = _day.ReadOff(ReadingKind.Volume, "kettle", -1.5);
        Assert.InRange(EvaporationKgPerH, 1.02 * evaporation, 1.5 * evaporation);
        Assert.InRange(_day.Expected(ReadingKind.Gravity, "kettle"), gravity + 0.0002, gravity + 0.003);
        Assert.Contains(moved, s => s.Figure == "fermenter_l" && s.After < s.Before - 0.5);
    }

    private double EvaporationKgPerH => _day.State.Live!.Setting.Habits.EvaporationKgPerH;

    [Theory]
    [InlineData("tun")]
    [InlineData("liquor")]
    public void A_volume_of_another_vessel_during_the_boil_says_nothing_about_evaporation(string vessel)
    {
        _day.RunUntil("boil.boil-1");
        _day.Wait(30);
        var before = EvaporationKgPerH;
        _day.ReadOff(ReadingKind.Volume, vessel, 1);
        Assert.Equal(before, EvaporationKgPerH, 0.02 * before);
    }

    [Fact]
    public void Water_put_into_the_boil_is_not_taken_for_a_lazy_boil()
    {
        _day.RunPast("lauter.run");
        _day.ReadOff(ReadingKind.Gravity, "kettle", 0.005);
        var dilute = _day.Offers.First(r => r.Kind == RemedyKind.Dilute);
        _day.RunUntil("boil.boil-1");
        _day.Wait(10);
        _day.ReadOff(ReadingKind.Gravity, "kettle", 0);
        _day.Accepted(new RunCommand.Choose(dilute with { BeforeStepId = "boil.boil-1" }));
        _day.GoOn();
        _day.Wait(25);
        var before = EvaporationKgPerH;
        _day.ReadOff(ReadingKind.Volume, "kettle", 0);
        Assert.Equal(before, EvaporationKgPerH, 0.02 * before);
    }

    [Fact]
    public void A_tank_that_reads_low_while_it_holds_is_heated_up_again()
    {
        _day.RunPast("liquor.heat-sparge");
        _day.ReadOff(ReadingKind.Temperature, "liquor", -4);
        Assert.Equal(73, _day.Vessel("liquor").TempC, 1);
        _day.Wait(10);
        Assert.Equal(77, _day.Vessel("liquor").TempC, 1);
    }

    [Fact]
    public void Warmer_source_water_heats_sooner_and_chills_slower()
    {
        double Lasts(string id) => _day.Forecast.Rest.Single(s => s.Spec.Id == id).DurationS;
        var (heats, chills) = (Lasts("liquor.heat-strike"), Lasts("cool.cast-out"));
        _day.Read(ReadingKind.Temperature, "source", 18);
        Assert.InRange(Lasts("liquor.heat-strike"), 0.85 * heats, 0.95 * heats);
        Assert.InRange(Lasts("cool.cast-out"), 1.1 * chills, 10 * chills);
    }

    [Fact]
    public void A_grain_temperature_moves_the_strike_temperature()
    {
        var moved = Assert.Single(_day.Read(ReadingKind.Temperature, "grain", 8), s => s.Figure == "target_c:liquor.heat-strike");
        Assert.InRange(moved.After - moved.Before, 0.5, 2.5);
    }

    /// <summary>The whole level read when the model has only begun to fill, or knows of no fill at all yet.</summary>
    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 0)]
    [InlineData(true, 1)]
    public void A_level_read_before_a_fill_is_said_to_be_over_is_what_is_in_the_vessel(bool started, double minutes)
    {
        var full = _day.State.Plan!.Steps.Single(s => s.Spec.Id == "liquor.fill").Expected[0].Value;
        ToTheFill(started);
        _day.Wait(minutes);
        Assert.IsType<Decision.Accepted>(_day.Do(new RunCommand.Take(new Reading(ReadingKind.Volume, "liquor", full - 0.6, ""))));
        _day.RunPast("liquor.fill");
        Assert.Equal(full - 0.6, Contents.StandsL(_day.Vessel("liquor")), 0.1);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_level_read_half_way_through_a_fill_leaves_the_other_half_to_come(bool started)
    {
        var full = _day.State.Plan!.Steps.Single(s => s.Spec.Id == "liquor.fill").Expected[0].Value;
        ToTheFill(started);
        _day.Read(ReadingKind.Volume, "liquor", full / 2);
        Assert.Equal(full / 2, Contents.StandsL(_day.Vessel("liquor")), 0.2);
        _day.RunPast("liquor.fill");
        Assert.Equal(full, Contents.StandsL(_day.Vessel("liquor")), 0.2);
    }

    /// <summary>The tap has been slower than reckoned, or was shut too soon: the fill is not over because its time is.</summary>
    [Fact]
    public void A_level_far_short_of_a_fill_that_should_be_over_leaves_the_rest_to_come()
    {
        var full = _day.State.Plan!.Steps.Single(s => s.Spec.Id == "liquor.fill").Expected[0].Value;
        _day.RunUntil("liquor.fill");
        _day.Wait(_day.Forecast.Rest.First(s => s.Spec.Id == "liquor.fill").DurationS / 60 + 2);
        var before = _day.Forecast.Outlook.FermenterL.P50;

        _day.Read(ReadingKind.Volume, "liquor", full - 5);

        Assert.Equal(5, _day.Forecast.Rest.First(s => s.Spec.Id == "liquor.fill").Spec.VolumeL!.Value, 0.2);
        Assert.Equal(before, _day.Forecast.Outlook.FermenterL.P50, 0.2);
        _day.RunPast("liquor.fill");
        Assert.Equal(full, Contents.StandsL(_day.Vessel("liquor")), 0.2);
    }

    private void ToTheFill(bool started)
    {
        if (started)
            _day.RunUntil("liquor.fill");
        else
            _day.RunUntil(s => StepOrder.CanStart(s, s.Step("liquor.fill")!));
    }

    /// <summary>Hands have switched the kettle on where it was reckoned to be covered: the element is bare and live.</summary>
    [Theory]
    [InlineData("kettle")]
    [InlineData("liquor")]
    public void A_level_read_in_a_run_off_under_elements_that_were_reckoned_covered_is_an_alarm(string vessel)
    {
        bool IsDry() => AlarmRules.At(_day.State, _day.Forecast, _day.Focus, _day.NowMs).Any(a => a.Kind == AlarmKind.ElementsDry && a.About == vessel);
        var cover = _day.State.Plan!.Brewhouse.Vessels.Single(v => v.Id == vessel).CoverL;
        _day.RunUntil("lauter.run");
        for (var i = 0; i < 120 && Contents.StandsL(_day.Vessel("kettle")) < cover + 3; i++)
            _day.Wait(1);
        Assert.True(_day.Expected(ReadingKind.Volume, vessel) > cover);
        Assert.False(IsDry());

        _day.Read(ReadingKind.Volume, vessel, cover - 3);

        Assert.True(IsDry());
    }

    /// <summary>Read early, the end of the run-off is known before it is said to be over.</summary>
    [Theory]
    [InlineData(0.006, RemedyKind.Dilute)]
    [InlineData(-0.003, RemedyKind.BoilLonger)]
    public void A_kettle_read_at_the_end_of_a_run_off_that_still_runs_calls_for_ways(double by, RemedyKind remedy)
    {
        _day.RunUntil("lauter.run");
        var step = _day.Forecast.Rest.First(s => s.Spec.Id == "lauter.run");
        _day.Wait(step.DurationS / 60 + 1);
        _day.ReadOff(ReadingKind.Volume, "kettle", 0);
        Assert.Empty(_day.Offers);
        _day.ReadOff(ReadingKind.Gravity, "kettle", by);
        Assert.Equal(RunStatus.Running, _day.State.Step("lauter.run")!.Status);
        Assert.Contains(_day.Offers, r => r.Kind == remedy);
    }

    /// <summary>An alarm that points to the remedies never stands where there are none.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(25)]
    public void A_mash_read_while_doughing_in_late_is_off_for_alarm_and_remedies_alike(double minutesLate)
    {
        _day.RunUntil("mash.dough-in");
        var takes = _day.Forecast.Rest.First(s => s.Spec.Id == "mash.dough-in").DurationS / 60;
        _day.Wait(0.5 * takes);
        _day.ReadOff(ReadingKind.Temperature, "tun", -4);
        _day.Wait(takes + minutesLate);
        _day.RunPast("mash.dough-in");
        Assert.Contains(AlarmRules.At(_day.State, _day.Forecast, _day.Focus, _day.NowMs), a => a.Kind == AlarmKind.MashOff);
        Assert.Contains(_day.Offers, r => r.Kind is RemedyKind.HeatMash or RemedyKind.AddHotWater);
    }

    /// <summary>Its own heat brings the mash back: what has been mended by itself does not go on ringing.</summary>
    [Fact]
    public void A_cold_mash_that_its_heat_has_brought_back_rings_no_more()
    {
        _day.RunUntil("mash.rest-1");
        _day.ReadOff(ReadingKind.Temperature, "tun", -3);
        bool IsOff() => AlarmRules.At(_day.State, _day.Forecast, _day.Focus, _day.NowMs).Any(a => a.Kind == AlarmKind.MashOff);
        Assert.True(IsOff());
        _day.Wait(20);
        Assert.False(IsOff());
        Assert.Empty(_day.Offers);
    }

    /// <summary>A tun that is said to be full of cold water asks for strike liquor that no heat can give.</summary>
    [Fact]
    public void Strike_liquor_never_gets_hotter_than_the_boil()
    {
        _day.RunUntil("liquor.heat-strike");
        _day.Accepted(new RunCommand.Take(new Reading(ReadingKind.Volume, "tun", 62.8, ""), Confirmed: true));
        _day.Wait(240);
        Assert.InRange(_day.Vessel("liquor").TempC, 90, 100.1);
    }

    /// <summary>A bed that has closed: the clock says that the kettle is full, and it is not.</summary>
    [Theory]
    [InlineData(0, 0.35, true)]
    [InlineData(-10, 0.2, true)]
    [InlineData(45, 0.35, true)]
    [InlineData(0, 0.35, false)]
    [InlineData(-10, 0.2, false)]
    [InlineData(45, 0.35, false)]
    public void A_level_far_below_the_end_is_a_slow_run_off_and_not_its_end(double minutesOver, double share, bool reported)
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("lauter.run");
        var full = day.Forecast.Rest.First(s => s.Spec.Id == "lauter.run");
        day.WaitUntil(full.EndS + 60 * minutesOver + 1);
        // what the plan had in the kettle by then is cut there
        if (reported)
            day.Accepted(new RunCommand.Report(new Trouble(TroubleKind.RunoffStuck, "lauter.run")));
        else
            day.ReadOff(ReadingKind.Temperature, "tun", 0);
        day.Wait(1);
        var target = Expected(full, ReadingKind.Volume);
        day.Read(ReadingKind.Volume, "kettle", share * target);

        Assert.Equal(share * target, day.Expected(ReadingKind.Volume, "kettle"), 0.2);
        var left = day.Forecast.Rest.First(s => s.Spec.Id == "lauter.run");
        Assert.True(day.State.Step("lauter.run")!.Open);
        Assert.Equal(target, Expected(left, ReadingKind.Volume), 0.05 * target);
        Assert.True(left.EndS > day.State.SecondsAt(day.NowMs) + 120);
    }

    private static double Expected(PlanStep step, ReadingKind kind) => step.Expected.First(e => e.Kind == kind).Value;

    [Fact]
    public void A_temperature_that_another_vessel_shows_is_asked_about()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("liquor.heat-sparge");
        day.WaitUntil(day.Forecast.Rest.First(s => s.Spec.Id == "liquor.heat-sparge").EndS + 1);
        var mash = day.Expected(ReadingKind.Temperature, "tun");
        Assert.True(day.Expected(ReadingKind.Temperature, "liquor") > mash + 6);

        var asked = Assert.IsType<Decision.AskAgain>(day.Do(new RunCommand.Take(new Reading(ReadingKind.Temperature, "liquor", mash, ""))));
        Assert.Equal("tun", asked.Fits);
        day.Accepted(new RunCommand.Take(new Reading(ReadingKind.Temperature, "tun", mash, "")));
    }

    /// <summary>The valve is held by hand: of the chilled wort a thermometer knows more than the model.</summary>
    [Fact]
    public void A_temperature_in_the_fermenter_counts_as_it_was_read()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunPast("cool.cast-out");
        var read = day.Expected(ReadingKind.Temperature, "fermenter") - 0.7;
        day.Read(ReadingKind.Temperature, "fermenter", read);
        Assert.Equal(read, day.Expected(ReadingKind.Temperature, "fermenter"), 0.05);
    }

    [Fact]
    public void The_middle_of_a_long_rest_calls_the_hands()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("mash.rest-1");
        day.RunUntil("liquor.heat-sparge");
        var rest = day.State.Step("mash.rest-1")!;
        var half = RestReadings.HalfTimeMs(day.State, rest);
        Assert.Equal(rest.StartedMs + 60_000 * rest.Spec.Minutes / 2, half);
        day.WaitUntil(day.State.SecondsAt(half!.Value) - 60);
        Assert.Equal(day.State.SecondsAt(half.Value), day.Forecast.HandsNeededS!.Value, 1);
        day.Read(ReadingKind.Temperature, "tun", 66);
        Assert.Null(RestReadings.HalfTimeMs(day.State, rest));
    }

    /// <summary>A tap that runs faster than reckoned runs no warmer: the litres that a reading adds come from the source, not from the warm empty vessel.</summary>
    [Fact]
    public void What_has_run_in_beyond_the_reckoning_is_as_cold_as_the_source()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("liquor.fill");
        day.Wait(0.2);
        var sourceC = day.State.Live!.Setting.SourceWaterC;
        day.Read(ReadingKind.Volume, "liquor", 25);
        Assert.Equal(25, Contents.StandsL(day.Vessel("liquor")), 0.05);
        Assert.InRange(day.Vessel("liquor").TempC, sourceC, sourceC + 1.5);
    }
}
