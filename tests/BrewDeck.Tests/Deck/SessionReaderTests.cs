using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Deck;

/// <summary>What a fresh reader stumbled over on a whole day at the keys.</summary>
public class SessionReaderTests
{
    private readonly Player _brewer = new();

    private RunState State => _brewer.Session.State!;

    private RunStep UntilFillWaits()
    {
        _brewer.Begin().RunUntil(s => s.Steps.First(x => x.Spec.Kind == StepKind.Fill) is { Status: RunStatus.Idle } fill && Filling.In(s, fill.Spec.Vessel) == fill);
        return State.Steps.First(s => s.Spec.Kind == StepKind.Fill);
    }

    [Fact]
    public void A_level_typed_before_its_fill_is_started_may_start_it_and_is_no_end_of_it()
    {
        var fill = UntilFillWaits();
        _brewer.Keys("t").Choose("Hot liquor tank volume").Line("15");
        Assert.StartsWith("This has not been started: Fill ", _brewer.Question, StringComparison.Ordinal);
        Assert.Empty(State.Readings);

        _brewer.Enter();

        Assert.Equal(RunStatus.Running, State.Step(fill.Spec.Id)!.Status);
        Assert.Equal(15, Assert.Single(State.Readings).Reading.Value);
        Assert.Matches(@"^Hot liquor tank volume 15\.0 L; \d+\.\d L still to fill", _brewer.Notice);
        Assert.DoesNotContain("over", _brewer.Notice, StringComparison.Ordinal);
        Assert.True(_brewer.Session.Forecast!.Rest.First(s => s.Spec.Id == fill.Spec.Id).DurationS > 60);
    }

    [Fact]
    public void A_level_that_stood_there_before_leaves_the_fill_to_be_started()
    {
        var fill = UntilFillWaits();
        _brewer.Keys("t").Choose("Hot liquor tank volume").Line("15").Down().Enter();

        Assert.Equal(RunStatus.Idle, State.Step(fill.Spec.Id)!.Status);
        Assert.InRange(State.Step(fill.Spec.Id)!.Spec.VolumeL!.Value, 0.1, fill.Spec.VolumeL!.Value - 14);
    }

    [Theory]
    [InlineData(StepKind.Vorlauf)]
    [InlineData(StepKind.SanitiseChiller)]
    public void Hands_that_work_against_the_clock_are_asked_before_they_end_early(StepKind kind)
    {
        _brewer.Begin();
        AsksBeforeItEndsEarly(kind);
    }

    [Fact]
    public void A_batch_sparge_is_asked_about_before_it_ends_early()
    {
        Assert.True(_brewer.Session.Begin(Demo.Plan(choices: new DayChoices { Sparge = SpargeMethod.Batch }), _brewer.Now));
        AsksBeforeItEndsEarly(StepKind.BatchSparge);
    }

    private void AsksBeforeItEndsEarly(StepKind kind)
    {
        _brewer.RunUntil(s => s.Steps.Any(x => x.Spec.Kind == kind && x.Status == RunStatus.Running));
        var step = State.Steps.First(s => s.Spec.Kind == kind).Spec.Id;
        _brewer.Wait(20).Space();
        Assert.Matches("^End it .* early\\?$", _brewer.Question);
        _brewer.Enter();
        Assert.Equal(RunStatus.Running, State.Step(step)!.Status);
        _brewer.Space().Down().Enter();
        Assert.Equal(RunStatus.Complete, State.Step(step)!.Status);
    }

    [Fact]
    public void A_fill_that_was_read_short_is_not_over_at_one_stroke()
    {
        _brewer.Begin().RunUntil(s => s.Steps.Any(x => x is { Status: RunStatus.Running, Spec.Kind: StepKind.Fill }));
        var fill = State.Steps.First(s => s.Spec.Kind == StepKind.Fill).Spec;
        _brewer.Wait(1200).Keys("t").Choose("Hot liquor tank volume").Line(Invariant(fill.VolumeL!.Value - 3, "0.0"));
        Assert.Contains("still to fill", _brewer.Notice, StringComparison.Ordinal);

        _brewer.Space();

        Assert.Matches("^End it .* early\\?$", _brewer.Question);
        _brewer.Enter();
        Assert.Equal(RunStatus.Running, State.Step(fill.Id)!.Status);
    }

