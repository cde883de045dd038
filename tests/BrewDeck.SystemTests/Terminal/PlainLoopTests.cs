using BrewDeck.Deck.Wording;
using BrewDeck.Terminal;

namespace BrewDeck.SystemTests.Terminal;

public sealed class PlainLoopTests
{
    [Fact]
    public void Lines_go_in_and_come_out_and_nothing_that_a_terminal_obeys()
    {
        var hostile = SampleScreens.Rest with { Title = "Amber\e[2J\u202e" };
        using var output = new StringWriter();
        using var input = new StringReader("\nwash the dog\n");

        var left = new PlainLoop(new RecordingSession(hostile), new SteppedTime(), input, output, Notation.Metric, null).Run();

        Assert.False(left);
        var said = output.ToString();
        Assert.DoesNotContain(said, c => c is '\e' or '\u202e');
        Assert.Contains("HOLD 66 °C", said, StringComparison.Ordinal);
        Assert.Contains("Nothing here is called \"wash the dog\".", said, StringComparison.Ordinal);
    }
}
