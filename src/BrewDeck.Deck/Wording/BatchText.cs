using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>A batch read back: each step as planned and as done, readings, remedies, notes.</summary>
public static class BatchText
{
    /// <param name="state">The fold of <paramref name="events"/>.</param>
    public static ImmutableArray<Line> Lines(IReadOnlyList<RunEvent> events, RunState state, Notation notation) => state.Plan is { } plan
        ? [.. Head(events, state, plan, notation), .. Steps(state, plan, notation), .. In(state, notation), .. Readings(state, plan, notation), .. Remedies(state, plan, notation), .. Notes(state, notation), .. FermentWords.Lines(state.Ferment, notation)]
        : [Line.Of(notation.Text("This batch holds no plan."))];

    private static IEnumerable<Line> Head(IReadOnlyList<RunEvent> events, RunState state, Plan plan, Notation notation)
    {
        yield return Line.Of(PlanLines.Heading(plan, notation), Tone.Strong);
        yield return Line.Of(notation.Text($"opened {notation.Date(events[0].AtMs)}, {Names.Status(state.Status, notation)}{(state.Rehearsed ? notation.Text(", a rehearsal") : "")}"));
        if (AbortWords.Line(state, notation) is { Length: > 0 } ended)
            yield return Line.Of(ended, state.ExerciseOver ? Tone.Normal : Tone.Warning);
        yield return Line.Of(notation.Text($"planned: gravity {notation.Gravity(plan.Totals.OriginalGravitySg)}, {notation.Volume(plan.Totals.FermenterL)} into the fermenter, {notation.Number(plan.Totals.BitternessIbu, "0")} IBU, {Durations.Short(plan.Totals.DayS)}"));
        if (Took(state) is { } s)
            yield return Line.Of(notation.Text($"took {Durations.Short(s)}"));
    }

    private static double? Took(RunState state) => state is { DayStartMs: { } from, OverMs: { } to } ? (to - from) / 1000.0 : null;

    private static IEnumerable<Line> Steps(RunState state, Plan plan, Notation notation)
    {
        yield return Line.Of("");
        yield return Line.Of(notation.Text("  planned          done              step"), Tone.Strong);
        foreach (var run in state.Steps)
            yield return Step(run, state, plan, notation);
    }

    private static Line Step(RunStep run, RunState state, Plan plan, Notation notation)
    {
        var planned = plan.Step(run.Spec.Id);
        var start = state.DayStartMs ?? run.StartedMs;
        var was = planned is null || start is null ? "" : $"{notation.Clock(start.Value + (long)(planned.StartS * 1000))} {PlanLines.Takes(planned)}";
        var title = StepTitles.Of(run, plan, notation);
        return new Line([
            new Span($"  {was,-16} ", Tone.Muted),
            new Span($"{Done(run, notation),-16}  "),
            new Span(planned is null ? title + notation.Text(" (put in)") : title, run.Status is RunStatus.Skipped ? Tone.Warning : Tone.Normal)]);
    }

    private static string Done(RunStep run, Notation notation) => run switch
    {
        { StartedMs: { } from, EndedMs: { } to } when run.Status == RunStatus.Complete => $"{notation.Clock(from)} {(to - from < 1000 ? "" : Durations.Short((to - from) / 1000.0))}",
        { StartedMs: { } from } when run.Status != RunStatus.Skipped => $"{notation.Clock(from)} {Names.Status(run.Status, notation)}",
        _ => Names.Status(run.Status, notation),
    };

    private static IEnumerable<Line> In(RunState state, Notation notation) => Part(notation.Text("What went in"), WentIn.Of(state).Select(w => new Line([
        new Span($"  {(w.Step.EndedMs is { } at ? notation.Clock(at) : ""),-5}  ", Tone.Muted),
        new Span(w.IsOff ? WentInWords.Off(w, notation) : Charges.One(w.Charge, notation), w.IsOff ? Tone.Warning : Tone.Normal)])));

    private static IEnumerable<Line> Readings(RunState state, Plan plan, Notation notation) => Part(notation.Text("Readings"), state.Readings.Select(r => new Line([
        new Span($"  {notation.Clock(r.AtMs)}  ", Tone.Muted),
        new Span(string.Join("; ", new[]
        {
            ReadingWords.One(r.Reading, plan.Brewhouse, notation),
            ReadingWords.Against(r.Reading.Kind, r.Reading.Value, r.Expected, notation),
            FigureWords.Moved(r.Moved, notation),
        }.Where(t => t.Length > 0)))])));

    private static IEnumerable<Line> Remedies(RunState state, Plan plan, Notation notation) => Part(notation.Text("Remedies"), state.Remedies.Select(r => new Line([
        new Span($"  {notation.Clock(r.AtMs)}  ", Tone.Muted),
        new Span($"{RemedyWords.Title(r.Remedy, plan.Brewhouse, notation)}: {RemedyWords.Gives(r.Remedy, notation)}")])));

    private static IEnumerable<Line> Notes(RunState state, Notation notation) => Part(notation.Text("Notes"), state.Notes.Select(n => new Line([
        new Span($"  {notation.Clock(n.AtMs)}  ", Tone.Muted),
        new Span(n.Text)])));

    private static IEnumerable<Line> Part(string heading, IEnumerable<Line> lines)
    {
        var all = lines.ToList();
        return all.Count == 0 ? [] : [Line.Of(""), Line.Of(heading, Tone.Strong), .. all];
    }
}
