using System.Collections.Immutable;
using System.Text.Json;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using Humanizer;

namespace BrewDeck.Commands;

/// <summary><c>brewdeck lessons</c>: what the batches say about a brewhouse. It changes nothing; lessons are accepted on the deck.</summary>
internal static class LessonsCommand
{
    public static int Run(Workplace place, string brewhouse, bool rehearsed, bool json, Notation notation) => place.Guard(() =>
    {
        var profiles = place.Profiles();
        var house = profiles.Brewhouse(profiles.FindBrewhouse(brewhouse));
        using var journal = place.OpenReader();
        var batches = LessonBook.Of(journal, house, rehearsed);
        var left = rehearsed ? 0 : journal.List().Count(h => h.Rehearsed && h.Brewhouse == house.Name && h.Status == RunStatus.Complete);
        var lessons = Lessons.Of(house, batches);
        if (json)
            place.Output.WriteLine(Json(house, batches, lessons));
        else
            Write(place.Output, house, batches, lessons, left, notation);
        return ExitCode.Done;
    });

    private static void Write(TextWriter output, Brewhouse house, ImmutableArray<BatchTrace> batches, ImmutableArray<Lesson> lessons, int left, Notation notation)
    {
        output.WriteLine($"Lessons for {house.Name} from {"batch".ToQuantity(batches.Length)}");
        if (left > 0)
            output.WriteLine($"{NoneFound.Rehearsed(left)} of it not counted: --rehearsed takes {(left == 1 ? "it" : "them")} in");
        foreach (var lesson in lessons)
        {
            output.WriteLine();
            output.WriteLine($"{Names.Sentence(LessonWords.Name(lesson.Parameter, house, notation))}: {Verdict(lesson, notation)}");
            foreach (var line in LessonWords.Details(lesson, Effect(house, batches, lesson), notation))
                output.WriteLine("  " + line);
        }
    }

    private static string Verdict(Lesson lesson, Notation notation) =>
        lesson.EnoughData && lesson.Parameter.With is not null && !lesson.Moves ? "no reason to change" : LessonWords.Verdict(lesson, notation);

    private static ImmutableArray<Shift> Effect(Brewhouse house, ImmutableArray<BatchTrace> batches, Lesson lesson) =>
        batches.IsEmpty || !lesson.CanBeAccepted ? [] : PlanEffect.Of(house, lesson.AppliedTo(house), batches[^1].Plan.Recipe, batches[^1].Plan.Choices);

    private static string Json(Brewhouse house, ImmutableArray<BatchTrace> batches, ImmutableArray<Lesson> lessons) => JsonOut.Line(json =>
    {
        json.WriteStartObject();
        json.WriteString("brewhouse", house.Name);
        json.WriteNumber("batches", batches.Length);
        json.WriteStartArray("lessons");
        foreach (var lesson in lessons)
            Write(json, lesson, Effect(house, batches, lesson));
        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter json, Lesson lesson, ImmutableArray<Shift> effect)
    {
        json.WriteStartObject();
        json.WriteString("parameter", lesson.Parameter.Id);
        json.WriteString("unit", lesson.Parameter.Unit);
        json.Round("profile", lesson.Parameter.With is null ? null : lesson.Current, 5);
        json.WriteBoolean("enough_data", lesson.EnoughData);
        json.WriteBoolean("can_be_accepted", lesson.CanBeAccepted);
        json.WriteNumber("batches", lesson.Band.Batches);
        json.Round("p10", lesson.Band.P10, 5);
        json.Round("p50", lesson.Band.Mean, 5);
        json.Round("p90", lesson.Band.P90, 5);
        json.WriteStartArray("evidence");
        foreach (var e in lesson.Evidence)
            Write(json, e);
        json.WriteEndArray();
        json.WriteStartArray("next_plan");
        foreach (var shift in effect)
        {
            json.WriteStartObject();
            json.WriteString("figure", shift.Figure);
            json.Round("before", shift.Before, 5);
            json.Round("after", shift.After, 5);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Evidence e)
    {
        json.WriteStartObject();
        json.WriteNumber("batch", e.Batch);
        json.Round("value", e.Value, 5);
        json.Round("sd", e.Sd, 5);
        json.Round("shared_sd", e.SharedSd, 5);
        json.WriteBoolean("upper_limit", e.IsUpperLimit);
        if (e.LeftOut is { } reason)
            json.WriteString("left_out", SnakeName.Of(reason));
        json.WriteStartObject("readings");
        foreach (var group in e.Readings.GroupBy(r => r.What))
            json.Round(group.Key, group.Last().Value, 5);
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
