using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

/// <summary>Keys struck by habit or by mistake that a second fresh reader was led into: none of them may spoil the brew.</summary>
public class SessionSlipTests
{
    private readonly Player _brewer = new();

    private RunStatus Status(string step) => _brewer.Session.State!.Step(step)!.Status;

    [Fact]
    public void Yeast_is_not_pitched_into_warm_wort_by_the_big_key_alone()
    {
        _brewer.Begin().Until("cool.cast-out").Wait(3600).Keys("3").Line("39.5").Keys("2").Line("24").Until("pitch.aerate", RunStatus.Complete).Space();
        Assert.Equal("The wort reads 24.0 °C, the plan pitches at 19 °C. Pitch now?", _brewer.Question);
        _brewer.Enter();
        Assert.Equal(RunStatus.Idle, Status("pitch.pitch"));

        _brewer.Keys("t").Keys("2");
        Assert.Contains("Which reading?", _brewer.Question, StringComparison.Ordinal);
        _brewer.Escape().Space().Down().Enter();
        Assert.Equal(RunStatus.Running, Status("pitch.pitch"));
    }

    [Fact]
    public void A_reading_typed_into_the_question_of_an_early_end_does_not_end_the_step()
    {
        _brewer.Begin().RunUntil(s => Filling(s) is not null).Wait(5).Space();
        Assert.StartsWith("End it ", _brewer.Question, StringComparison.Ordinal);
        var fill = Filling(_brewer.Session.State!)!.Spec.Id;
        _brewer.Keys("2").Enter();
        Assert.Equal(RunStatus.Running, Status(fill));

        static RunStep? Filling(RunState state) => state.Steps.FirstOrDefault(s => s is { Status: RunStatus.Running, Spec.Kind: StepKind.Fill });
    }

    [Fact]
    public void Enter_meant_for_a_list_of_remedies_that_did_not_come_ends_no_step()
    {
        _brewer.Begin().Until("mash.dough-in").Keys("r").Strike(new KeyStroke(KeyName.Enter), afterS: 0.8);
        Assert.Equal(RunStatus.Running, Status("mash.dough-in"));
    }

    [Fact]
    public void Escape_does_not_leave_the_deck() => Assert.IsType<BrewDeck.Deck.Screens.DeckScreen>(_brewer.Begin().Escape().Screen);

    [Fact]
    public void The_circuit_that_holds_the_mash_can_be_reported_as_tripped()
    {
        _brewer.Begin().Until("mash.rest-1").Wait(600);
        var live = _brewer.Session.State!.Live!;
        var tun = live.Setting.IndexOf("tun");
        Assert.True(live.Plant.Vessels[tun].HoldsTemperature);
        var holds = live.Setting.Circuits.Where((_, c) => live.Setting.Wiring.LoadW(tun, c) > 0).Select(c => new Trouble(TroubleKind.CircuitTripped, c.Id)).ToList();
        Assert.NotEmpty(holds);
        Assert.All(holds, t => Assert.Contains(t, Possible.At(_brewer.Session.State)));
    }

