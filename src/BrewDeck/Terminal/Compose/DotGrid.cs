using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>Lines in Braille cells: two dots across and four down in each.</summary>
internal sealed class DotGrid(int width, int height)
{
    public const char FirstCell = '\u2800', LastCell = '\u28ff';

    private static readonly byte[,] Bits = { { 0x01, 0x08 }, { 0x02, 0x10 }, { 0x04, 0x20 }, { 0x40, 0x80 } };

    private readonly byte[,] _dots = new byte[height, width];
    private readonly Tone[,] _tones = new Tone[height, width];

    public int Across => width * 2;

    public int Down => height * 4;

    /// <summary>A straight line; of <paramref name="period"/> dots in a row the first <paramref name="drawn"/> are drawn.</summary>
    /// <param name="phase">Dots before this line, so that the dash goes on from one stroke to the next.</param>
    /// <returns>The phase of the next stroke.</returns>
    public int Stroke((int X, int Y) from, (int X, int Y) to, Tone tone, int drawn, int period, int phase)
    {
        var length = Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y));
        for (var i = 0; i <= length; i++)
        {
            var part = length == 0 ? 0 : (double)i / length;
            var (x, y) = ((int)Math.Round(from.X + (to.X - from.X) * part), (int)Math.Round(from.Y + (to.Y - from.Y) * part));
            if ((phase + i) % period < drawn) Dot(x, y, tone);
        }

        return phase + length;
    }

    public void CopyTo(CellGrid cells)
    {
        for (var row = 0; row < height; row++)
        {
            for (var column = 0; column < width; column++)
            {
                if (_dots[row, column] != 0) cells.Put(column, row, (char)(FirstCell + _dots[row, column]), _tones[row, column]);
            }
        }
    }

    /// <summary>What shows where a terminal has no Braille: how high in the cell the line runs.</summary>
    public static char Plainly(char cell)
    {
        var dots = cell - FirstCell;
        var rows = Enumerable.Range(0, 4).Where(r => (dots & (Bits[r, 0] | Bits[r, 1])) != 0).ToList();
        return rows switch
        {
            [] => ' ',
            [0] => '\'',
            [3] => '_',
            [_] => '-',
            [_, _, _, _] => '|',
            _ => ':',
        };
    }

    private void Dot(int x, int y, Tone tone)
    {
        if (x < 0 || y < 0 || x >= Across || y >= Down) return;
        var (row, column) = (y / 4, x / 2);
        _tones[row, column] = _dots[row, column] == 0 || tone == Tone.Normal ? tone : _tones[row, column];
        _dots[row, column] |= Bits[y % 4, x % 2];
    }
}
