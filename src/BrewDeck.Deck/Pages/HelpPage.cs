using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>All keys, from the key table; those of the place that it was opened from stand first.</summary>
internal sealed class HelpPage(Shell shell, KeyContext from) : TextPage(shell)
{
    protected override string Title => Shell.Notation.Text("Keys");

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => HelpText.Lines(Shell.Ports.Rehearsal is not null, Shell.Notation, from);
}
