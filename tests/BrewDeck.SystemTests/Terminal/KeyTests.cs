using BrewDeck.Deck;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>What a keyboard sends, to what the session is told.</summary>
public sealed class KeyTests
{
    private static readonly TimeSpan EscapeGivenUp = TimeSpan.FromMilliseconds(60);

    [Theory]
    [InlineData(" ", KeyName.Space)]
    [InlineData("\r", KeyName.Enter)]
    [InlineData("\n", KeyName.Enter)]
    [InlineData("\t", KeyName.Tab)]
    [InlineData("\u007f", KeyName.Backspace)]
    [InlineData("\b", KeyName.Backspace)]
    [InlineData("\e[A", KeyName.Up)]
    [InlineData("\e[B", KeyName.Down)]
    [InlineData("\e[C", KeyName.Right)]
    [InlineData("\e[D", KeyName.Left)]
    [InlineData("\eOA", KeyName.Up)]
    [InlineData("\e[5~", KeyName.PageUp)]
    [InlineData("\e[6~", KeyName.PageDown)]
    [InlineData("\e[H", KeyName.Home)]
    [InlineData("\e[F", KeyName.End)]
    [InlineData("\e[1~", KeyName.Home)]
    [InlineData("\e[4~", KeyName.End)]
    [InlineData("\e[7~", KeyName.Home)]
    [InlineData("\e[8~", KeyName.End)]
    public void A_named_key_has_its_name(string sent, KeyName name) =>
        Assert.Equal([new KeyStroke(name)], Strokes(sent));

    [Theory]
    [InlineData("a", 'a')]
    [InlineData("A", 'A')]
    [InlineData("0", '0')]
    [InlineData("?", '?')]
    [InlineData("-", '-')]
    [InlineData(",", ',')]
    [InlineData("[", '[')]
    [InlineData("~", '~')]
    [InlineData("é", 'é')]
    [InlineData("°", '°')]
    public void A_character_is_itself(string sent, char character) =>
        Assert.Equal([KeyStroke.Of(character)], Strokes(sent));

    /// <summary>Chords, function keys and what the session has no word for are no input, and no text either.</summary>
    [Theory]
    [InlineData("\u0001")]
    [InlineData("\0")]
    [InlineData("\ea")]
    [InlineData("\eOP")]
    [InlineData("\e[15~")]
    [InlineData("\e[25~")]
    [InlineData("\e[34~")]
    [InlineData("\e[[A")]
    [InlineData("\e[[E")]
    [InlineData("\e[Z")]
    [InlineData("\e[3~")]
    [InlineData("\e[1;5C")]
    [InlineData("\eOO")]
    [InlineData("\e[99~")]
    [InlineData("\e[I")]
    [InlineData("\e[M !!")]
    [InlineData("\e[<0;10;10M")]
    [InlineData("😀")]
    public void What_has_no_word_is_dropped_and_the_next_key_is_heard(string sent) =>
        Assert.Equal([KeyStroke.Of('k')], Strokes(sent, "k"));

    [Fact]
    public void A_lone_escape_is_heard_after_its_time()
    {
        var time = new SteppedTime();
        using var bench = Open(time);
        bench.Type("\e");
        Assert.Empty(bench.Strokes);
        time.Pass(EscapeGivenUp);
        bench.Step();
        Assert.Equal([new KeyStroke(KeyName.Escape)], bench.Strokes);
    }

    [Fact]
    public void The_loop_wakes_for_a_lone_escape()
    {
        using var bench = Open(new SteppedTime());
        Assert.Null(bench.Toolkit.UntilDue());
        bench.Type("\e");
        Assert.InRange(bench.Toolkit.UntilDue()!.Value.TotalMilliseconds, 50, 60);
    }

    [Fact]
    public void A_sequence_that_arrives_in_pieces_is_one_key()
    {
        using var bench = Open(new SteppedTime());
        foreach (var piece in new[] { "\e", "[", "5", "~" }) bench.Type(piece);
        Assert.Equal([new KeyStroke(KeyName.PageUp)], bench.Strokes);
    }

    [Fact]
    public void A_burst_keeps_its_order()
    {
        using var bench = Open(new SteppedTime());
        bench.Type("ab\e[Ac\rd");
        Assert.Equal(
            [KeyStroke.Of('a'), KeyStroke.Of('b'), new(KeyName.Up), KeyStroke.Of('c'), new(KeyName.Enter), KeyStroke.Of('d')],
            bench.Strokes);
    }

    [Fact]
    public void Ctrl_c_and_ctrl_z_go_to_the_host_and_not_to_the_session()
    {
        using var bench = Open(new SteppedTime());
        bench.Type("\u0003\u001a");
        Assert.Equal((1, 1), (bench.Stops, bench.Suspends));
        Assert.Empty(bench.Session.Received);
    }

    [Fact]
    public void Pasted_text_is_not_taken_for_keys()
    {
        using var bench = Open(new SteppedTime());
        bench.Type("\e[200~q u\r\e[201~k");
        Assert.Equal([KeyStroke.Of('k')], bench.Strokes);
    }

    [Fact]
    public void What_the_session_throws_is_not_taken_for_a_fault_of_the_parser()
    {
        using var bench = new Bench(
            new RecordingSession(SampleScreens.Rest) { OnReceive = (_, input) => Fail(input) }, new SteppedTime());
        Assert.Equal("of the session", Assert.Throws<NullReferenceException>(() => bench.Type("k")).Message);
    }

    private static void Fail(Input input)
    {
        if (input is Input.Key) throw new NullReferenceException("of the session");
    }

    private static Bench Open(TimeProvider time) => new(new RecordingSession(SampleScreens.Rest), time);

    private static IReadOnlyList<KeyStroke> Strokes(params string[] bursts)
    {
        var time = new SteppedTime();
        using var bench = Open(time);
        foreach (var burst in bursts)
        {
            bench.Type(burst);
            time.Pass(EscapeGivenUp);
            bench.Step();
        }

        return bench.Strokes;
    }
}
