using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>What a list says of its chosen row, whole: beside the list there is room for some of it only.</summary>
internal sealed class WholePage(Shell shell, ListScreen list) : TextPage(shell)
{
    protected override string Title => list.Title;

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => list.Details;
}
