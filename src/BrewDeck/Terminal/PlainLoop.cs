using System.Threading.Channels;
using BrewDeck.Deck;
using BrewDeck.Deck.Plain;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Probes;

namespace BrewDeck.Terminal;

/// <summary>The deck in printed lines, for a screen reader or a pipe: nothing is drawn, and no escape sequence is sent.</summary>
internal sealed class PlainLoop(ISession session, TimeProvider time, TextReader input, TextWriter output, Notation notation, Action<string>? bell, ProbeMail? probe = null)
{
    private static readonly TimeSpan LongestTick = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan ShortestTick = TimeSpan.FromMilliseconds(15);

    /// <returns>True: the brewer left; false: the input has ended before.</returns>
    public bool Run()
    {
        var desk = new PlainDesk(session, notation);
        var lines = Channel.CreateUnbounded<string?>();
        // an empty place among the lines: the probe has said something
        void RingForProbe() => lines.Writer.TryWrite(null);
        if (probe is not null)
        {
            probe.Arrived += RingForProbe;
            RingForProbe(); // for what came before
        }

        new Thread(() => ReadInto(lines.Writer)) { IsBackground = true, Name = "lines" }.Start();
        Say(desk.Begin(), desk);
        while (!session.Ended)
        {
            if (lines.Reader.TryRead(out var line))
                Take(line, desk);
            else if (lines.Reader.Completion.IsCompleted)
                return false;
            else if (!Waited(lines.Reader))
                Say(desk.Tick(time.GetLocalNow()), desk);
        }

        return true;
    }

    private void Take(string? line, PlainDesk desk)
    {
        if (line is not null)
            Say(desk.Line(line, time.GetLocalNow()), desk);
        else
            probe?.Deliver(said => Say(desk.Meanwhile(said, time.GetLocalNow()), desk));
    }

    /// <returns>False: the time is up and no line came.</returns>
    private bool Waited(ChannelReader<string?> lines)
    {
        var wanted = session.NextTick is { } at ? at - time.GetLocalNow() : LongestTick;
        var wait = TimeSpan.FromTicks(Math.Clamp(wanted.Ticks, ShortestTick.Ticks, LongestTick.Ticks));
        return lines.WaitToReadAsync().AsTask().Wait(wait);
    }

    private void ReadInto(ChannelWriter<string?> lines)
    {
        while (input.ReadLine() is { } line) lines.TryWrite(line);
        lines.Complete();
    }

    private void Say(IReadOnlyList<string> lines, PlainDesk desk)
    {
        foreach (var line in lines)
            output.WriteLine(SafeText.OneLine(line));
        if (desk.Rang) bell?.Invoke(session.Title);

        output.Flush();
    }
}
