using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>Lessons in words.</summary>
public static class LessonWords
{
    /// <summary>Evidence shown for one lesson; the rest is in the logbook.</summary>
    private const int MostEvidence = 8;

    public static string Name(LessonParameter parameter, Brewhouse house, Notation notation) => parameter.Stem switch
    {
        "conversion_yield" => "conversion yield",
        "sparge_stages" => "washing stages of the sparge",
        "grain_absorption" => "grain absorption",
        "evaporation" => "evaporation",
        "runoff" => "runoff",
        "pump_flow" => "pump flow",
        "cast_out_loss" => "left behind at cast-out (as trub)",
        "chiller" => "chiller heat transfer",
        "fermenter_loss" => "left behind in the fermenter",
        "net" => $"net power of {Names.The(house, parameter.Vessel, notation)}",
        "heat_loss" => $"heat loss of {Names.The(house, parameter.Vessel, notation)}",
        _ => Names.Plainly(parameter.Stem),
    };

    public static string Value(LessonParameter parameter, double value, Notation notation) => parameter.Unit switch
    {
        "" when parameter.IsShare => notation.Percent(value),
        "L" => notation.Number(value, "0.00") + " L",
        "W/K" when value >= 100 => notation.Number(value, "0") + " W/K",
        { } unit => (notation.Number(value, "0.00") + " " + unit).TrimEnd(),
    };

    public static string Band(Lesson lesson, Notation notation) =>
        $"{Value(lesson.Parameter, lesson.Band.P10, notation)} .. {Value(lesson.Parameter, lesson.Band.P90, notation)}";

    /// <summary>"change", "narrower", "as it is", "too few data".</summary>
    public static string Verdict(Lesson lesson) =>
        lesson.Moves ? "change" : lesson.CanBeAccepted ? "narrower" : lesson.EnoughData ? lesson.Parameter.With is null ? "for your notes" : "as it is" : "too few data";

    /// <summary>Everything about one lesson: what is believed, why, and what it would change.</summary>
    public static ImmutableArray<Line> Details(Lesson lesson, IEnumerable<Shift> effect, Notation notation)
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        lines.Add(Line.Of(Headline(lesson, notation), Tone.Strong));
        if (lesson.EnoughData)
            lines.Add(Line.Of($"80 % band {Band(lesson, notation)}, from {Batches(lesson.Band.Batches)}."));
        if (lesson.EnoughData && lesson.Parameter.With is not null && !lesson.Moves)
            lines.Add(Line.Of(Stays(lesson)));
        if (!lesson.EnoughData)
            lines.Add(Line.Of(TooFew(lesson), Tone.Muted));
        if (lesson.CanBeAccepted && FigureWords.Moved(effect, notation) is { Length: > 0 } moved)
            lines.Add(Line.Of($"In the next plan: {moved}."));
        foreach (var e in lesson.Evidence.Reverse().Take(MostEvidence))
            lines.Add(Of(lesson.Parameter, e, notation));
        if (lesson.Evidence.Length > MostEvidence)
            lines.Add(Line.Of($"and {lesson.Evidence.Length - MostEvidence} older", Tone.Muted));
        return lines.ToImmutable();
    }

    private static string Headline(Lesson lesson, Notation notation)
    {
        var now = lesson.Parameter.With is null ? "" : $"profile {Value(lesson.Parameter, lesson.Current, notation)}";
        return lesson.EnoughData ? $"{now}{(now.Length > 0 ? ", " : "")}really {Value(lesson.Parameter, lesson.Band.Mean, notation)}" : now.Length > 0 ? now : "not known";
    }

    private static string Stays(Lesson lesson) => lesson.CanBeAccepted
        ? "No reason to change the number. Your days differ less than was thought: accept it for narrower bands."
        : "No reason to change: the band holds it.";

    private static string TooFew(Lesson lesson) => lesson.Band.Batches < Lesson.FewestBatches
        ? $"Too few data: {Batches(lesson.Band.Batches)} measured it, {Lesson.FewestBatches} are wanted."
        : $"Too few data: {Batches(lesson.Band.Batches)} measured it, and they narrow it hardly more than is known beforehand.";

    private static string Batches(int count) => count == 1 ? "1 batch" : $"{count} batches";

    private static Line Of(LessonParameter parameter, Evidence e, Notation notation) => new(
    [
        new Span($"batch {e.Batch}: ", Tone.Muted),
        new Span((e.IsUpperLimit ? "at most " : "") + Value(parameter, e.Value, notation)),
        new Span(" from " + string.Join(", ", e.Readings.Select(r => $"{FigureWords.Name(r.What, notation)} {Shown(r, notation)}")), Tone.Muted),
    ]);

    // a rate or a duration in hours keeps its unit as it is
    private static string Shown(DrivingReading r, Notation notation) => r.What.EndsWith("_per_min", StringComparison.Ordinal)
        ? notation.Number(r.Value, "0.00") + " L/min"
        : r.What.EndsWith("_h", StringComparison.Ordinal) ? Durations.Short(3600 * r.Value) : FigureWords.Value(r.What, r.Value, notation);
}
