using System.Collections.Immutable;
using BrewDeck.Deck.Charts;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Terminal.Compose;

/// <summary>
/// A chart of the day in cells. Vessels differ by dash and mark and by their names beside the lines, never by colour alone.
/// </summary>
internal static class CurveLines
{
    private const string Marks = "●■▲◆▼";
    private static readonly (int Drawn, int Period)[] Dashes = [(1, 1), (5, 8), (1, 3), (3, 5), (1, 5)];

    public static ImmutableArray<Line> Of(CurveDrawing drawing, int width, int height)
    {
        var head = Head(drawing, width);
        var rows = height - head.Length - 2;
        if (ValueAxis.Of(drawing.Chart, rows, drawing.Notation) is not { } axis) return head;
        var gutter = axis.Gutter;
        var plot = new Plot(drawing, axis, Math.Max(1, width - gutter), rows);
        return
        [
            .. head,
            .. plot.Draw().Select((line, row) => axis.Beside(line, row, rows)),
            .. HourLines.Of(drawing.Axis, gutter, Math.Max(1, width - gutter)),
        ];
    }

    private static ImmutableArray<Line> Head(CurveDrawing drawing, int width)
    {
        var chart = drawing.Chart;
        var marks = chart.Curves.Where(c => c.Read.Length > 0).Select(c => $"{Marks[c.Vessel % Marks.Length]} {c.Name}").ToList();
        string[] says =
        [
            LayoutWords.Read(marks, drawing.Notation),
            LayoutWords.Curves(chart.Curves.Any(c => c.Expected.Length > 0), drawing.Notation),
            .. chart.Band is null ? Array.Empty<string>() : [LayoutWords.Band(drawing.Notation)],
        ];
        return Lines.Join(Line.Of($"{chart.Title}, {chart.Unit}", Tone.Strong), Line.Of("   " + string.Join("   ", says), Tone.Muted)).Wrap(width);
    }

    private sealed class Plot(CurveDrawing drawing, ValueAxis axis, int width, int height)
    {
        private readonly CellGrid _cells = new(width, height);

        public ImmutableArray<Line> Draw()
        {
            var dots = new DotGrid(width, height);
            foreach (var curve in drawing.Chart.Curves) Trace(curve.Planned, curve.Vessel, Tone.Muted, dots);
            foreach (var curve in drawing.Chart.Curves) Trace(curve.Expected, curve.Vessel, Tone.Normal, dots);
            dots.CopyTo(_cells);
            if (drawing.Chart.Band is { } band) Upright(band);
            foreach (var curve in drawing.Chart.Curves) Mark(curve);
            foreach (var curve in drawing.Chart.Curves) Name(curve);
            if (drawing.Axis.NowS is { } now)
            {
                for (var row = 0; row < height; row++) _cells.PutBehind(HourLines.Column(now, drawing.Axis, width), row, '│');
            }

            return _cells.ToLines();
        }

        private int Column(double atS) => HourLines.Column(atS, drawing.Axis, width);

        private int Row(double value) => axis.Row(value, height);

        private (int X, int Y) Dot(CurvePoint point, DotGrid dots) => (
            (int)(point.AtS / Math.Max(1, drawing.Axis.EndS) * (dots.Across - 1)),
            Math.Clamp((int)((1 - axis.Share(point.Value)) * (dots.Down - 0.001)), 0, dots.Down - 1));

        private void Trace(ImmutableArray<CurvePoint> points, int vessel, Tone tone, DotGrid dots)
        {
            var (drawn, period) = Dashes[vessel % Dashes.Length];
            var phase = 0;
            for (var i = 1; i < points.Length; i++)
            {
                if (double.IsFinite(points[i - 1].Value) && double.IsFinite(points[i].Value))
                    phase = dots.Stroke(Dot(points[i - 1], dots), Dot(points[i], dots), tone, drawn, period, phase);
            }
        }

        private void Upright(ChartBand band)
        {
            for (var row = Row(band.High); row <= Row(band.Low); row++) _cells.Put(Column(band.AtS), row, '┃', Tone.Strong);
        }

        private void Mark(DayCurve curve)
        {
            foreach (var point in curve.Read.Where(p => double.IsFinite(p.Value)))
                _cells.Put(Column(point.AtS), Row(point.Value), Marks[curve.Vessel % Marks.Length], Tone.Strong);
        }

        /// <summary>Above or below the longest stretch of the line that has room.</summary>
        private void Name(DayCurve curve)
        {
            var line = curve.Planned;
            var stretches = Enumerable.Range(1, Math.Max(0, line.Length - 1))
                .Where(i => double.IsFinite(line[i].Value) && double.IsFinite(line[i - 1].Value))
                .OrderByDescending(i => line[i].AtS - line[i - 1].AtS);
            foreach (var i in stretches)
            {
                var column = (Column(line[i - 1].AtS) + Column(line[i].AtS) - curve.Name.Length) / 2;
                var row = Row((line[i - 1].Value + line[i].Value) / 2);
                if (new[] { -1, 1, -2, 2 }.Any(away => _cells.PutText(column, row + away, curve.Name, Tone.Normal))) return;
            }
        }
    }
}
