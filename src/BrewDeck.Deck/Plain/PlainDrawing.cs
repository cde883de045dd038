using BrewDeck.Deck.Charts;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Plain;

/// <summary>A chart as lines: what was read beside the plan, the times of the steps, the figures of batches.</summary>
internal static class PlainDrawing
{
    public static IEnumerable<string> Of(Drawing drawing, Notation notation) => drawing switch
    {
        CurveDrawing curves => Curves(curves.Chart, notation),
        TimetableDrawing timetable => timetable.Rows.Select(x => Row(x, notation)).Prepend(notation.Text("Timetable, hours since the first step.")),
        ControlDrawing control => control.Points.Select(p => notation.Text($"Batch {p.Batch}: {notation.Number(p.Value, control.Format)}."))
            .Prepend(control.StandsOut == "" ? notation.Text("Nothing stands out.") : notation.Text($"Warning: {control.StandsOut}.")).Prepend($"{control.Title}: {control.Sums}."),
        _ => throw new NotSupportedException(drawing.GetType().Name),
    };

    private static IEnumerable<string> Curves(DayChart chart, Notation notation)
    {
        yield return notation.Text($"{chart.Title}, {chart.Unit}, hours since the first step.");
        foreach (var curve in chart.Curves)
        {
            if (curve.Read.IsEmpty)
                yield return notation.Text($"{curve.Name}: nothing read.");
            foreach (var read in curve.Read)
                yield return notation.Text($"{curve.Name} at {PlanLines.Since(read.AtS)}: read {notation.Number(read.Value, chart.Format)}{Planned(curve, read, chart, notation)}.");
        }
        if (chart.Band is { } band)
            yield return notation.Text($"Expected at {PlanLines.Since(band.AtS)}: 80 % band {notation.Number(band.Low, chart.Format)} to {notation.Number(band.High, chart.Format)}.");
    }

    /// <summary>The planned line at that time, where it has one.</summary>
    private static string Planned(DayCurve curve, CurvePoint read, DayChart chart, Notation notation)
    {
        var next = curve.Planned.ToList().FindIndex(p => p.AtS >= read.AtS);
        if (next < 1)
            return "";
        var (a, b) = (curve.Planned[next - 1], curve.Planned[next]);
        var value = b.AtS > a.AtS ? a.Value + (b.Value - a.Value) * (read.AtS - a.AtS) / (b.AtS - a.AtS) : b.Value;
        return double.IsFinite(value) ? notation.Text($", planned {notation.Number(value, chart.Format)}") : "";
    }

    private static string Row(TimetableRow row, Notation notation)
    {
        string? Said(string what, TimeSpanS? span) => span is { } s ? notation.Text($"{what} {PlanLines.Since(s.FromS)} to {PlanLines.Since(s.ToS)}") : null;
        string?[] parts = [Said(notation.Text("planned"), row.Planned), Said(notation.Text("done or expected"), row.Really), row.Late == "" ? null : row.Late];
        return $"{row.Title}: {string.Join(", ", parts.Where(p => p is not null))}.";
    }
}
