using System.Globalization;
using System.Text;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>
/// Reads what the program writes to a terminal: cells with their attribute, the cursor, and the private modes that are on.
/// It knows just the sequences that the program uses and throws at any other.
/// </summary>
internal sealed class MiniTerminal
{
    private static readonly SortedSet<int> ModesFound = [7, 25];

    private readonly StringBuilder _held = new();
    private (string Text, string Ink)[,] _cells;
    private string _ink = "0";
    private int _column;
    private int _row;

    public MiniTerminal(int columns, int rows)
    {
        _cells = new (string, string)[rows, columns];
        Clear();
    }

    public SortedSet<int> Modes { get; } = new(ModesFound);

    /// <summary>As on a terminal that nobody has touched.</summary>
    public bool IsRestored => Modes.SetEquals(ModesFound) && _ink == "0";

    public (int Column, int Row) Cursor => (_column, _row);

    public int Bells { get; private set; }

    public (string Text, string Ink)[,] Cells => _cells;

    public string Text()
    {
        var text = new StringBuilder();
        for (var row = 0; row < _cells.GetLength(0); row++)
        {
            for (var column = 0; column < _cells.GetLength(1); column++) text.Append(_cells[row, column].Text);
            text.Append('\n');
        }

        return text.ToString();
    }

    public void Resize(int columns, int rows)
    {
        _cells = new (string, string)[rows, columns];
        Clear();
    }

    public MiniTerminal Feed(string output)
    {
        foreach (var rune in output.EnumerateRunes()) Take(rune.ToString());
        return this;
    }

    private void Take(string one)
    {
        if (_held.Length > 0 || one == "\e")
        {
            _held.Append(one);
            if (_held.Length > 2 && one[0] is >= '@' and <= '~') Obey();
        }
        else if (one == "\a")
        {
            Bells++;
        }
        else if (one == "\r")
        {
            _column = 0;
        }
        else if (one == "\n")
        {
            _row++;
        }
        else
        {
            Put(one);
        }
    }

    private void Put(string text)
    {
        if (_row < _cells.GetLength(0) && _column < _cells.GetLength(1)) _cells[_row, _column] = (text, _ink);
        _column++;
    }

    private void Obey()
    {
        var sequence = _held.ToString();
        _held.Clear();
        if (!sequence.StartsWith("\e[", StringComparison.Ordinal)) throw new FormatException($"unknown {sequence[1..]}");
        var parameters = sequence[2..^1];
        switch (sequence[^1])
        {
            case 'H':
                var place = parameters.Split(';').Select(p => int.Parse(p, CultureInfo.InvariantCulture)).ToArray();
                (_row, _column) = (place[0] - 1, place[1] - 1);
                break;
            case 'm':
                _ink = parameters;
                break;
            case 'J' when parameters == "2":
                Clear();
                break;
            case 'h' or 'l' when parameters.StartsWith('?'):
                SetMode(int.Parse(parameters[1..], CultureInfo.InvariantCulture), sequence[^1] == 'h');
                break;
            default:
                throw new FormatException($"unknown ESC {sequence[1..]}");
        }
    }

    private void SetMode(int mode, bool on)
    {
        if (on) Modes.Add(mode);
        else Modes.Remove(mode);
    }

    private void Clear()
    {
        for (var row = 0; row < _cells.GetLength(0); row++)
            for (var column = 0; column < _cells.GetLength(1); column++)
                _cells[row, column] = (" ", _ink);
    }
}
