using System.Collections.Immutable;
using System.Drawing;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Compose;

namespace BrewDeck.Terminal.Panes;

/// <summary>Drawings of the day under each other, as many as can be read, from the chosen one on.</summary>
internal sealed class ChartPane : Pane
{
    /// <summary>A drawing on fewer rows cannot be read.</summary>
    private const int LeastRows = 13;

    public override IEnumerable<Patch> Of(Screen screen, Size whole, Rectangle room)
    {
        var chart = (ChartScreen)screen;
        var page = Rectangle.Inflate(room, -1, 0);
        var shown = Math.Clamp(page.Height / LeastRows, 1, Math.Max(1, chart.Drawings.Length));
        var each = page.Height / shown;
        // the last ones stay in sight together
        var first = Math.Clamp(chart.Selected, 0, chart.Drawings.Length - Math.Min(shown, chart.Drawings.Length));
        var lines = chart.Drawings.Skip(first).Take(shown).SelectMany(drawing => Filled(Lines(drawing, chart.Offset, page.Width, each), each));
        return [new Patch([.. lines], page)];
    }

    private static ImmutableArray<Line> Lines(Drawing drawing, int offset, int width, int height) => drawing switch
    {
        CurveDrawing curves => CurveLines.Of(curves, width, height),
        TimetableDrawing timetable => TimetableLines.Of(timetable, width, height, offset),
        ControlDrawing control => ControlLines.Of(control, width, height),
        _ => throw new NotSupportedException(drawing.GetType().Name),
    };

    private static IEnumerable<Line> Filled(ImmutableArray<Line> lines, int rows) =>
        lines.Concat(Enumerable.Repeat(Compose.Lines.Empty, Math.Max(0, rows - lines.Length))).Take(rows);
}
