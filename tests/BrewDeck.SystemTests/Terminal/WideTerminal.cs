using System.Globalization;
using System.Text.RegularExpressions;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>
/// A strict screen with characters of two cells: writing on one half of such a character leaves the other half in ruins,
/// so a painter that forgets a half is seen.
/// </summary>
internal sealed partial class WideTerminal(int columns, int rows)
{
    private const string RightHalf = "right half";
    private const string Ruin = "ruin";

    private readonly (string Text, string Ink)[,] _cells = new (string, string)[rows, columns];
    private (int Column, int Row) _pen;
    private string _ink = "";

    public void Feed(string output)
    {
        foreach (Match match in Parts().Matches(output))
        {
            if (match.Groups["end"].Value is "H") MoveTo(match.Groups["par"].Value);
            else if (match.Groups["end"].Value is "m") _ink = match.Groups["par"].Value;
            else if (match.Groups["end"].Value is "J") Array.Clear(_cells);
            else if (match.Groups["text"].Success) Put(match.Value);
        }
    }

    public bool Same(WideTerminal other) =>
        _cells.Cast<(string, string)>().SequenceEqual(other._cells.Cast<(string, string)>());

    private void MoveTo(string parameters)
    {
        var place = parameters.Split(';').Select(p => int.Parse(p, CultureInfo.InvariantCulture)).ToArray();
        _pen = (place[1] - 1, place[0] - 1);
    }

    private void Put(string text)
    {
        var width = text == "界" ? 2 : 1;
        Write(_pen.Column, text);
        if (width == 2) Write(_pen.Column + 1, RightHalf);
        _pen = (_pen.Column + width, _pen.Row);
    }

    private void Write(int column, string text)
    {
        var row = _pen.Row;
        if (_cells[row, column].Text == "界" && column + 1 < columns) _cells[row, column + 1].Text = Ruin;
        if (_cells[row, column].Text == RightHalf && text != RightHalf && column > 0) _cells[row, column - 1].Text = Ruin;
        _cells[row, column] = (text, _ink);
    }

    [GeneratedRegex(@"\e\[(?<par>[?\d;]*)(?<end>[A-Za-z])|(?<text>[^\e])")]
    private static partial Regex Parts();
}
