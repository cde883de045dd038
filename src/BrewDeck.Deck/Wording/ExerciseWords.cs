using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;

namespace BrewDeck.Deck.Wording;

/// <summary>Exercises as text: what is asked, and how it went.</summary>
public static class ExerciseWords
{
    public static string Title(Exercise exercise) => $"Exercise {exercise.Number}: {exercise.Name}";

    public static ImmutableArray<Line> Brief(Exercise exercise, Notation notation) =>
    [
        Line.Of(exercise.Aim, Tone.Strong),
        Line.Of(""),
        Line.Of("Watch", Tone.Strong),
        .. exercise.Watch.Select(w => Line.Of("  " + w)),
        Line.Of(""),
        Line.Of("Passed when", Tone.Strong),
        .. exercise.Passes.Select(c => Line.Of("  " + Of(c, notation))),
    ];

    public static ImmutableArray<Line> Verdict(Exercise exercise, ImmutableArray<Judged> judged, Notation notation) =>
    [
        Line.Of($"{Title(exercise)}: {(judged.All(j => j.Holds) ? "passed" : "not passed yet")}", Tone.Strong),
        .. judged.Select(j => Line.Of($"  {(j.Holds ? "yes" : "no "),-4} {Of(j.Criterion, notation)}", j.Holds ? Tone.Normal : Tone.Warning)),
        Line.Of(""),
    ];

    public static string Of(Criterion criterion, Notation notation) => criterion switch
    {
        Criterion.Done done => $"done: {Step(done.Kind)}",
        Criterion.Readings readings => $"at least {readings.Least} readings taken",
        Criterion.MashWithin mash => $"the mash at most {notation.Kelvin(mash.Kelvin)} off its rests on average",
        Criterion.GravityWithin gravity => $"original gravity within {Notation.Number(gravity.Points, "0.#")} points of the plan",
        Criterion.VolumeWithin volume => $"within {notation.Volume(volume.Litres)} of the plan into the fermenter",
        Criterion.Met met => $"{MishapWords.Name(met.Kind)} met within {Durations.Words(60 * met.Minutes)} of showing itself",
        Criterion.SpiltAtMost spilt => $"at most {notation.Volume(spilt.Litres)} boiled over",
        _ => Names.Spaced(criterion.GetType().Name),
    };

    private static string Step(StepKind kind) => kind switch
    {
        StepKind.TransferStrike => "the strike liquor is in the mash tun",
        StepKind.Vorlauf => "the wort runs clear",
        StepKind.Pitch => "the yeast is pitched",
        _ => Names.Spaced(kind.ToString()),
    };
}
