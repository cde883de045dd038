using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Reports;

/// <summary>Each step as planned against as done.</summary>
internal static class RecordSteps
{
    public static RecordTable Of(RecordSource source) => new(
        "Steps", ["planned", "takes", "started", "took", "late by", "step", "expected", "read"],
        [.. source.State.Steps.Select(run => Row(run, source.Plan.Step(run.Spec.Id), source))])
    {
        Wide = "step",
    };

    private static ImmutableArray<string> Row(RunStep run, PlanStep? planned, RecordSource source) =>
    [
        planned is null ? "put in" : source.Minute(source.DayStartMs + (long)(1000 * planned.StartS)),
        planned is null ? "" : PlanLines.Takes(planned),
        run is { StartedMs: { } from, Status: not RunStatus.Skipped } ? source.Minute(from) : Names.Status(run.Status, source.Notation),
        run is { StartedMs: { } start, EndedMs: { } end } && end - start >= 1000 ? Durations.Short((end - start) / 1000.0) : "",
        planned is not null && run.StartedMs is { } began ? Late((began - source.DayStartMs) / 1000.0 - planned.StartS) : "",
        source.Title(run.Spec.Id),
        planned is null ? "" : string.Join("; ", planned.Expected.Select(e => Said(e.Kind, e.Vessel, e.Value, source))),
        string.Join("; ", source.State.Readings.Where(r => r.StepId == run.Spec.Id).Select(r => Said(r.Reading.Kind, r.Reading.Vessel, r.Reading.Value, source))),
    ];

    private static string Late(double seconds) => Math.Abs(seconds) < 30 ? "" : Durations.Short(60 * Math.Round(seconds / 60));

    private static string Said(ReadingKind kind, string vessel, double value, RecordSource source) =>
        ReadingWords.One(new Reading(kind, vessel, value, ""), source.Plan.Brewhouse, source.Notation);
}
