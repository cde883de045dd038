using System.Globalization;
using BrewDeck.Deck;
using BrewDeck.Deck.Trends;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Logbook;

/// <summary>Trends as lines: what each figure does over the batches, or the figures of each batch for a spreadsheet.</summary>
internal static class TrendPages
{
    /// <param name="rows">Oldest first.</param>
    public static IEnumerable<string> Csv(IReadOnlyList<(BatchHead Head, double?[] Values)> rows) => rows
        .Select(row => string.Join(',',
        [
            row.Head.Number.ToString(CultureInfo.InvariantCulture),
            EventRow.IsoUtc(row.Head.OpenedMs),
            SafeText.CsvField(row.Head.Recipe),
            SafeText.CsvField(row.Head.Brewhouse),
            .. row.Values.Select(v => v?.ToString("0.####", CultureInfo.InvariantCulture) ?? ""),
        ]))
        .Prepend("batch,opened_utc,recipe,brewhouse," + string.Join(',', BatchFigures.All.Select(f => f.Name)));

    /// <param name="rows">Oldest first.</param>
    public static IEnumerable<string> Text(IReadOnlyList<(BatchHead Head, double?[] Values)> rows, Notation notation)
    {
        yield return $"{"figure",-33}{"batches",8}{"centre",9}{"limits",18}{"last",9}  what stands out";
        for (var i = 0; i < BatchFigures.All.Length; i++)
        {
            yield return Line(BatchFigures.All[i], FigureRows.Points(rows, i), notation);
        }
    }

    private static string Line(TrendFigure figure, List<TrendPoint> points, Notation notation)
    {
        string Say(double value) => TrendWords.Say(value, figure, notation);
        var head = $"{TrendWords.Name(figure, notation),-33}{points.Count,8}";
        return ControlChart.Of(points) is { } chart
            ? $"{head}{Say(chart.Centre),9}{Say(chart.Lower) + " .. " + Say(chart.Upper),18}{Say(points[^1].Value),9}  {TrendWords.StandsOut(chart, figure, notation)}".TrimEnd()
            : $"{head}  too few: {ControlChart.Fewest} are needed";
    }
}
