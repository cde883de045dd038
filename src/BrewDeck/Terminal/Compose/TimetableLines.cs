using System.Collections.Immutable;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Terminal.Compose;

/// <summary>A step a row: the plan in the upper half of its bar, what was done or is expected in the lower half.</summary>
internal static class TimetableLines
{
    private const int LateWidth = 9;
    private const int WidestTitle = 48;

    public static ImmutableArray<Line> Of(TimetableDrawing drawing, int width, int height, int offset)
    {
        var head = Lines.Join(
            Line.Of(LayoutWords.Timetable(drawing.Notation), Tone.Strong), Line.Of("   " + LayoutWords.TimetableBars(drawing.Notation), Tone.Muted)).CutTo(width);
        var rows = Math.Max(1, height - 3);
        var first = Math.Clamp(offset, 0, Math.Max(0, drawing.Rows.Length - rows));
        var title = Math.Min(WidestTitle, width * 2 / 5);
        var bar = Math.Max(1, width - title - LateWidth - 2);
        return
        [
            head,
            .. drawing.Rows.Skip(first).Take(rows).Select(row => Lines.Join(
                Line.Of(Lines.Fit(row.Title, title) + " ", row.Tone), Bar(row, drawing.Axis, bar), Line.Of(" " + Lines.Fit(row.Late, LateWidth, right: true), row.Tone))),
            .. HourLines.Of(drawing.Axis, title + 1, bar),
        ];
    }

    private static Line Bar(TimetableRow row, HourAxis axis, int width)
    {
        var cells = new CellGrid(width, 1);
        for (var column = 0; column < width; column++)
        {
            var (planned, really) = (Covers(row.Planned, column, axis, width), Covers(row.Really, column, axis, width));
            if (planned || really) cells.Put(column, 0, planned && really ? '█' : planned ? '▀' : '▄', row.Tone);
        }

        if (axis.NowS is { } now) cells.PutBehind(HourLines.Column(now, axis, width), 0, '│');
        return cells.ToLines()[0];
    }

    private static bool Covers(TimeSpanS? span, int column, HourAxis axis, int width) =>
        span is { } s && column >= HourLines.Column(s.FromS, axis, width) && column <= HourLines.Column(s.ToS, axis, width);
}
