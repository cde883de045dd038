using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Runs;

/// <summary>Says once that the computer's clock went back while a batch runs: its record waits until the clock has caught up.</summary>
internal sealed class ClockSetBack(Shell shell)
{
    /// <summary>Clocks are put right by seconds all the time; common practice, no source.</summary>
    private const long LeastMs = 60_000;

    private long _latest;
    private bool _said;

    public void Look(DateTimeOffset now)
    {
        if (shell.Ports.Rehearsal is not null || shell.Day is not { Over: false } day)
            return;
        var at = now.ToUnixTimeMilliseconds();
        _latest = Math.Max(_latest, day.Ms(now));
        if (_latest - at < LeastMs)
            _said = false;
        else if (!_said)
        {
            _said = true;
            shell.Say(shell.Notation.Text($"The computer's clock went back by {Durations.Words((_latest - at) / 1000.0, shell.Notation)}: the deck was at {shell.Notation.Clock(_latest)} already. Set it right, and go by a watch until then."), Tone.Warning);
        }
    }
}
