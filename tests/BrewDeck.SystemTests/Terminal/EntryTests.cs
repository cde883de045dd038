using BrewDeck.Deck;
using BrewDeck.Deck.Screens;

namespace BrewDeck.SystemTests.Terminal;

public sealed class EntryTests
{
    [Fact]
    public void A_burst_that_opens_a_line_is_typed_into_it_to_its_end()
    {
        using var bench = Asking();
        bench.Type("67.2\r");
        Assert.Equal(
            [
                new Input.Key(KeyStroke.Of('6')), new Input.Typed("67"), new Input.Typed("67."), new Input.Typed("67.2"),
                new Input.Submitted("67.2"),
            ],
            bench.Session.Received);
    }

    [Fact]
    public void The_line_and_its_hint_are_seen()
    {
        using var bench = Asking();
        bench.Type("67.2");
        Assert.Contains("│ 67.2 ", bench.Text(), StringComparison.Ordinal);
        Assert.Contains("understood as 67.2", bench.Text(), StringComparison.Ordinal);
        Assert.True(bench.Toolkit.Cursor.IsVisible);
    }

    [Fact]
    public void The_cursor_is_hidden_when_nothing_is_typed()
    {
        using var bench = Asking();
        Assert.False(bench.Toolkit.Cursor.IsVisible);
        bench.Type("6\r");
        Assert.False(bench.Toolkit.Cursor.IsVisible);
    }

    [Fact]
    public void Escape_is_a_key_for_the_session_and_the_line_is_gone()
    {
        var time = new SteppedTime();
        using var bench = Asking(time);
        bench.Type("67\e");
        time.Pass(TimeSpan.FromMilliseconds(60));
        bench.Step();
        Assert.Equal(new Input.Key(new KeyStroke(KeyName.Escape)), bench.Session.Received[^1]);
        Assert.DoesNotContain("Reading of the tun", bench.Text(), StringComparison.Ordinal);
        Assert.Contains("q", bench.Type("q").Strokes.Select(s => s.Character.ToString()));
    }

    [Theory]
    [InlineData("67\u007f8", "68")]
    [InlineData("67\b8", "68")]
    [InlineData("67\e[D.", "6.7")]
    [InlineData("67\e[H1", "167")]
    [InlineData("67\e[H\e[3~", "7")]
    [InlineData("67 C", "67 C")]
    [InlineData("67\e[5~\e[15~\u0001.", "67.")]
    [InlineData("6\e[200~7.5\r\n9\e[201~1", "67.51")]
    [InlineData("6é°", "6é°")]
    public void The_line_is_edited_as_usual(string keys, string text)
    {
        using var bench = Asking();
        bench.Type(keys);
        Assert.Equal(new Input.Typed(text), bench.Session.Received[^1]);
    }

    /// <summary>Another kind of reading: what the key line names must come through while something is typed.</summary>
    [Theory]
    [InlineData("67\t", KeyName.Tab)]
    [InlineData("\e[A", KeyName.Up)]
    [InlineData("6\e[B", KeyName.Down)]
    public void Tab_and_arrows_up_and_down_are_keys_for_the_session(string keys, KeyName name)
    {
        using var bench = Asking();
        bench.Type(keys);
        Assert.Equal(new Input.Key(new KeyStroke(name)), bench.Session.Received[^1]);
    }

    [Fact]
    public void A_refused_line_gives_way_to_what_is_typed_and_an_arrow_keeps_it_to_be_put_right()
    {
        using var bench = Asking(refuse: true);
        bench.Type("6x\r");
        Assert.Contains("! not a number", bench.Text(), StringComparison.Ordinal);
        Assert.Contains("6x", bench.Text(), StringComparison.Ordinal);
        bench.Type("7");
        Assert.Equal(new Input.Typed("7"), bench.Session.Received[^1]);
        bench.Type("x\r\e[F\u007f8");
        Assert.Equal(new Input.Typed("78"), bench.Session.Received[^1]);
    }

    [Fact]
    public void The_next_question_begins_with_its_own_text()
    {
        using var bench = Asking();
        bench.Type("67\r8");
        Assert.Equal("8", bench.Pump.Window.Entry.Typed);
        bench.Type("0");
        Assert.Equal(new Input.Typed("80"), bench.Session.Received[^1]);
    }

    [Fact]
    public void A_tick_leaves_the_line_and_the_cursor_alone()
    {
        using var bench = Asking();
        bench.Type("679\e[D");
        var cursor = bench.Toolkit.Cursor.Position;
        bench.Pump.Receive(new Input.Tick());
        bench.Step();
        Assert.Equal(("679", cursor), (bench.Pump.Window.Entry.Typed, bench.Toolkit.Cursor.Position));
    }

    /// <summary>Answers as a session does: a digit opens the line, Enter and Esc close it.</summary>
    private static Bench Asking(SteppedTime? time = null, bool refuse = false)
    {
        static EntryOverlay Ask(string initial) => new("Reading of the tun", initial, Line.Of("°C"), null);
        var session = new RecordingSession(SampleScreens.Rest)
        {
            OnReceive = (me, input) => me.Screen = input switch
            {
                Input.Key { Stroke.Character: >= '0' and <= '9' } key =>
                    SampleScreens.Rest with { Overlay = Ask(key.Stroke.Character.ToString()) },
                Input.Typed typed when me.Screen.Overlay is EntryOverlay open =>
                    SampleScreens.Rest with { Overlay = open with { Hint = Line.Of($"understood as {typed.Text}"), Fault = null } },
                Input.Submitted when refuse && me.Screen.Overlay is EntryOverlay open =>
                    SampleScreens.Rest with { Overlay = open with { Fault = Line.Of("not a number", Tone.Warning) } },
                Input.Tick => me.Screen,
                _ => SampleScreens.Rest,
            },
        };
        return new Bench(session, time ?? new SteppedTime());
    }
}
