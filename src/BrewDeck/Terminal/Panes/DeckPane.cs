using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Panes.Layouts;

namespace BrewDeck.Terminal.Panes;

/// <summary>The running deck: a view for each part, placed by <see cref="DeckLayout"/>.</summary>
internal sealed class DeckPane : Pane
{
    private readonly Dictionary<Block, LinesView> _views;

    public DeckPane(Look look)
        : base(look) => _views = Enum.GetValues<Block>().ToDictionary(block => block, block => AddLines(block == Block.Big ? Surface.Digits : Surface.Ground));

    public override void Show(Screen screen, Size whole)
    {
        var placed = DeckLayout.Of((DeckScreen)screen, whole, Room).ToDictionary(part => part.Block);
        foreach (var (block, view) in _views)
        {
            if (placed.TryGetValue(block, out var part))
                view.Show(part.Lines, part.Where);
            else
                view.Show([], Rectangle.Empty);
        }
    }
}
