using System.Text;
using BrewDeck.Deck;

namespace BrewDeck.SystemTests.Terminal;

public sealed class FuzzTests
{
    private const int Bursts = 20_000;
    private static readonly TimeSpan LongestHeld = TimeSpan.FromSeconds(6);

    private static readonly string[] Pieces =
    [
        "\e", "[", "O", "]", "P", "~", ";", ":", "<", "?", "M", "I", "1", "25", "200", "201", "a", "Z", " ", "\r", "\u0003", "\u001a", "\a", "\\", "\u009b", "é", "\ud83d", "😀", "\0", "\u007f",
    ];

    /// <summary>Whatever a line that crackles sends: no exception, no endless wait, and the next key is heard.</summary>
    [Fact]
    public void Nonsense_never_stops_the_keyboard()
    {
        var time = new SteppedTime();
        var random = new Random(20260314);
        using var bench = new Bench(new RecordingSession(SampleScreens.Rest), time);
        for (var burst = 0; burst < Bursts; burst++)
        {
            bench.Type(Burst(random));
            time.Pass(TimeSpan.FromMilliseconds(random.Next(80)));
        }

        time.Pass(LongestHeld);
        bench.Step();
        bench.Step();
        Assert.Null(bench.Toolkit.UntilDue());
        bench.Session.Received.Clear();
        bench.Type("k");
        Assert.Equal([KeyStroke.Of('k')], bench.Strokes);
    }

    private static string Burst(Random random)
    {
        var burst = new StringBuilder();
        for (var piece = random.Next(1, 9); piece > 0; piece--) burst.Append(Pieces[random.Next(Pieces.Length)]);
        return burst.ToString();
    }
}