    [Fact]
    public void A_gravity_and_a_volume_that_cannot_both_be_right_are_asked_about_once()
    {
        _brewer.Begin().Until("lauter.run", RunStatus.Complete);
        var (litres, sg) = (Expected(ReadingKind.Volume), Expected(ReadingKind.Gravity));
        _brewer.Keys("t").Choose("Kettle volume").Line(Invariant(litres + 6, "0.0"));
        Assert.Null(_brewer.Question);

        _brewer.Keys("t").Choose("Kettle gravity").Line(Invariant(sg + 0.022, "0.000") + "@20");

        Assert.Matches(@"^1\.0\d\d and \d+\.\d L are \d+\.\d+ kg of extract; the grist has \d+\.\d+ kg\. Read again\?$", _brewer.Question);
        Assert.Single(State.Readings);
        _brewer.Down().Enter();
        Assert.Equal(2, State.Readings.Length);
    }

    /// <summary>No level was read, yet the litres that are reckoned and such a gravity are more than the grist has.</summary>
    [Fact]
    public void A_gravity_alone_that_the_grist_cannot_give_is_asked_about()
    {
        _brewer.Begin().Until("lauter.run", RunStatus.Complete);

        _brewer.Keys("t").Choose("Kettle gravity").Line(Invariant(Expected(ReadingKind.Gravity) + 0.018, "0.000") + "@20");

        Assert.Matches(@"^1\.0\d\d and \d+\.\d L are \d+\.\d+ kg of extract; the grist has \d+\.\d+ kg\. Read again\?$", _brewer.Question);
        Assert.Empty(State.Readings);
    }

    [Fact]
    public void A_gravity_and_a_volume_a_little_off_do_not_quarrel()
    {
        _brewer.Begin().Until("lauter.run", RunStatus.Complete);
        var (litres, sg) = (Expected(ReadingKind.Volume), Expected(ReadingKind.Gravity));
        _brewer.Keys("t").Choose("Kettle volume").Line(Invariant(litres - 2, "0.0")).Keys("t").Choose("Kettle gravity").Line(Invariant(sg - 0.004, "0.000"));
        Assert.Null(_brewer.Question);
        Assert.Equal(2, State.Readings.Length);
    }

    private double Expected(ReadingKind kind) =>
        State.Plan!.Steps.First(s => s.Spec.Id == "lauter.run").Expected.First(e => e.Kind == kind).Value;

