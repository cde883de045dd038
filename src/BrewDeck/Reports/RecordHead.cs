using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Reports;

/// <summary>What a batch is, by whom and with which versions it was brewed, and its figures as planned and as they came out.</summary>
internal static class RecordHead
{
    public static RecordTable Batch(RecordSource source)
    {
        var (state, plan) = (source.State, source.Plan);
        return RecordTable.Pairs(
            "Batch",
            ("number", source.Notation.Number(source.Number, "0")),
            ("recipe", plan.Recipe.Name),
            ("brewhouse", plan.Brewhouse.Name),
            ("brewer", source.Opened.Brewer ?? ""),
            ("opened", source.Notation.Date(source.Opened.AtMs)),
            ("state", Names.Status(state.Status, source.Notation)),
            ("kind", state.Rehearsed ? "rehearsed on a simulated brewhouse" : "brewed"),
            (state.ExerciseOver ? "ended because" : "given up because", AbortWords.Reason(state.AbortReason, source.Notation)),
            ("day took", Took(state) is { } s ? Durations.Short(s) : ""));
    }

    /// <summary>By what the record can be checked: nothing for the brewer, so it stands at the end.</summary>
    public static RecordTable Seal(RecordSource source)
    {
        var plan = source.Plan;
        return RecordTable.Pairs(
            "For checking",
            ("recipe version", Fingerprint.Of(plan.Recipe)),
            ("brewhouse version", Fingerprint.Of(plan.Brewhouse)),
            ("program version", source.Opened.ProgramVersion),
            ("events", source.Notation.Number(source.Events.Count, "0")),
            ("checksum of the record", Convert.ToHexStringLower(source.Lines[^1].Hash)));
    }

    public static RecordTable Figures(RecordSource source)
    {
        var (t, notation, came, read) = (source.Plan.Totals, source.Notation, source.Came, new RecordReadings(source));
        var over = source.State.Status == RunStatus.Complete;
        return new(
            over ? "Planned, and what came out" : "Planned and expected",
            ["figure", "planned", "read", over ? "reckoned" : "expected", "80 % band"],
            [
                Row("pre_boil_l", t.PreBoilL, read.PreBoilL, came.PreBoilL, notation),
                Row("pre_boil_gravity_sg", t.PreBoilGravitySg, read.PreBoilGravity, came.PreBoilGravitySg, notation),
                Row("post_boil_l", t.PostBoilL, read.PostBoilL, came.PostBoilL, notation),
                Row("fermenter_l", t.FermenterL, read.FermenterL, came.FermenterL, notation),
                Row("original_gravity_sg", t.OriginalGravitySg, read.OriginalGravity, came.OriginalGravitySg, notation),
                Row("bitterness_ibu", t.BitternessIbu, "", came.BitternessIbu, notation),
                Row("colour_ebc", t.ColourEbc, "", came.ColourEbc, notation),
                Row("pitch_c", t.PitchC, read.PitchC, came.PitchC, notation),
            ]);
    }

    public static RecordTable AfterTheDay(RecordSource source) => new(
        "After the day",
        [],
        [.. FermentWords.Lines(source.State.Ferment, source.Notation)
            .Where(line => line.Spans.Length == 2)
            .Select(line => ImmutableArray.Create(line.Spans[0].Text.Trim(), line.Spans[1].Text))]);

    public static RecordTable Limits(RecordSource source) => new(
        "Limits checked", ["limit"], [.. source.Plan.Limits.Select(limit => ImmutableArray.Create(LimitWords.Of(limit, source.Notation, source.Plan.Brewhouse)))]);

    private static ImmutableArray<string> Row(string figure, double planned, string read, Figure came, Notation notation) =>
    [
        FigureWords.Name(figure, notation),
        FigureWords.Value(figure, planned, notation),
        read,
        FigureWords.Value(figure, came.P50, notation),
        came is { P10: { } low, P90: { } high } ? Band(FigureWords.Value(figure, low, notation), FigureWords.Value(figure, high, notation)) : "",
    ];

    /// <summary>A band that reads the same at both ends is one figure.</summary>
    private static string Band(string low, string high) => low == high ? low : $"{low} to {high}";

    private static double? Took(RunState state) =>
        state.DayStartMs is { } from && state.Steps.Max(s => s.EndedMs) is { } to ? (to - from) / 1000.0 : null;
}
