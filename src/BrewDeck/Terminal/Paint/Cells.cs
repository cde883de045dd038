using Terminal.Gui.Drawing;
using Terminal.Gui.Text;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace BrewDeck.Terminal.Paint;

/// <summary>Reads the toolkit's cell buffer as a terminal would show it.</summary>
internal static class Cells
{
    /// <summary>What to print for a cell; never a control character, so no text can reach the terminal as a command.</summary>
    public static string Printable(in Cell cell)
    {
        var grapheme = cell.Grapheme;
        if (string.IsNullOrEmpty(grapheme)) return " ";
        foreach (var c in grapheme)
        {
            if (char.IsControl(c)) return " ";
        }

        return grapheme;
    }

    /// <summary>1 or 2 cells.</summary>
    public static int Width(string grapheme) =>
        grapheme is [< '\u0300'] ? 1 : Math.Clamp(grapheme.GetColumns(), 1, 2);

    public static Attribute Ink(in Cell cell) => cell.Attribute ?? Attribute.Default;
}
