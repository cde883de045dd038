using System.Text;
using BrewDeck.Logbook;

namespace BrewDeck.Reports;

/// <summary>The batch record as lines of text, safe for a terminal.</summary>
internal static class RecordText
{
    /// <summary>A wider cell pushes what follows it to the right, on its own line only.</summary>
    private const int WidestPadding = 44;

    public static IEnumerable<string> Of(IEnumerable<RecordTable> tables) => tables.SelectMany((table, i) => Lines(table, i > 0));

    private static IEnumerable<string> Lines(RecordTable table, bool gap)
    {
        if (gap)
            yield return "";
        yield return table.Title;
        var rows = table.Columns.Length > 0 ? table.Rows.Insert(0, table.Columns) : table.Rows;
        var safe = rows.Select(row => row.Select(SafeText.OneLine).ToList()).ToList();
        var widths = Enumerable.Range(0, safe.Max(r => r.Count)).Select(i => Math.Min(WidestPadding, safe.Max(r => r[i].Length))).ToList();
        foreach (var row in safe)
            yield return Line(row, widths);
    }

    private static string Line(List<string> row, List<int> widths)
    {
        var line = new StringBuilder(" ");
        for (var i = 0; i < row.Count; i++)
            line.Append(' ').Append(row[i].PadRight(widths[i])).Append(' ');
        return line.ToString().TrimEnd();
    }
}
