using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>Rows in columns. Only the rows in sight are made, so a long list costs no more than a short one.</summary>
internal static class ListLines
{
    private const int Apart = 2;
    private const int Narrowest = 4;
    private const string Chosen = "▸ ";
    private const string NotChosen = "  ";
    private const string Deeper = "    ";

    /// <summary>Widths of the columns: fixed ones first, the rest shared among those that take what is left.</summary>
    private static ImmutableArray<int> Widths(ImmutableArray<Column> columns, int width)
    {
        var left = width - Chosen.Length - Apart * Math.Max(0, columns.Length - 1) - columns.Sum(c => c.Width);
        var takers = columns.Count(c => c.Width == 0);
        var share = takers == 0 ? 0 : Math.Max(Narrowest, left / takers);
        return [.. columns.Select(c => c.Width == 0 ? share : c.Width)];
    }

    public static Line Header(ImmutableArray<Column> columns, int width) =>
        Cells(columns, [.. columns.Select(c => c.Header)], Widths(columns, width), NotChosen, Tone.Muted, width);

    public static Line Row(ImmutableArray<Column> columns, Row row, bool chosen, int width) =>
        Cells(columns, row.Cells, Widths(columns, width), Lead(row, chosen), row.Tone, width);

    /// <summary>A row without columns, as in a choice, whole: what has no room beside its name stands below it.</summary>
    public static ImmutableArray<Line> Option(Row row, bool chosen, int width)
    {
        var whole = Line.Of(Lead(row, chosen) + string.Join("  ", row.Cells), row.Tone);
        if (whole.Width() <= width) return [whole.Fit(width)];
        var below = row.Cells.Length < 2 ? [] : Line.Of(Deeper + string.Join("  ", row.Cells[1..]), row.Tone).Wrap(width, Deeper.Length);
        ImmutableArray<Line> named = Line.Of(Lead(row, chosen) + row.Cells[0], row.Tone).Wrap(width, Deeper.Length);
        return [.. named.Concat(below).Select(line => line.Fit(width))];
    }

    /// <summary>First row to show so that the chosen one is in sight, moving as little as possible.</summary>
    public static int Scroll(int first, int chosen, int count, int height)
    {
        if (chosen >= 0) first = Math.Clamp(first, chosen - height + 1, chosen);
        return Math.Clamp(first, 0, Math.Max(0, count - height));
    }

    private static string Lead(Row row, bool chosen) =>
        chosen ? Chosen : row.Tone is Tone.Warning or Tone.Alarm ? Labels.Mark(row.Tone) : NotChosen;

    private static Line Cells(
        ImmutableArray<Column> columns, ImmutableArray<string> cells, ImmutableArray<int> widths, string lead, Tone tone, int width)
    {
        var texts = columns.Select((column, i) => Lines.Fit(i < cells.Length ? cells[i] : "", widths[i], column.Right));
        return Line.Of(lead + string.Join(new string(' ', Apart), texts), tone).Fit(width);
    }
}
