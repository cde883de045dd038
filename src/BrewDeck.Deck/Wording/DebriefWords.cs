using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>A rehearsed day looked back at, as text.</summary>
public static class DebriefWords
{
    /// <param name="day">The fold of the day: what was read, what went in, how long it took.</param>
    /// <param name="said">What the deck last reckoned with.</param>
    public static ImmutableArray<Line> Lines(Debrief debrief, RunState day, Outlook said, Notation notation) =>
    [
        .. Figures(debrief, day, said, notation),
        .. debrief.Mishaps.SelectMany(m => MishapDebriefWords.Lines(m, notation)),
        .. debrief.Mishaps.IsEmpty ? new[] { Line.Of(""), Line.Of(notation.Text("Nothing went wrong on purpose that day.")) } : [],
        .. debrief.Mishaps.Any(m => m.Chosen is not null)
            ?
            [
                Line.Of(""),
                Line.Of(notation.Text("Each line is the day brewed again from its record, your own answer too, with no remedy for later readings: none need equal the table."), Tone.Muted),
                Line.Of(notation.Text("The other answers were given as soon as it could be seen."), Tone.Muted),
                Line.Of(notation.Text($"Points off are how far such a day is from the plan, the least is best, half a point is nothing; 1 is a gravity point, {notation.Number(100 * DayLoss.VolumeShare, "0")} % of the volume, {Ibu(DayLoss.Ibu, notation)}, {notation.Kelvin(DayLoss.MashK)} of the mash, {notation.Kelvin(DayLoss.PitchK)} of the pitching or {Durations.Short(DayLoss.LateS)}."), Tone.Muted),
            ]
            : Array.Empty<Line>(),
        .. Besides(day, notation),
    ];

    internal static string Ibu(double ibu, Notation notation) => notation.Number(ibu, "0") + " IBU";

    private static IEnumerable<Line> Figures(Debrief debrief, RunState day, Outlook said, Notation notation)
    {
        var (plan, result) = (debrief.Plan, debrief.Result);
        foreach (var line in debrief.Pitched ? Table(debrief, day, said, notation) : [Line.Of(notation.Text($"  day              {Durations.Short(plan.FinishS),-10} ended after {Durations.Short(result.FinishS)}, not pitched"), Tone.Warning)])
            yield return line;
        yield return Line.Of(notation.Text("  In truth: what the rehearsal's vessels held; on a real day nobody knows it."), Tone.Muted);
        if (day.Steps.Any(s => s.Spec.Kind == StepKind.Rest && s.StartedMs is not null))
            yield return Line.Of(result.MashWorstAtS is { } worst
                ? notation.Text($"  The mash was {notation.Kelvin(result.MashOffK)} off its rests on average, {notation.Kelvin(result.MashWorstK)} at worst, after {Durations.Short(worst)} ({StepAt(worst, day, notation)}).")
                : notation.Text($"  The mash was {notation.Kelvin(result.MashOffK)} off its rests on average, {notation.Kelvin(result.MashWorstK)} at worst."));
        if (result.SpiltL > 0)
            yield return Line.Of(notation.Text($"  {notation.Volume(result.SpiltL)} of wort boiled over."), Tone.Warning);
    }

    /// <summary>Columns as wide as what stands in them: a row that a page of 80 columns has to wrap loses them.</summary>
    private static IEnumerable<Line> Table(Debrief debrief, RunState day, Outlook said, Notation notation)
    {
        var (plan, result) = (debrief.Plan, debrief.Result);
        Row[] figures = [.. Rows(plan, result, day.Readings, said, notation)];
        string[][] rows =
        [
            ["", notation.Text("plan"), notation.Text("read"), notation.Text("the deck reckoned"), notation.Text("in truth")],
            .. figures.Select(Cells),
            [notation.Text("day"), Durations.Short(plan.FinishS), "", "", Durations.Short(result.FinishS)],
        ];
        var widths = Enumerable.Range(0, rows[0].Length).Select(i => rows.Max(r => r[i].Length)).ToArray();
        for (var i = 0; i < rows.Length; i++)
        {
            var text = "  " + string.Join(' ', rows[i].Select((c, at) => c.PadRight(widths[at]))).TrimEnd();
            yield return Line.Of(text, i == 0 ? Tone.Strong : figures.ElementAtOrDefault(i - 1) is { } row && IsBeside(row) ? Tone.Warning : Tone.Normal);
        }
        if (figures.Any(IsBeside))
            yield return Line.Of(notation.Text("  ! outside the band that the deck reckoned"), Tone.Warning);
    }

