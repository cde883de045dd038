using System.Globalization;
using System.Security;
using System.Text;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;
using Color = Terminal.Gui.Drawing.Color;

namespace BrewDeck.Terminal.Stills;

/// <summary>Draws a still as SVG, a rectangle for each stretch of one ink and the text over it.</summary>
internal sealed class SvgPicture(StillScreen still)
{
    private const double CellWidth = 9;
    private const double CellHeight = 18;
    private const double Baseline = 13.5;
    private const string Font = "DejaVu Sans Mono, Liberation Mono, Menlo, Consolas, monospace";

    private readonly StringBuilder _svg = new();

    public string Draw()
    {
        var (width, height) = (still.Columns * CellWidth, still.Rows * CellHeight);
        Put($"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}\" height=\"{height}\" viewBox=\"0 0 {width} {height}\" ");
        Put($"font-family=\"{Font}\" font-size=\"14.95\">\n");
        for (var row = 0; row < still.Rows; row++) DrawRow(row);
        return _svg.Append("</svg>\n").ToString();
    }

    private void DrawRow(int row)
    {
        var run = new List<(int Column, string Text, int Width, Attribute Ink)>();
        foreach (var cell in still.Row(row))
        {
            if (run.Count > 0 && run[^1].Ink != cell.Ink) Flush(run, row);
            run.Add(cell);
        }

        Flush(run, row);
    }

    private void Flush(List<(int Column, string Text, int Width, Attribute Ink)> run, int row)
    {
        if (run.Count == 0) return;
        var ink = run[0].Ink;
        var columns = run[^1].Column + run[^1].Width - run[0].Column;
        Rectangle(run[0].Column * CellWidth, row * CellHeight, columns * CellWidth, CellHeight, ink.Background);
        foreach (var shape in run) DrawShapes(shape.Text, shape.Column, row, ink.Foreground);
        DrawWords(run, row);
        run.Clear();
    }

    private void DrawShapes(string text, int column, int row, Color colour)
    {
        foreach (var (x, y, width, height) in CellShapes.Of(text))
            Rectangle(
                (column + x) * CellWidth, (row + y) * CellHeight, width * CellWidth, height * CellHeight, colour);
    }

    /// <summary>Word by word, each at its own cell, so that the advance of the font does not add up along a row.</summary>
    private void DrawWords(List<(int Column, string Text, int Width, Attribute Ink)> run, int row)
    {
        var word = new StringBuilder();
        var start = 0;
        foreach (var (column, text, _, ink) in run.Append((0, " ", 1, run[0].Ink)))
        {
            if (text == " " || CellShapes.Has(text))
            {
                DrawWord(word, start, row, ink);
                continue;
            }

            if (word.Length == 0) start = column;
            word.Append(text);
        }
    }

    private void DrawWord(StringBuilder word, int column, int row, Attribute ink)
    {
        if (word.Length == 0) return;
        var weight = ink.Style.HasFlag(TextStyle.Bold) ? " font-weight=\"bold\"" : "";
        var (x, y) = (Number(column * CellWidth), Number(row * CellHeight + Baseline));
        Put($"<text x=\"{x}\" y=\"{y}\" fill=\"{Hex(ink.Foreground)}\"{weight}>{SecurityElement.Escape(word.ToString())}</text>\n");
        word.Clear();
    }

    private void Rectangle(double x, double y, double width, double height, Color colour) => Put(
        $"<rect x=\"{Number(x)}\" y=\"{Number(y)}\" width=\"{Number(width)}\" height=\"{Number(height)}\" fill=\"{Hex(colour)}\"/>\n");

    private void Put(FormattableString part) => _svg.Append(part.ToString(CultureInfo.InvariantCulture));

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Hex(Color colour) => $"#{colour.R:x2}{colour.G:x2}{colour.B:x2}";
}
