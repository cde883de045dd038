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
    private string _titleAside = "";
    private (string Text, string Ink)[,] _cells;
    private ((string Text, string Ink)[,] Cells, int Column, int Row)? _aside;
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

    /// <summary>How often the screen was wiped, which the program does before it draws all of it.</summary>
    public int Wipes { get; private set; }

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
            if (_held.Length > 1 && _held[1] == ']')
                Name(one);
            else if (_held.Length > 2 && one[0] is >= '@' and <= '~') Obey();
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
            NewLine();
        }
        else
        {
            Put(one);
        }
    }

    /// <summary>Of the window.</summary>
    public string Title { get; private set; } = "";

    private void Put(string text)
    {
        if (_row < _cells.GetLength(0) && _column < _cells.GetLength(1)) _cells[_row, _column] = (text, _ink);
        _column++;
    }

    /// <summary>A window's title ends with the bell's character.</summary>
    private void Name(string one)
    {
        if (one != "\a") return;
        Title = _held.ToString()[4..^1];
        _held.Clear();
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
                Wipes++;
                Clear();
                break;
            case 't' when parameters == "22;2":
                _titleAside = Title;
                break;
            case 't' when parameters == "23;2":
                Title = _titleAside;
                break;
            case 'h' or 'l' when parameters.StartsWith('?'):
                SetMode(int.Parse(parameters[1..], CultureInfo.InvariantCulture), sequence[^1] == 'h');
                break;
            case '^':
                break; // the echo of a control key cuts in where a program was stopped for good while the terminal took nothing
            default:
                throw new FormatException($"unknown ESC {sequence[1..]}");
        }
    }

    private void SetMode(int mode, bool on)
    {
        if (mode == 1049) SwitchScreen(on);
        if (on) Modes.Add(mode);
        else Modes.Remove(mode);
    }

    private void SwitchScreen(bool alternate)
    {
        if (alternate && _aside is null)
        {
            _aside = (_cells, _column, _row);
            _cells = new (string, string)[_cells.GetLength(0), _cells.GetLength(1)];
            Clear();
        }
        else if (!alternate && _aside is { } aside)
        {
            (_cells, _column, _row) = aside;
            _aside = null;
        }
    }

    private void NewLine()
    {
        if (++_row < _cells.GetLength(0)) return;
        var columns = _cells.GetLength(1);
        Array.Copy(_cells, columns, _cells, 0, _cells.Length - columns);
        _row = _cells.GetLength(0) - 1;
        for (var column = 0; column < columns; column++) _cells[_row, column] = (" ", _ink);
    }

    private void Clear()
    {
        for (var row = 0; row < _cells.GetLength(0); row++)
            for (var column = 0; column < _cells.GetLength(1); column++)
                _cells[row, column] = (" ", _ink);
    }
}