    [Fact]
    public void The_record_names_the_hops_that_went_in_and_not_those_of_the_plan()
    {
        var plan = Planning.Demo.Plan();
        var planned = plan.Steps.First(s => s.Spec.Kind == StepKind.AddToBoil && s.Spec.Charges is [{ Kind: ChargeKind.Hop }, ..]);
        var changed = planned.Spec with { Charges = planned.Spec.Charges.SetItem(0, planned.Spec.Charges[0] with { Amount = 32 }) };
        Assert.Contains(" 32 g ", StepTitles.Of(new RunStep(changed, RunStatus.Complete), plan, Notation.Metric), StringComparison.Ordinal);
        Assert.DoesNotContain(" 32 g ", StepTitles.Of(planned, plan, Notation.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_off_that_nobody_has_read_is_asked_about_before_it_ends()
    {
        _brewer.Begin().Until("lauter.run");
        _brewer.Wait(3 * 3600);
        Assert.Contains("Reckoned done: read the level first.", _brewer.Text, StringComparison.Ordinal);
        Assert.Contains(_brewer.Deck.Vessels, g => g.Text.StartsWith('~'));

        _brewer.Space();
        Assert.Equal("Nothing has been read yet. Read it first?", _brewer.Question);
        _brewer.Down().Enter();
        Assert.Equal("Kettle volume?", _brewer.Question);
    }

    [Fact]
    public void A_fill_that_ended_unread_stays_a_guess_until_somebody_looks()
    {
        _brewer.Begin().RunUntil(s => s.LastDone(d => d.Kind == StepKind.Fill) is not null);
        Assert.Contains(_brewer.Deck.Vessels, g => g.Text.StartsWith('~'));

        _brewer.Keys("1").Line("24");
        Assert.DoesNotContain(_brewer.Deck.Vessels, g => g.Text.StartsWith('~'));
    }

    [Fact]
    public void What_may_be_read_begins_where_the_hands_are_and_leaves_out_what_is_cleaned()
    {
        _brewer.Begin().RunUntil(s => s.Step("clean.tun")?.Status == RunStatus.Complete && s.Steps.Any(r => r is { Status: RunStatus.Running, Spec.Kind: StepKind.Boil })).Keys("t");
        var shown = Assert.IsType<BrewDeck.Deck.Screens.ChoiceOverlay>(_brewer.Screen.Overlay).Options.Select(o => o.Cells[0]).ToList();
        Assert.StartsWith("Kettle volume", shown[0], StringComparison.Ordinal);
        Assert.DoesNotContain(shown, o => o.StartsWith("Mash tun", StringComparison.Ordinal) || o.StartsWith("Hot liquor tank gravity", StringComparison.Ordinal));
        Assert.True(shown.FindIndex(o => o.StartsWith("Kettle pH", StringComparison.Ordinal)) < shown.FindIndex(o => o.StartsWith("Hot liquor tank", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_fill_that_is_given_up_has_not_reached_its_mark()
    {
        _brewer.Begin().RunUntil(s => s.Steps.Any(r => r is { Status: RunStatus.Running, Spec.Kind: StepKind.Fill })).Wait(20).Space();
        var options = Assert.IsType<BrewDeck.Deck.Screens.ChoiceOverlay>(_brewer.Screen.Overlay).Options.Select(o => o.Cells[0]).ToList();
        Assert.Equal(["Let it run", "It is there already: end it"], options.Take(2));
        Assert.StartsWith("End it short of that, reckoned at ", options[2], StringComparison.Ordinal);

        _brewer.Down(2).Enter();
        var fill = _brewer.Session.State!.LastDone(s => s.Kind == StepKind.Fill)!;
        Assert.True(fill.EndedShort);
        Assert.InRange(Contents.CoolL(_brewer.Session.Forecast!.Now.Vessels[0]), 0.1, 0.9 * fill.Spec.VolumeL!.Value);
        Assert.StartsWith("Ended short: ", _brewer.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void Hops_left_out_tell_what_they_cost()
    {
        _brewer.Begin().RunUntil(s => s.Steps.Any(r => r is { Status: RunStatus.Running, Spec.Kind: StepKind.HotBreak })).Wait(400).Space();
        _brewer.Keys("s").Line("skip forgot");
        Assert.Contains("bitterness ", _brewer.Notice, StringComparison.Ordinal);
        Assert.Contains("(forgot)", _brewer.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void Wort_that_waits_for_its_hops_boils_on()
    {
        _brewer.Begin().RunUntil(s => s.Steps.Any(r => r is { Status: RunStatus.Running, Spec.Kind: StepKind.HotBreak })).Wait(400).Space();
        var kettle = _brewer.Session.State!.Live!.Setting.IndexOf("kettle");
        var before = _brewer.Session.Forecast!.Now.Vessels[kettle];
        _brewer.Wait(900);
        var after = _brewer.Session.Forecast!.Now.Vessels[kettle];
        Assert.InRange(before.TempC - after.TempC, -0.2, 0.2);
        // a quarter of an hour of 4 to 6 kg/h
        Assert.InRange(before.WaterKg - after.WaterKg, 0.8, 1.7);
        Assert.Contains(_brewer.Deck.Vessels, g => g.Text.Contains("heat on", StringComparison.Ordinal));
        Assert.Contains(_brewer.Deck.Circuits, g => !g.Text.StartsWith("0.0", StringComparison.Ordinal));
    }

    [Fact]
    public void A_gravity_typed_where_a_level_is_asked_for_is_taken_as_one()
    {
        _brewer.Begin().Until("lauter.run");
        _brewer.Wait(3 * 3600).Keys("1").Line("1.041");

        Assert.Equal(BrewDeck.Core.Running.ReadingKind.Gravity, Assert.Single(_brewer.Session.State!.Readings).Reading.Kind);
    }

    /// <summary>The clock of the run-off is over, the kettle is a little below its mark: only the brewer sees whether more comes.</summary>
    [Fact]
    public void A_level_short_of_the_mark_is_asked_whether_it_still_runs()
    {
        _brewer.Begin().Until("lauter.run");
        _brewer.Wait(3 * 3600);
        var mark = _brewer.Session.Forecast!.Rest.First(s => s.Spec.Id == "lauter.run").Expected[0].Value;
        var read = (mark - 3).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture);
        _brewer.Keys("4").Send(new Input.Submitted(read));
        Assert.EndsWith(": does it still run off?", _brewer.Question, StringComparison.Ordinal);
        _brewer.Enter();

        var left = _brewer.Session.Forecast!.Rest.First(s => s.Spec.Id == "lauter.run");
        Assert.Equal(mark, left.Expected[0].Value, 0.6);
        Assert.True(left.DurationS > 60, $"{left.DurationS} s");
    }

    [Fact]
    public void Handwork_of_minutes_is_not_over_in_seconds()
    {
        _brewer.Begin().Until("setup.check").Wait(3).Space();
        Assert.Matches("^End it .* early\\?$", _brewer.Question);
        Assert.Equal(RunStatus.Running, Status("setup.check"));
        _brewer.Enter().Wait(20).Space();
        Assert.Equal(RunStatus.Complete, Status("setup.check"));
    }
}
