using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Panes.Layouts;

namespace BrewDeck.Terminal.Panes;

/// <summary>The running deck, placed by <see cref="DeckLayout"/>.</summary>
internal sealed class DeckPane : Pane
{
    public override IEnumerable<Patch> Of(Screen screen, Size whole, Rectangle room) =>
        DeckLayout.Of((DeckScreen)screen, whole, room).Select(part => new Patch(part.Lines, part.Where, part.Block == Block.Big ? Surface.Digits : Surface.Ground));
}
