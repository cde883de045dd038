using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Panes;

/// <summary>Lays out one kind of screen between the title and the notice.</summary>
internal abstract class Pane
{
    /// <param name="screen">Of the kind that the pane is for.</param>
    /// <param name="whole">Size of the terminal.</param>
    /// <param name="room">Where the patches go.</param>
    public abstract IEnumerable<Patch> Of(Screen screen, Size whole, Rectangle room);

    /// <summary>Of a page of text or rows: a margin at both sides, and a blank row above where there is room for it.</summary>
    protected static Rectangle Page(Size whole, Rectangle room)
    {
        var page = Rectangle.Inflate(room, -1, 0);
        return whole.Height >= 24 ? page with { Y = page.Y + 1, Height = page.Height - 1 } : page;
    }

    /// <summary>The bar that tells where in its whole a page is.</summary>
    protected static Patch Place(ImmutableArray<Line> bar, int column, int row) => new(bar, new Rectangle(column, row, 1, bar.Length));
}
