using System.Globalization;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using BrewDeck.Logbook;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace BrewDeck.Terminal.Paint;

/// <summary>Reads the toolkit's cell buffer as a terminal would show it.</summary>
internal static class Cells
{
    /// <summary>
    /// What to print for a cell; never a control character nor one that turns the writing direction, so no text can reach the terminal as a
    /// command or stand on the screen as another.
    /// </summary>
    public static string Printable(in Cell cell) => Printable(cell.Grapheme);

    /// <inheritdoc cref="Printable(in Cell)"/>
    public static string Printable(string? grapheme)
    {
        if (string.IsNullOrEmpty(grapheme)) return " ";
        foreach (var c in grapheme)
        {
            if (!IsPlain(c)) return Plain(grapheme);
        }

        return grapheme;
    }

    private static bool IsPlain(char c) => c is >= ' ' and <= '~' || char.GetUnicodeCategory(c)
        is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);

    /// <summary>What is left without them; what a joiner held together keeps its first part, for there is room for one.</summary>
    private static string Plain(string grapheme) => SafeText.OneLine(grapheme) is { Length: > 0 } safe ? StringInfo.GetNextTextElement(safe) : " ";

    /// <summary>1 or 2 cells.</summary>
    public static int Width(string grapheme) =>
        Math.Clamp(CellWidth.Of(grapheme), 1, 2);

    public static Attribute Ink(in Cell cell) => cell.Attribute ?? Attribute.Default;

    /// <summary>Of a key's time from stroke to paint a twelfth was the toolkit's own comparison, a call for each of the two colours of each cell.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Same(in Attribute one, in Attribute other) =>
        one.Foreground.Argb == other.Foreground.Argb && one.Background.Argb == other.Background.Argb && one.Style == other.Style;

    /// <summary>A row of the screen.</summary>
    public static Span<T> Row<T>(T[,] cells, int row) => cells.GetLength(1) == 0 ? [] : MemoryMarshal.CreateSpan(ref cells[row, 0], cells.GetLength(1));
}
