using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Compose;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.ViewBase;

namespace BrewDeck.Terminal.Panes;

/// <summary>Shows lines in their tones. Drawn again only when they or the place have changed.</summary>
internal sealed class LinesView : View
{
    private readonly Look _look;
    private readonly Surface _surface;
    private ImmutableArray<Line> _lines = [];
    private int _chosen = -1;
    private int _chosenRows;

    public LinesView(Look look, Surface surface = Surface.Ground)
    {
        (_look, _surface) = (look, surface);
        CanFocus = false;
        SetScheme(look.Scheme(surface));
    }

    /// <param name="lines">As wide as the place at most.</param>
    /// <param name="where">Empty: not shown.</param>
    /// <param name="chosen">The first line of the chosen row; -1: none.</param>
    /// <param name="chosenRows">How many lines it takes.</param>
    public void Show(ImmutableArray<Line> lines, Rectangle where, int chosen = -1, int chosenRows = 1)
    {
        this.Place(where);
        if (chosen == _chosen && chosenRows == _chosenRows && Lines.Same(lines, _lines)) return;
        (_lines, _chosen, _chosenRows) = (lines, chosen, chosenRows);
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        for (var row = 0; row < Math.Min(_lines.Length, Viewport.Height); row++)
        {
            Move(0, row);
            foreach (var span in _lines[row].Spans)
            {
                SetAttribute(_look.Ink(span.Tone, row >= _chosen && row < _chosen + _chosenRows && _chosen >= 0 ? Surface.Chosen : _surface));
                AddStr(span.Text);
            }
        }

        return true;
    }
}

internal static class Placing
{
    /// <summary>Moves a view; one with no room is hidden.</summary>
    public static void Place(this View view, Rectangle where)
    {
        var seen = where is { Width: > 0, Height: > 0 };
        if (view.Visible != seen) view.Visible = seen;
        if (seen && view.Frame != where) view.Frame = where;
    }
}
