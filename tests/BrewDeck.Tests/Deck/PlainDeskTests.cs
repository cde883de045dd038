using System.Globalization;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Plain;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class PlainDeskTests
{
    private readonly MemoryStore _store = new();
    private readonly Session _session;
    private readonly PlainDesk _desk;
    private readonly List<string> _heard = [];
    private DateTimeOffset _now = Player.Morning;
    private int _values;

    public PlainDeskTests()
    {
        var settings = new SessionSettings { ProgramVersion = "test", DoubleStrike = TimeSpan.Zero, LeaveAlone = TimeSpan.Zero };
        _session = new Session(new SessionPorts(_store, new TwoHouses()), settings, _now);
        _desk = new PlainDesk(_session, Notation.Metric);
        _heard.AddRange(_desk.Begin());
    }

    [Fact]
    public void A_whole_day_is_brewed_by_words_and_values()
    {
        Begin();
        for (var i = 0; i < 500 && _session.State!.Status != RunStatus.Complete; i++)
            GoOn();

        Assert.Equal(RunStatus.Complete, _session.State!.Status);
        Assert.True(_values > 3, $"{_values} values");
        Assert.Equal(_values, _session.State.Readings.Length);
        foreach (var step in _session.State.Plan!.Steps.Where(s => !s.Spec.Background))
            Assert.Contains(_heard, line => line.Contains(BrewDeck.Deck.Wording.StepTitles.Of(step, _session.State.Plan, BrewDeck.Deck.Wording.Notation.Metric), StringComparison.Ordinal));
        Assert.Contains(_heard, line => line.StartsWith("Caution: ", StringComparison.Ordinal));
        Assert.Contains(_heard, line => line.StartsWith("Hands now.", StringComparison.Ordinal));
        Assert.True(_heard.Count < 2500, $"{_heard.Count} lines in a day are too many to listen to");
    }

    [Fact]
    public void Nothing_is_said_while_only_the_seconds_pass()
    {
        Begin();
        Line("go on");
        _heard.Clear();
        for (var i = 0; i < 20; i++)
            Tick(TimeSpan.FromSeconds(1));

        Assert.Empty(_heard);
    }

    [Fact]
    public void An_alarm_is_said_once_when_it_comes_up()
    {
        Begin();
        Line("go on");
        Tick(TimeSpan.FromMinutes(1));
        Line("go on");
        _heard.Clear();
        for (var i = 0; i < 8; i++)
            Tick(TimeSpan.FromMinutes(5));

        Assert.Single(_heard, line => line.Contains("This waits for you", StringComparison.Ordinal) && !line.StartsWith("Bell: ", StringComparison.Ordinal));
        Assert.Contains(_heard, line => line.StartsWith("Bell: ", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_key_of_the_deck_has_its_word()
    {
        Begin();
        foreach (var binding in KeyMap.Table.Where(b => b.Where.HasFlag(KeyContext.Deck) && b.Command != Command.Reading))
        {
            var stroke = Assert.IsType<Input.Key>(Assert.Single(PlainWords.Of(binding.Shown, _session.Screen, KeyContext.Deck, Notation.Metric)!)).Stroke;
            Assert.Equal(binding.Command, KeyMap.Find(KeyContext.Deck, stroke)!.Command);
        }
        Assert.Equal("run sheet", Assert.Single(PlainWords.Said(KeyContext.Deck, Notation.Metric).Split(", "), w => w == "run sheet"));
    }

    [Fact]
    public void A_question_takes_a_line_a_number_or_esc()
    {
        Begin();
        Line("note");
        Assert.Contains("Note", _heard);
        Line("stirred twice");
        Assert.Equal("stirred twice", Assert.IsType<NoteWritten>(_store[1][^1]).Text);
        Line("other reading");
        Assert.Contains("Which reading?", _heard);
        Assert.Contains(_heard, line => line.StartsWith("2: ", StringComparison.Ordinal));
        Line("esc");
        Assert.Null(_session.Screen.Overlay);
        Line("wash the dog");
        Assert.Contains("Nothing here is called \"wash the dog\".", _heard);
    }

    [Fact]
    public void A_question_is_left_by_the_words_that_leave_and_says_what_it_takes()
    {
        Begin();
        foreach (var leaves in (string[])["q", "quit", "back", "esc"])
        {
            Line("other reading");
            Assert.NotNull(_session.Screen.Overlay);
            Line(leaves);
            Assert.Null(_session.Screen.Overlay);
        }
        Line("other reading");
        _heard.Clear();
        Line("remedies");
        Assert.Contains(_heard, line => line.StartsWith("A question is open", StringComparison.Ordinal) && line.Contains("back leaves it", StringComparison.Ordinal));
        Line("help");
        Assert.Contains("Which reading?", _heard);
    }

    [Fact]
    public void A_value_is_left_by_the_same_words_and_what_it_does_not_take_says_which()
    {
        Begin();
        foreach (var leaves in (string[])["q", "quit", "back", "esc"])
        {
            Line("note");
            Assert.IsType<EntryOverlay>(_session.Screen.Overlay);
            Line(leaves);
            Assert.Null(_session.Screen.Overlay);
        }
        Assert.Empty(_store[1].OfType<NoteWritten>());
        Line("other reading");
        Line("1");
        foreach (var word in (string[])["skip", "other reading", "help"])
        {
            _heard.Clear();
            Line(word);
            Assert.IsType<EntryOverlay>(_session.Screen.Overlay);
            Assert.Contains(_heard, line => line.Contains("back leaves it as it was", StringComparison.Ordinal));
        }
        Line("back");
        Assert.Null(_session.Screen.Overlay);
    }

    [Fact]
    public void What_is_off_plan_is_said_with_one_colon()
    {
        Begin();
        var off = Assert.IsType<DeckScreen>(_session.Screen) with { Outlook = [new OutlookItem("into fermenter off plan 23.0 L:", "23.7 L", "", Tone.Warning)] };
        Assert.Contains("Outlook, into fermenter off plan 23.0 L: 23.7 L.", PlainSpeech.Whole(off, Notation.Metric));
    }

    [Fact]
    public void Nothing_is_said_of_a_key_that_plain_mode_does_not_have()
    {
        Begin();
        Line("go on");
        Assert.Contains("Hands now. Type \"go on\" when you begin.", _heard);
        Assert.Contains("Waiting to start: 0:00.", _heard);
        Assert.DoesNotContain(_heard, line => line.Contains("Space", StringComparison.Ordinal));
        Assert.Contains(_heard, line => line.StartsWith("The cursor is on 1: Quayside 65", StringComparison.Ordinal));
        Assert.DoesNotContain(_heard, line => line.Contains("choice Into", StringComparison.Ordinal));
    }

    [Fact]
    public void A_value_of_another_kind_and_an_off_word_are_answered_in_words()
    {
        Begin();
        Line("charts");
        Assert.IsType<ChartScreen>(_session.Screen);
        Assert.Contains(_heard, line => line.EndsWith("nothing read.", StringComparison.Ordinal));
        Line("back");
        Line("run sheet");
        Assert.Contains(_heard, line => line.StartsWith("Run sheet", StringComparison.Ordinal));
        Line("back");
        _heard.Clear();
        Line("");
        Assert.Contains(_heard, line => line.StartsWith("Outlook, gravity", StringComparison.Ordinal));
    }

    private void Begin()
    {
        foreach (var line in (string[])["choose", "1", "1", "see the plan", "brew this"])
            Line(line);
        Assert.IsType<DeckScreen>(_session.Screen);
    }

    private void GoOn()
    {
        var focus = _session.Focus!;
        var step = _session.Forecast!.Rest.FirstOrDefault(s => s.Spec.Id == focus.StepId);
        var due = DateTimeOffset.FromUnixTimeMilliseconds(
            focus.Act == FocusAct.Finish ? _session.State!.MsAt(step?.EndS ?? 0, _now.ToUnixTimeMilliseconds()) : focus.DueMs);
        if (due > _now)
            Tick(due - _now);
        if (_session.Focus!.Act == FocusAct.Wait)
            return;
        if (focus.Act == FocusAct.Finish && step is { Expected: [var expected, ..] })
        {
            _values++;
            Line(expected.Value.ToString(expected.Kind == ReadingKind.Gravity ? "0.000" : "0.0", CultureInfo.InvariantCulture));
        }
        Line("go on");
        // asked once for a reading that nothing else would give: done without
        if (_session.Screen.Overlay is ChoiceOverlay { Options: [_, { Cells: ["Read it now"] }] })
            Line("choose");
    }

    private void Line(string text)
    {
        _now = _now.AddSeconds(2);
        _heard.AddRange(_desk.Line(text, _now));
    }

    private void Tick(TimeSpan time)
    {
        _now += time;
        _heard.AddRange(_desk.Tick(_now));
    }
}
