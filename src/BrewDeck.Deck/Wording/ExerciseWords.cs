using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;

namespace BrewDeck.Deck.Wording;

/// <summary>Exercises as text: what is asked, and how it went.</summary>
public static class ExerciseWords
{
    public static string Title(Exercise exercise, Notation notation) => notation.Text($"Exercise {exercise.Number}: {notation.Text(exercise.Name)}");

    public static ImmutableArray<Line> Brief(Exercise exercise, Notation notation) =>
    [
        Line.Of(notation.Text(exercise.Aim), Tone.Strong),
        Line.Of(""),
        Line.Of(notation.Text("Watch"), Tone.Strong),
        .. exercise.Watch.Select(w => Line.Of("  " + notation.Text(w))),
        Line.Of(""),
        Line.Of(notation.Text("Passed when"), Tone.Strong),
        .. exercise.Passes.Select(c => Line.Of("  " + (exercise.Unannounced ? Unnamed(c, notation) : Of(c, notation)))),
    ];

    /// <summary>Before it begins: what goes wrong is for the trainee to find.</summary>
    private static string Unnamed(Criterion criterion, Notation notation) => criterion is Criterion.Met met
        ? notation.Text($"what goes wrong answered within {Durations.Words(60 * met.Minutes, notation)} of showing itself")
        : Of(criterion, notation);

    public static ImmutableArray<Line> Verdict(Exercise exercise, ImmutableArray<Judged> judged, Notation notation) =>
    [
        Line.Of($"{Title(exercise, notation)}: {(judged.All(j => j.Holds) ? notation.Text("passed") : notation.Text("not passed yet"))}", Tone.Strong),
        .. judged.Select(j => Line.Of($"  {(j.Holds ? notation.Text("yes") : notation.Text("no ")),-4} {Of(j.Criterion, notation)}", j.Holds ? Tone.Normal : Tone.Warning)),
        Line.Of(""),
    ];

    public static string Of(Criterion criterion, Notation notation) => criterion switch
    {
        Criterion.Done done => notation.Text($"done: {Step(done.Kind, notation)}"),
        Criterion.Readings readings => notation.Text($"at least {readings.Least} readings taken"),
        Criterion.MashWithin mash => notation.Text($"the mash at most {notation.Kelvin(mash.Kelvin)} off its rests on average"),
        Criterion.GravityWithin gravity => notation.Text($"original gravity within {notation.Number(gravity.Points, "0.#")} points of the plan"),
        Criterion.VolumeWithin volume => notation.Text($"within {notation.Volume(volume.Litres)} of the plan into the fermenter"),
        Criterion.Met met => notation.Text($"{MishapWords.Name(met.Kind, notation)} answered within {Durations.Words(60 * met.Minutes, notation)} of showing itself"),
        Criterion.SpiltAtMost spilt => notation.Text($"at most {notation.Volume(spilt.Litres)} boiled over"),
        _ => Names.Spaced(criterion.GetType().Name),
    };

    private static string Step(StepKind kind, Notation notation) => kind switch
    {
        StepKind.TransferStrike => notation.Text("the strike liquor is in the mash tun"),
        StepKind.Vorlauf => notation.Text("the wort runs clear"),
        StepKind.Pitch => notation.Text("the yeast is pitched"),
        _ => Names.Spaced(kind.ToString()),
    };
}
