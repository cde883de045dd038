using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>The hours below a drawing.</summary>
internal static class HourLines
{
    public static int Column(double atS, HourAxis axis, int width) =>
        axis.EndS <= 0 ? 0 : Math.Clamp((int)(atS / axis.EndS * (width - 1)), 0, width - 1);

    /// <summary>Every hour, every second or every third has its clock: never one left out between two others.</summary>
    private static int Each(HourAxis axis, int width)
    {
        var widest = axis.Hours.IsEmpty ? 0 : axis.Hours.Max(h => h.Clock.Length);
        var cells = axis.EndS > 0 ? 3600 / axis.EndS * (width - 1) : width;
        return Math.Max(1, (int)Math.Ceiling((widest + 1) / Math.Max(cells, 1e-9)));
    }

    /// <param name="gutter">Cells to the left of the axis.</param>
    /// <param name="width">Cells of the axis.</param>
    public static ImmutableArray<Line> Of(HourAxis axis, int gutter, int width)
    {
        var line = new CellGrid(width, 1);
        var clocks = new CellGrid(width + gutter, 1);
        var each = Each(axis, width);
        for (var i = 0; i < axis.Hours.Length; i++)
        {
            var hour = axis.Hours[i];
            var at = Column(hour.AtS, axis, width);
            line.Put(at, 0, '┴', Tone.Muted);
            if (i % each == 0)
                clocks.PutText(Math.Min(gutter + at - hour.Clock.Length / 2, gutter + width - hour.Clock.Length), 0, hour.Clock, Tone.Muted);
        }

        if (axis.NowS is { } now) line.Put(Column(now, axis, width), 0, '●', Tone.Strong);
        for (var column = 0; column < width; column++) line.PutBehind(column, 0, '─');
        return [Lines.Join(Line.Of(new string(' ', Math.Max(0, gutter - 1)) + "└", Tone.Muted), line.ToLines()[0]), clocks.ToLines()[0]];
    }
}
