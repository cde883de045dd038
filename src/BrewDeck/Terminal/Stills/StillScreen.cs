using System.Drawing;
using System.Text;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Panes;
using BrewDeck.Terminal.Toolkit;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace BrewDeck.Terminal.Stills;

/// <summary>A screen as the terminal would show it, drawn by the real panes without a terminal.</summary>
public sealed class StillScreen
{
    private readonly Cell[,] _cells;

    private StillScreen(Cell[,] cells) => _cells = cells;

    public int Columns => _cells.GetLength(1);

    public int Rows => _cells.GetLength(0);

    /// <param name="screen">Any screen of the session.</param>
    /// <param name="columns">At least 1.</param>
    /// <param name="rows">At least 1.</param>
    /// <param name="theme">Which colours it wears.</param>
    public static StillScreen Of(Screen screen, int columns, int rows, Theme theme = Theme.Dark)
    {
        var size = new Size(columns, rows);
        using var toolkit = new HeadlessToolkit(size, TimeProvider.System);
        var window = new DeckWindow(Look.Of(theme), _ => { });
        toolkit.Show(window);
        window.Show(screen, size);
        toolkit.Step();
        return Of(toolkit.Cells);
    }

    /// <summary>The cells as they are now.</summary>
    internal static StillScreen Of(Cell[,] cells) => new((Cell[,])cells.Clone());

    /// <summary>One line a row, without the blanks at its end.</summary>
    public string ToText()
    {
        var text = new StringBuilder();
        for (var row = 0; row < Rows; row++)
            text.AppendJoin("", Row(row).Select(cell => cell.Text)).TrimEnd().Append('\n');
        return text.ToString();
    }

    /// <summary>One line a row with 24-bit colours, to print on a terminal.</summary>
    public string ToAnsi()
    {
        var text = new StringBuilder();
        for (var row = 0; row < Rows; row++)
        {
            Attribute? ink = null;
            foreach (var cell in Row(row))
            {
                if (cell.Ink != ink) Sgr.Append(text, cell.Ink, ColourDepth.Direct);
                ink = cell.Ink;
                text.Append(cell.Text);
            }

            text.Append("\e[0m\n");
        }

        return text.ToString();
    }

    /// <summary>A picture that looks the same with every font: blocks and lines are drawn as shapes.</summary>
    public string ToSvg() => new SvgPicture(this).Draw();

    /// <summary>The cells of a row that show something of their own, left to right.</summary>
    internal IEnumerable<(int Column, string Text, int Width, Attribute Ink)> Row(int row)
    {
        for (var column = 0; column < Columns; column++)
        {
            var text = Cells.Printable(_cells[row, column]);
            var width = Cells.Width(text);
            yield return (column, text, width, Cells.Ink(_cells[row, column]));
            column += width - 1;
        }
    }
}

internal static class Trimming
{
    public static StringBuilder TrimEnd(this StringBuilder text)
    {
        while (text.Length > 0 && text[^1] == ' ') text.Length--;
        return text;
    }
}
