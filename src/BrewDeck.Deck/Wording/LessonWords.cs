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
        "conversion_yield" => notation.Text("conversion yield"),
        "sparge_stages" => notation.Text("washing of the sparge, in stages"),
        "grain_absorption" => notation.Text("grain absorption"),
        "evaporation" => notation.Text("evaporation"),
        "runoff" => notation.Text("run-off"),
        "pump_flow" => notation.Text("pump flow"),
        "cast_out_loss" => notation.Text("left behind at cast-out (as trub)"),
        "chiller" => notation.Text("chiller heat transfer"),
        "fermenter_loss" => notation.Text("left behind in the fermenter"),
        "net" => notation.Text($"net power of {Names.The(house, parameter.Vessel, notation)}"),
        "heat_loss" => notation.Text($"heat loss of {Names.The(house, parameter.Vessel, notation)}"),
        _ => Names.Plainly(parameter.Stem),
    };

    public static string Value(LessonParameter parameter, double value, Notation notation) => parameter.Unit switch
    {
        "" when parameter.IsShare => notation.Percent(value),
        "L" => $"{notation.Number(notation.InVolumeUnit(value), "0.00")} {notation.VolumeUnit}",
        "W/K" when value >= 100 => notation.Number(value, "0") + " W/K",
        { } unit => notation.Rate(value, unit, "0.00"),
    };

    public static string Band(Lesson lesson, Notation notation) =>
        $"{Value(lesson.Parameter, lesson.Band.P10, notation)} .. {Value(lesson.Parameter, lesson.Band.P90, notation)}";

    /// <summary>"change", "narrower", "as it is", "too few data".</summary>
    public static string Verdict(Lesson lesson, Notation notation) => lesson.Moves ? notation.Text("change")
        : lesson.CanBeAccepted ? notation.Text("narrower")
        : !lesson.EnoughData ? notation.Text("too few data")
        : lesson.Parameter.With is null ? notation.Text("for your notes") : notation.Text("as it is");

    /// <summary>Everything about one lesson: what is believed, why, and what it would change.</summary>
    public static ImmutableArray<Line> Details(Lesson lesson, IEnumerable<Shift> effect, Notation notation)
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        lines.Add(Line.Of(Headline(lesson, notation), Tone.Strong));
        if (lesson.EnoughData)
            lines.Add(Line.Of(notation.Text($"80 % band {Band(lesson, notation)}, from {Counts.Batches(lesson.Band.Batches, notation)}.")));
        if (lesson.EnoughData && lesson.Parameter.With is not null && !lesson.Moves)
            lines.Add(Line.Of(Stays(lesson, notation)));
        if (lesson.Parameter.Id == LessonParameters.SpargeStages)
            lines.Add(Line.Of(notation.Text("How well the sparge rinses: this many perfect rinses one after another would bring as much. Even and slow brings more."), Tone.Muted));
        if (!lesson.EnoughData)
            lines.Add(Line.Of(TooFew(lesson, notation), Tone.Muted));
        if (lesson.CanBeAccepted && FigureWords.Moved(effect, notation) is { Length: > 0 } moved)
            lines.Add(Line.Of(notation.Text($"In the next plan: {moved}.")));
        foreach (var e in lesson.Evidence.Reverse().Take(MostEvidence))
            lines.Add(Of(lesson.Parameter, e, notation));
        if (lesson.Evidence.Length > MostEvidence)
            lines.Add(Line.Of(notation.Text($"and {lesson.Evidence.Length - MostEvidence} older"), Tone.Muted));
        return lines.ToImmutable();
    }

    private static string Headline(Lesson lesson, Notation notation)
    {
        string now = Value(lesson.Parameter, lesson.Current, notation), really = Value(lesson.Parameter, lesson.Band.Mean, notation);
        return (lesson.Parameter.With is not null, lesson.EnoughData) switch
        {
            (true, true) => notation.Text($"profile {now}, really {really}"),
            (true, false) => notation.Text($"profile {now}"),
            (false, true) => notation.Text($"really {really}"),
            _ => notation.Text("not known"),
        };
    }

    private static string Stays(Lesson lesson, Notation notation) => lesson.CanBeAccepted
        ? notation.Text("No reason to change the number. Your days differ less than was thought: if you accept, the number stays and the bands of the next plans become narrower.")
        : notation.Text("No reason to change: the band holds it.");

    private static string TooFew(Lesson lesson, Notation notation) => lesson.Band.Batches < Lesson.FewestBatches
        ? notation.Text($"Too few data: {Counts.Batches(lesson.Band.Batches, notation)} measured it, {Lesson.FewestBatches} are wanted.")
        : notation.Text($"Too few data: {Counts.Batches(lesson.Band.Batches, notation)} measured it, and they narrow it hardly more than is known beforehand.");

    private static Line Of(LessonParameter parameter, Evidence e, Notation notation) => new(
    [
        new Span(notation.Text($"batch {e.Batch}: "), Tone.Muted),
        .. e.LeftOut is { } why ? [new Span(notation.Text($"left out, {Why(why, notation)}: "), Tone.Warning)] : Array.Empty<Span>(),
        new Span(e.IsUpperLimit ? notation.Text($"at most {Value(parameter, e.Value, notation)}") : Value(parameter, e.Value, notation)),
        new Span(notation.Text(" from ") + string.Join(", ", e.Readings.Select(r => $"{EvidenceWords.Name(r.What, notation)} {Shown(r, notation)}")), Tone.Muted),
    ]);

    /// <summary>Why a batch says nothing of a number.</summary>
    private static string Why(Spoilt why, Notation notation) => why switch
    {
        Spoilt.BoiledOver => notation.Text("boiled over"),
        Spoilt.RunOffStuck => notation.Text("stuck run-off"),
        Spoilt.BoilStopped => notation.Text("the boil stopped"),
        Spoilt.WithoutPower => notation.Text("not all the power"),
        Spoilt.Held => notation.Text("on hold in between"),
        Spoilt.EndedShort => notation.Text("ended short"),
        Spoilt.Late => notation.Text("read or struck late"),
        _ => notation.Text("a mishap in it"),
    };

    // a rate or a duration in hours keeps its unit as it is
    private static string Shown(DrivingReading r, Notation notation) => r.What.EndsWith("_per_min", StringComparison.Ordinal)
        ? notation.Rate(r.Value, "L/min", "0.00")
        : r.What.EndsWith("_h", StringComparison.Ordinal) ? Durations.Short(3600 * r.Value) : FigureWords.Value(r.What, r.Value, notation);
}
