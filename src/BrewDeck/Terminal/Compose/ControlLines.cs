using System.Collections.Immutable;
using System.Globalization;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Trends;

namespace BrewDeck.Terminal.Compose;

/// <summary>A control chart in cells: a mark a batch, another mark for what stands out, the centre and the limits as lines across.</summary>
internal static class ControlLines
{
    public static ImmutableArray<Line> Of(ControlDrawing drawing, int width, int height)
    {
        var head = Head(drawing, width);
        var rows = height - head.Length - 2;
        double[] across = drawing.Chart is { } c ? [c.Lower, c.Upper] : [];
        if (ValueAxis.Of(drawing.Points.Select(p => p.Value).Concat(across), drawing.Format, rows, drawing.Notation) is not { } axis) return head;
        var cells = new CellGrid(Math.Max(1, width - axis.Gutter), rows);
        // more batches than columns: the last ones
        var shown = drawing.Points[^Math.Min(drawing.Points.Length, Math.Max(1, width - axis.Gutter))..];
        for (var i = 0; i < shown.Length; i++) Mark(shown[i], drawing.Chart, cells, Column(i, shown.Length, width - axis.Gutter), axis.Row(shown[i].Value, rows));
        if (drawing.Chart is { } chart)
        {
            Across(cells, axis.Row(chart.Centre, rows), width, '─');
            Across(cells, axis.Row(chart.Upper, rows), width, '┄');
            Across(cells, axis.Row(chart.Lower, rows), width, '┄');
        }

        return [.. head, .. cells.ToLines().Select((line, row) => axis.Beside(line, row, rows)), .. Batches(shown, axis.Gutter, width)];
    }

    private static ImmutableArray<Line> Head(ControlDrawing drawing, int width) =>
    [
        .. Lines.Join(Line.Of(drawing.Title, Tone.Strong), Line.Of($"   {drawing.Sums}", Tone.Muted)).Wrap(width),
        .. drawing.StandsOut == "" ? [] : Line.Of("! " + drawing.StandsOut, Tone.Warning).Wrap(width, indent: 2),
    ];

    private static void Mark(TrendPoint point, ControlChart? chart, CellGrid cells, int column, int row)
    {
        var outside = chart?.Outside.Contains(point) == true;
        var shifted = chart?.Shifted.Contains(point) == true;
        cells.Put(column, row, outside ? '▲' : shifted ? '◆' : '●', outside || shifted ? Tone.Warning : Tone.Strong);
    }

    private static void Across(CellGrid cells, int row, int width, char glyph)
    {
        for (var column = 0; column < width; column++) cells.PutBehind(column, row, glyph);
    }

    private static int Column(int index, int count, int width) => (int)((index + 0.5) / count * width);

    private static ImmutableArray<Line> Batches(ImmutableArray<TrendPoint> shown, int gutter, int width)
    {
        var line = new CellGrid(width - gutter, 1);
        var numbers = new CellGrid(width, 1);
        for (var i = 0; i < shown.Length; i++)
        {
            var column = Column(i, shown.Length, width - gutter);
            line.Put(column, 0, '┴', Tone.Muted);
            numbers.PutText(gutter + column, 0, shown[i].Batch.ToString(CultureInfo.InvariantCulture), Tone.Muted);
        }

        for (var column = 0; column < width; column++) line.PutBehind(column, 0, '─');
        return [Lines.Join(Line.Of("└".PadLeft(gutter), Tone.Muted), line.ToLines()[0]), Lines.Join(numbers.ToLines()[0]).CutTo(width)];
    }
}
