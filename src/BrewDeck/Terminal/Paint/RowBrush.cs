using System.Drawing;
using System.Globalization;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace BrewDeck.Terminal.Paint;

/// <summary>
/// Writes a view's rows into the toolkit's cells, where its clip lets it. Of a key's time from stroke to paint more than half was the toolkit's own
/// way there: clearing cell by cell, each with a lock and a look at tables, and then writing what stood there before.
/// </summary>
internal ref struct RowBrush
{
    private static readonly string?[] Single = new string?[0x2900];

    private readonly Cell[,] _cells;
    private readonly Rectangle _where;
    private readonly Rectangle[] _clip;
    private readonly bool[] _open;
    private int _row;
    private int _column;

    /// <param name="view">While it is drawn.</param>
    public RowBrush(View view)
    {
        var driver = view.App!.Driver!;
        _cells = driver.Contents!;
        _where = view.ViewportToScreen(new Rectangle(Point.Empty, view.Viewport.Size));
        _clip = view.GetClip()?.GetRectangles() ?? [driver.Screen];
        _open = new bool[_where.Width];
    }

    public readonly int Rows => _where.Height;

    /// <summary>Goes to the beginning of a row of the view.</summary>
    public void Begin(int row)
    {
        (_row, _column) = (_where.Y + row, 0);
        Array.Clear(_open);
        if (_row < 0 || _row >= _cells.GetLength(0)) return;
        foreach (var part in _clip)
        {
            if (_row < part.Top || _row >= part.Bottom) continue;
            var (left, right) = (Math.Max(part.Left, Math.Max(0, _where.Left)), Math.Min(part.Right, Math.Min(_cells.GetLength(1), _where.Right)));
            if (left < right) _open.AsSpan(left - _where.Left, right - left).Fill(true);
        }
    }

    public void Write(string text, Attribute ink)
    {
        if (CellWidth.AllNarrow(text))
        {
            foreach (var c in text) Put(Single[c] ??= c.ToString(), ink);
            return;
        }

        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            var shown = Cells.Printable(elements.GetTextElement());
            if (Cells.Width(shown) == 2)
                PutWide(shown, ink);
            else
                Put(shown, ink);
        }
    }

    /// <summary>Blanks to the end of the row.</summary>
    public void Blank(Attribute ink)
    {
        while (_column < _open.Length) Put(" ", ink);
    }

    /// <summary>One with no room for its second half is a blank.</summary>
    private void PutWide(string shown, Attribute ink)
    {
        var whole = IsOpen(_column) && IsOpen(_column + 1);
        Put(whole ? shown : " ", ink);
        Put(" ", ink);
    }

    private readonly bool IsOpen(int column) => column < _open.Length && _open[column];

    private void Put(string shown, Attribute ink)
    {
        if (IsOpen(_column))
        {
            ref var cell = ref _cells[_row, _where.X + _column];
            if (cell.Grapheme != shown) cell.Grapheme = shown;
            if (cell.Attribute != ink) cell.Attribute = ink;
        }

        _column++;
    }
}

internal static class Clearing
{
    /// <summary>For <c>OnClearingViewport</c>: fills a view with blanks on its own ground, so that what is in it has to be drawn again.</summary>
    /// <returns>True: the toolkit has nothing left to clear.</returns>
    public static bool Cleared(this View view)
    {
        var ink = view.GetAttributeForRole(VisualRole.Normal);
        var brush = new RowBrush(view);
        for (var row = 0; row < brush.Rows; row++)
        {
            brush.Begin(row);
            brush.Blank(ink);
        }

        view.SetNeedsDraw();
        return true;
    }
}
