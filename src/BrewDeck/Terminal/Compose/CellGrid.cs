using System.Collections.Immutable;
using System.Text;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>A drawing made cell by cell. What lies outside is left away.</summary>
internal sealed class CellGrid(int width, int height)
{
    private readonly Span[,] _cells = new Span[Math.Max(0, height), Math.Max(0, width)];

    private bool IsFree(int column, int row) => Has(column, row) && _cells[row, column].Text is null;

    public void Put(int column, int row, char glyph, Tone tone)
    {
        if (Has(column, row)) _cells[row, column] = new Span(glyph.ToString(), tone);
    }

    /// <summary>Muted, and only where nothing stands.</summary>
    public void PutBehind(int column, int row, char glyph)
    {
        if (IsFree(column, row)) Put(column, row, glyph, Tone.Muted);
    }

    /// <summary>A text whose cells must all be free, with a free one at both sides; false: it is not put.</summary>
    public bool PutText(int column, int row, string text, Tone tone)
    {
        var cells = Lines.Width(text);
        if (cells != text.Length || !Enumerable.Range(column, cells).All(c => IsFree(c, row))) return false;
        if (Has(column - 1, row) && !IsFree(column - 1, row) || Has(column + cells, row) && !IsFree(column + cells, row)) return false;
        for (var i = 0; i < cells; i++) Put(column + i, row, text[i], tone);
        return true;
    }

    public ImmutableArray<Line> ToLines() => [.. Enumerable.Range(0, _cells.GetLength(0)).Select(ToLine)];

    private bool Has(int column, int row) => column >= 0 && row >= 0 && column < _cells.GetLength(1) && row < _cells.GetLength(0);

    /// <summary>Neighbours of one tone become one span.</summary>
    private Line ToLine(int row)
    {
        var spans = ImmutableArray.CreateBuilder<Span>();
        var text = new StringBuilder();
        var tone = Tone.Normal;
        for (var column = 0; column < _cells.GetLength(1); column++)
        {
            var cell = _cells[row, column];
            if (cell.Tone != tone && text.Length > 0)
            {
                spans.Add(new Span(text.ToString(), tone));
                text.Clear();
            }

            tone = cell.Tone;
            text.Append(cell.Text ?? " ");
        }

        spans.Add(new Span(text.ToString(), tone));
        return new Line(spans.DrainToImmutable());
    }
}
