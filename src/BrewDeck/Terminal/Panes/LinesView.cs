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

    /// <summary>Each row is written to its end: nothing needs to be cleared before.</summary>
    protected override bool OnClearingViewport() => true;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var brush = new RowBrush(this);
        var blank = _look.Ink(Tone.Normal, _surface);
        for (var row = 0; row < brush.Rows; row++)
        {
            brush.Begin(row);
            if (row < _lines.Length) Write(ref brush, row);
            brush.Blank(blank);
        }

        return true;
    }

    private void Write(ref RowBrush brush, int row)
    {
        var surface = _chosen >= 0 && row >= _chosen && row < _chosen + _chosenRows ? Surface.Chosen : _surface;
        foreach (var span in _lines[row].Spans) brush.Write(span.Text, _look.Ink(span.Tone, surface));
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
