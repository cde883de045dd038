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
    public static IEnumerable<string> Text(IReadOnlyList<(BatchHead Head, double?[] Values)> rows)
    {
        yield return $"{"figure",-22}{"batches",8}{"centre",9}{"limits",18}{"last",9}  what stands out";
        for (var i = 0; i < BatchFigures.All.Length; i++)
        {
            var figure = BatchFigures.All[i];
            var points = rows.Where(r => r.Values[i] is not null).Select(r => new TrendPoint(r.Head.Number, r.Values[i]!.Value)).ToList();
            yield return Line(figure, points);
        }
    }

    private static string Line(TrendFigure figure, List<TrendPoint> points)
    {
        string Say(double value) => Notation.Number(value, figure.Format);
        var head = $"{figure.Name,-22}{points.Count,8}";
        if (ControlChart.Of(points) is not { } chart)
            return $"{head}  too few: {ControlChart.Fewest} are needed";
        return $"{head}{Say(chart.Centre),9}{Say(chart.Lower) + " to " + Say(chart.Upper),18}{Say(points[^1].Value),9}  {StandsOut(chart, Say)}".TrimEnd();
    }

    private static string StandsOut(ControlChart chart, Func<double, string> say)
    {
        const int most = 5;
        var outside = chart.Outside.TakeLast(most).Select(p => $"batch {p.Batch} outside ({say(p.Value)})");
        var shifted = chart.Shifted.TakeLast(1).Select(p => $"eight or more on one side up to batch {p.Batch}");
        return string.Join(", ", outside.Concat(shifted));
    }
}
