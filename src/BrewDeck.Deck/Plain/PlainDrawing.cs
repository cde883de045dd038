using BrewDeck.Deck.Charts;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Plain;

/// <summary>A chart as lines: what was read beside the plan, the times of the steps, the figures of batches.</summary>
internal static class PlainDrawing
{
    public static IEnumerable<string> Of(Drawing drawing) => drawing switch
    {
        CurveDrawing curves => Curves(curves.Chart),
        TimetableDrawing timetable => timetable.Rows.Select(Row).Prepend("Timetable, hours since the first step."),
        ControlDrawing control => control.Points.Select(p => $"Batch {p.Batch}: {Notation.Number(p.Value, control.Format)}.")
            .Prepend(control.StandsOut == "" ? "Nothing stands out." : $"Warning: {control.StandsOut}.").Prepend($"{control.Title}: {control.Sums}."),
        _ => throw new NotSupportedException(drawing.GetType().Name),
    };

    private static IEnumerable<string> Curves(DayChart chart)
    {
        yield return $"{chart.Title}, {chart.Unit}, hours since the first step.";
        foreach (var curve in chart.Curves)
        {
            if (curve.Read.IsEmpty)
                yield return $"{curve.Name}: nothing read.";
            foreach (var read in curve.Read)
                yield return $"{curve.Name} at {PlanLines.Since(read.AtS)}: read {Notation.Number(read.Value, chart.Format)}{Planned(curve, read, chart)}.";
        }
        if (chart.Band is { } band)
            yield return $"Expected at {PlanLines.Since(band.AtS)}: 80 % band {Notation.Number(band.Low, chart.Format)} to {Notation.Number(band.High, chart.Format)}.";
    }

    /// <summary>The planned line at that time, where it has one.</summary>
    private static string Planned(DayCurve curve, CurvePoint read, DayChart chart)
    {
        var next = curve.Planned.ToList().FindIndex(p => p.AtS >= read.AtS);
        if (next < 1)
            return "";
        var (a, b) = (curve.Planned[next - 1], curve.Planned[next]);
        var value = b.AtS > a.AtS ? a.Value + (b.Value - a.Value) * (read.AtS - a.AtS) / (b.AtS - a.AtS) : b.Value;
        return double.IsFinite(value) ? $", planned {Notation.Number(value, chart.Format)}" : "";
    }

    private static string Row(TimetableRow row)
    {
        static string? Said(string what, TimeSpanS? span) => span is { } s ? $"{what} {PlanLines.Since(s.FromS)} to {PlanLines.Since(s.ToS)}" : null;
        string?[] parts = [Said("planned", row.Planned), Said("done or expected", row.Really), row.Late == "" ? null : row.Late];
        return $"{row.Title}: {string.Join(", ", parts.Where(p => p is not null))}.";
    }
}
