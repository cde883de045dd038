using System.Drawing;
using System.Globalization;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace BrewDeck.Terminal.Paint;

/// <summary>
/// Writes a view's rows into the toolkit's cells, where its clip lets it. Of a key's time from stroke to paint more than half was the toolkit's own
/// way there: clearing cell by cell, each with a lock and a look at tables, and then writing what stood there before. A row is made beside the cells, then
/// what differs is copied.
/// </summary>
internal ref struct RowBrush
{
    /// <summary>Cells of one narrow character: each new text of a cell is counted in text elements by the toolkit.</summary>
    private static readonly Cell?[] Single = new Cell?[0x2900];

    private readonly Cell[,] _cells;
    private readonly Rectangle _where;
    private readonly Rectangle[] _clip;
    private readonly Cell[] _made;
    private readonly bool[] _open;
    private int _row;
    private int _column;
    private int _end;
    private bool _hasWide;

    /// <param name="view">While it is drawn.</param>
    public RowBrush(View view)
    {
        var driver = view.App!.Driver!;
        _cells = driver.Contents!;
        _where = view.ViewportToScreen(new Rectangle(Point.Empty, view.Viewport.Size));
        _clip = view.GetClip()?.GetRectangles() ?? [driver.Screen];
        (_made, _open) = (new Cell[_where.Width], new bool[_where.Width]);
    }

    public readonly int Rows => _where.Height;

    /// <summary>Goes to the beginning of a row of the view, blank to its end.</summary>
    public void Begin(int row, Attribute blank)
    {
        (_row, _hasWide) = (_where.Y + row, false);
        Go(0, _made.Length, blank);
    }

    /// <summary>From here to there is blank, and is written from here on.</summary>
    public void Go(int from, int to, Attribute blank)
    {
        (_column, _end) = (Math.Clamp(from, 0, _made.Length), Math.Clamp(to, 0, _made.Length));
        if (_column < _end) _made.AsSpan(_column, _end - _column).Fill(Narrow(' ', blank));
    }

    public void Write(string text, Attribute ink)
    {
        if (CellWidth.AllNarrow(text))
        {
            foreach (var c in text) Put(Narrow(c, ink));
            return;
        }

        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            var shown = Cells.Printable(elements.GetTextElement());
            if (Cells.Width(shown) == 2)
                PutWide(shown, ink);
            else
                Put(Of(shown, ink));
        }
    }

    /// <summary>Copies the row into the cells.</summary>
    public readonly void End()
    {
        if (_row < 0 || _row >= _cells.GetLength(0)) return;
        Array.Clear(_open);
        foreach (var part in _clip)
        {
            if (_row < part.Top || _row >= part.Bottom) continue;
            var (left, right) = (Math.Max(part.Left, Math.Max(0, _where.Left)), Math.Min(part.Right, Math.Min(_cells.GetLength(1), _where.Right)));
            if (left < right) _open.AsSpan(left - _where.Left, right - left).Fill(true);
        }

        var cells = Cells.Row(_cells, _row);
        for (var column = 0; column < _made.Length; column++)
        {
            if (_open[column]) Copy(column, ref cells[_where.X + column]);
        }
    }

    private static Cell Of(string text, Attribute ink) => new() { Grapheme = text, Attribute = ink };

    private static Cell Narrow(char c, Attribute ink)
    {
        var cell = Single[c] ??= Of(c.ToString(), ink);
        cell.Attribute = ink;
        return cell;
    }

    /// <summary>One with no room for its second half is a blank.</summary>
    private void PutWide(string shown, Attribute ink)
    {
        Put(_column + 1 < _end ? Of(shown, ink) : Narrow(' ', ink));
        Put(Narrow(' ', ink));
        _hasWide = true;
    }

    private void Put(in Cell cell)
    {
        if (_column < _end) _made[_column] = cell;
        _column++;
    }

    private readonly void Copy(int column, ref Cell cell)
    {
        ref var made = ref _made[column];
        if (_hasWide && Cells.Width(made.Grapheme) == 2 && !_open[column + 1]) made = Narrow(' ', made.Attribute!.Value);
        if (cell.Grapheme != made.Grapheme || cell.Attribute is not { } ink || !Cells.Same(ink, made.Attribute.GetValueOrDefault())) cell = made;
    }
}
