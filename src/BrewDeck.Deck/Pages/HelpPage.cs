using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>All keys, from the key table; those of the place that it was opened from stand first.</summary>
internal sealed class HelpPage(Shell shell, KeyContext from) : TextPage(shell)
{
    private readonly IEnumerable<Line> _lines = HelpText.Lines(shell.Ports.Rehearsal is not null, shell.Notation, from);

    protected override string Title => Shell.Notation.Text("Keys");

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => _lines;
}
