using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>All keys, from the key table.</summary>
internal sealed class HelpPage(Shell shell) : TextPage(shell)
{
    protected override string Title => Shell.Notation.Text("Keys");

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => HelpText.Lines(Shell.Ports.Rehearsal is not null, Shell.Notation);
}