    private static string Invariant(double value, string format) => value.ToString(format, System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void The_run_off_calls_the_hands_before_heat_is_switched_and_when_it_is()
    {
        _brewer.Begin().Until("lauter.run");
        var said = new List<string>();
        var rung = new List<string>();
        for (var i = 0; i < 180 && _brewer.Session.Focus!.Act == FocusAct.Wait; i++)
        {
            _brewer.Wait(30);
            if (_brewer.Session.TakeBell())
                rung.Add(_brewer.Notice);
            said.Add(_brewer.Deck.Hands.ToString());
        }
        Assert.Contains(rung, n => n.StartsWith("In 2 minutes: kettle heat on", StringComparison.Ordinal) || n.EndsWith("seconds: kettle heat on, once its elements are covered.", StringComparison.Ordinal));
        Assert.Equal(1, rung.Count(n => n.StartsWith("Now kettle heat on", StringComparison.Ordinal)));
        Assert.Contains(said, s => s.StartsWith("Kettle heat on in ", StringComparison.Ordinal));
        Assert.Equal(1, rung.Count(n => n.StartsWith("Now tank heat off", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_day_that_is_over_shows_what_it_gave_and_what_can_be_done()
    {
        _brewer.Begin().RunUntil(s => s.Status == RunStatus.Complete);
        var deck = _brewer.Deck;
        Assert.Matches(@"^\d:\d\d$", deck.Big);
        Assert.Matches(@"^\d+\.\d L at 1\.04\d in the fermenter, \d+ IBU reckoned\.$", deck.Sentences[0].ToString());
        Assert.Equal("? c n p q space u", string.Join(' ', deck.Keys.Select(k => k.Key).Order(StringComparer.Ordinal)));
        Assert.Empty(deck.Next);
    }

    [Fact]
    public void A_day_that_was_given_up_does_not_look_as_if_it_went_on()
    {
        _brewer.Begin().Until("mash.rest-1").Keys("x").Line("abort");
        var deck = _brewer.Deck;
        Assert.Equal("until it was given up", deck.BigLabel.Split(',')[0]);
        Assert.Empty(deck.Next);
        Assert.Empty(deck.Background);
        Assert.Empty(deck.Circuits);
        Assert.Empty(deck.Outlook);
        Assert.DoesNotContain(deck.Keys, k => k.Does == "go on");
    }

    [Fact]
    public void Yeast_is_told_by_its_amount_in_the_plan_at_the_weigh_in_and_when_it_is_pitched()
    {
        _brewer.Begin();
        var plan = State.Plan!;
        var amount = YeastWords.Amount(plan, Notation.Metric);
        Assert.Matches(@"^\d\d g dried \(\d{3} billion cells\)$", amount);
        Assert.Contains(PlanLines.Totals(plan, Notation.Metric), t => t.Value == $"{plan.Recipe.Yeast.Name}, {amount}");
        Assert.All([StepKind.WeighIn, StepKind.Pitch], kind => Assert.Contains(
            HandsWords.Of(plan.Steps.First(s => s.Spec.Kind == kind), plan, Notation.Metric), s => s.Contains(amount, StringComparison.Ordinal)));
    }

    [Fact]
    public void Circuits_turned_on_the_plan_say_so_and_are_taken_back()
    {
        _brewer.Enter().Enter().Enter().Enter();
        var plan = _brewer.Text;
        _brewer.Keys("u");
        Assert.Equal("Nothing to take back.", _brewer.Notice);

        _brewer.Keys("c").Choose("1 circuit");
        Assert.StartsWith("The plan is changed. Now 1 circuit. ", _brewer.Notice, StringComparison.Ordinal);
        var turned = _brewer.Text;
        _brewer.Keys("u");

        Assert.NotEqual(plan, turned);
        Assert.Equal(plan.Split('\n')[..20], _brewer.Text.Split('\n')[..20]);
    }

    [Fact]
    public void Help_ends_with_the_words_of_the_trade()
    {
        var help = string.Join('\n', HelpText.Lines(rehearsal: false, Notation.Metric));
        Assert.All(
            ["vorlauf", "underlet", "cast-out", "knock-out", "dough-in", "strike", "grist", "mash-out", "sparge", "whirlpool", "trub", "lauter"],
            word => Assert.Matches($"(?m)^  {word} +[a-z]", help));
    }

    [Fact]
    public void The_log_names_a_limit_by_its_words()
    {
        var words = new EventWords(Quayside.Brewhouse, Notation.Metric, id => id);
        Assert.Equal(
            "alarm over: limit ahead, wort from the chiller",
            words.Of(new AlarmCleared(0, AlarmKind.LimitAhead, "pitch_temperature"), []));
    }

    [Fact]
    public void Undo_names_the_step_that_it_takes_back()
    {
        _brewer.Begin().Space().Wait(60).Space();
        Assert.Contains(_brewer.Screen.Keys, k => k.Key == "u" && k.Does.StartsWith("undo end of ", StringComparison.Ordinal));
    }
}
