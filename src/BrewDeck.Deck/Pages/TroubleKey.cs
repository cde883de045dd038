using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>Something is wrong that no reading shows: a short list of what can be at this step, and of what is over.</summary>
internal sealed class TroubleKey(Shell shell, DeckPage page, BrewDay day, Acts acts)
{
    public void Strike(DateTimeOffset now)
    {
        ImmutableArray<Trouble> over = [.. Possible.Standing(day.State)], can = [.. Possible.At(day.State)];
        if (over.IsEmpty && can.IsEmpty)
        {
            shell.Say(shell.Ports.Rehearsal is { Signs.Count: > 0 }
                ? shell.Notation.Text("There is nothing of that kind to report: m says what the hands can do about what shows itself.")
                : shell.Notation.Text("Whatever goes wrong here shows in a reading: take it (t)."));
            return;
        }
        string Title(string step) => page.Moment(now).Title(step);
        page.Ask(new ChoiceAsk(
            page,
            shell.Notation.Text("What is wrong?"),
            [.. over.Any(t => t.Kind == TroubleKind.CircuitTripped) ? TroubleWords.OfCurrent(shell.Notation).Select(l => Line.Of(l, Tone.Warning)) : []],
            [
                .. over.Select(t => new Row([Names.Sentence(TroubleWords.Over(t, page.Brewhouse, Title, shell.Notation))])),
                .. can.Select(t => new Row([Names.Sentence(TroubleWords.Happens(t, page.Brewhouse, Title, shell.Notation)), TroubleWords.Shows(t.Kind, shell.Notation)])),
            ],
            (row, at) => acts.Do(row < over.Length ? new RunCommand.Clear(over[row]) : new RunCommand.Report(can[row - over.Length]), at)));
    }
}
