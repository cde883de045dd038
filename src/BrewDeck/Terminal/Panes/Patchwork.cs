using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.ViewBase;

namespace BrewDeck.Terminal.Panes;

/// <summary>
/// All that one view shows, in patches; a later one covers an earlier one. One view with all of them, since each view of its own costs the toolkit
/// a cut of its clip: a sixth of an idle deck, when each part of it was a view.
/// </summary>
internal sealed class Patchwork
{
    private readonly View _view;
    private readonly Look _look;
    private readonly Surface _ground;
    private ImmutableArray<Patch> _patches = [];

    /// <param name="view">It says itself that nothing is cleared before: from an event for that the toolkit would mark it to be drawn again.</param>
    public Patchwork(View view, Look look, Surface ground = Surface.Ground)
    {
        (_view, _look, _ground) = (view, look, ground);
        view.DrawingContent += (_, _) => Draw();
    }

    public void Show(ImmutableArray<Patch> patches)
    {
        if (patches.AsSpan().SequenceEqual(_patches.AsSpan())) return;
        _patches = patches;
        _view.SetNeedsDraw();
    }

    /// <summary>Each row of the view to its end, so that nothing needs to be cleared before.</summary>
    private void Draw()
    {
        var brush = new RowBrush(_view);
        var blank = _look.Ink(Tone.Normal, _ground);
        for (var row = 0; row < brush.Rows; row++)
        {
            brush.Begin(row, blank);
            foreach (var patch in _patches) Write(ref brush, patch, row);
            brush.End();
        }
    }

    private void Write(ref RowBrush brush, Patch patch, int row)
    {
        if (row < patch.Where.Top || row >= patch.Where.Bottom) return;
        brush.Go(patch.Where.Left, patch.Where.Right, _look.Ink(Tone.Normal, patch.Surface));
        var line = row - patch.Where.Top;
        if (line >= patch.Lines.Length) return;
        var surface = patch.SurfaceOf(line);
        foreach (var span in patch.Lines[line].Spans) brush.Write(span.Text, _look.Ink(span.Tone, surface));
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