    /// <summary>What was at work on the mash then.</summary>
    private static string StepAt(double seconds, RunState day, Notation notation) =>
        day.Steps.Where(s => s.Spec.Unit == UnitProcedure.Mash && s.StartedMs is { } from && day.SecondsAt(from) <= seconds + 1).MaxBy(s => s.StartedMs) is { } step
            ? StepTitles.Of(step, day.Plan!, notation)
            : notation.Text("mash");

    /// <summary>A figure of the day.</summary>
    private sealed record Row(string Name, Func<double, string> Value, double Plan, TakenReading? Read, Figure Said, double Truth);

    private static IEnumerable<Row> Rows(DayResult plan, DayResult result, IReadOnlyList<TakenReading> readings, Outlook said, Notation notation) =>
    [
        new(notation.Text("gravity"), notation.Gravity, plan.OriginalGravitySg, Last(ReadingKind.Gravity, readings), said.OriginalGravitySg, result.OriginalGravitySg),
        new(notation.Text("into fermenter"), notation.Volume, plan.FermenterL, Last(ReadingKind.Volume, readings), said.FermenterL, result.FermenterL),
        new(notation.Text("bitterness"), ibu => Ibu(ibu, notation), plan.BitternessIbu, null, said.BitternessIbu, result.BitternessIbu),
        new(notation.Text("pitched at"), notation.Temp, plan.PitchC, Last(ReadingKind.Temperature, readings), said.PitchC, result.PitchC),
    ];

    /// <summary>With a mark where the truth lies outside what the deck thought likely.</summary>
    private static string[] Cells(Row row)
    {
        var band = row.Said is { P10: { } low, P90: { } high } ? $" ({Bare(row.Value(low))}..{row.Value(high)})" : "";
        return [row.Name, row.Value(row.Plan), row.Read is null ? "-" : row.Value(row.Read.Reading.Value), row.Value(row.Said.P50) + band, row.Value(row.Truth) + (IsBeside(row) ? " !" : "")];
    }

    /// <summary>The unit stands once, behind the upper end.</summary>
    private static string Bare(string value) => value.Split(' ')[0];

    /// <summary>As it reads, and not by what rounding hides.</summary>
    private static bool IsBeside(Row row) => row.Said is { P10: { } low, P90: { } high } && (row.Truth < low || row.Truth > high)
        && row.Value(row.Truth) != row.Value(low) && row.Value(row.Truth) != row.Value(high);

    /// <summary>The last one in the fermenter.</summary>
    private static TakenReading? Last(ReadingKind kind, IReadOnlyList<TakenReading> readings) =>
        readings.LastOrDefault(r => r.Reading.Is(kind, Places.Fermenter));

    /// <summary>What moved the day beside the mishaps: other amounts than planned, and the steps that took longest beyond their plan.</summary>
    private static IEnumerable<Line> Besides(RunState day, Notation notation)
    {
        var lines = WentIn.Of(day).Where(w => w.IsOff).Select(w => WentInWords.Off(w, notation)).Concat(Late(day, notation)).ToList();
        return lines.Count == 0 ? [] : [Line.Of(""), Line.Of(notation.Text("What else moved the day"), Tone.Strong), .. lines.Select(l => Line.Of("  " + l))];
    }

    /// <summary>Less is the pace of the hands.</summary>
    private const double LateS = 600;

    private const int MostLate = 5;

    private static IEnumerable<string> Late(RunState day, Notation notation) => day.Steps
        .Where(s => s is { Status: RunStatus.Complete, StartedMs: not null, EndedMs: not null })
        .Select(s => (Run: s, Planned: day.Plan!.Step(s.Spec.Id)?.DurationS, TookS: (s.EndedMs!.Value - s.StartedMs!.Value) / 1000.0))
        .Where(s => s.TookS - (s.Planned ?? 0) >= LateS)
        .OrderByDescending(s => s.TookS - (s.Planned ?? 0)).Take(MostLate)
        .Select(s => s.Planned is { } planned
            ? notation.Text($"{StepTitles.Of(s.Run, day.Plan!, notation)}: took {Durations.Short(s.TookS)}, planned {Durations.Short(planned)}.")
            : notation.Text($"{StepTitles.Of(s.Run, day.Plan!, notation)}: took {Durations.Short(s.TookS)}, put in by a remedy."));
}
