using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Training;

/// <summary>The exercises, for someone who has never brewed on three vessels: from water alone to a lager on which two things go wrong.</summary>
public static class Exercises
{
    public static ImmutableArray<Exercise> All { get; } =
    [
        new(1, "Water only",
            "Heat the strike liquor and pump it into the mash tun. No grain is touched.",
            ["The elements must be covered before the heat goes on.", "Read the tank's glass and its thermometer; j leaps over the waiting.", "Compare the two vessels: does the tun show as many litres as have left the tank?"],
            [new Criterion.Done(StepKind.TransferStrike), new Criterion.Readings(2)])
        {
            Until = StepKind.TransferStrike,
        },
        new(2, "The first mash",
            "Dough in, read the mash, and keep it at its rest until the wort runs clear.",
            ["Read the mash as soon as the grain is in.", "If it is off, r shows the ways back.", "While it rests, fill and heat the sparge liquor."],
            [new Criterion.Done(StepKind.Vorlauf), new Criterion.Readings(4), new Criterion.MashWithin(1.5)])
        {
            Until = StepKind.Vorlauf,
            Seed = 2,
        },
        new(3, "A calm day",
            "Brew a whole amber, from the first check to clean vessels.",
            ["Volume and gravity in the kettle before the boil decide the rest: read both.", "Hops go in when the countdown says so.", "Finish a step when the dials show it, not when the clock does."],
            [new Criterion.Done(StepKind.Pitch), new Criterion.Readings(8), new Criterion.GravityWithin(4), new Criterion.VolumeWithin(3)])
        {
            Seed = 3,
        },
        new(4, "A cold strike",
            "Notice a mash that is too cold, and bring it back before the enzymes run out of time.",
            ["A tank that nobody stirs lies in layers.", "The first reading of the mash says it; r mends it.", "The cheapest way is not always more heat."],
            [new Criterion.Done(StepKind.Vorlauf), new Criterion.Met(MishapKind.ColdStrike, 25), new Criterion.MashWithin(2.5)])
        {
            Until = StepKind.Vorlauf,
            Seed = 4,
            Mishaps = [new(MishapKind.ColdStrike, Severity.Severe)],
        },
        new(5, "Heat and foam",
            "Keep calm when a breaker trips, and stay with the kettle when it comes to the boil.",
            ["Mains near water: dry hands, and the plug dry before the breaker goes on.", "Foam gives about a minute.", "m shows what the hands can do."],
            [new Criterion.Done(StepKind.Pitch), new Criterion.Met(MishapKind.TrippedCircuit, 5), new Criterion.Met(MishapKind.BoilOver, 1), new Criterion.SpiltAtMost(0.5)])
        {
            Seed = 5,
            Mishaps = [new(MishapKind.TrippedCircuit, Severity.Plain), new(MishapKind.BoilOver, Severity.Plain)],
        },
        new(6, "A bed that closes",
            "Get all the wort out of a bed that will not run, without straining the pump.",
            ["Watch the kettle's glass: how fast does it rise?", "Half closed or loosened: the debrief shows what each costs.", "The lauter is over when the glass says so."],
            [new Criterion.Done(StepKind.Pitch), new Criterion.Met(MishapKind.StuckBed, 10), new Criterion.GravityWithin(5), new Criterion.VolumeWithin(4)])
        {
            Seed = 6,
            Mishaps = [new(MishapKind.StuckBed, Severity.Severe)],
        },
        new(7, "A lager, and two things go wrong",
            "A step mash and wort for a cold cellar; on the way, hours apart, two things go wrong that nobody announces.",
            ["Look at what stands beside the vessels, not only at what is in them.", "Each rest has its own reading.", "Lager wort is pitched cold: do not hurry the chiller more than you must."],
            [new Criterion.Done(StepKind.Pitch), new Criterion.Met(MishapKind.WrongWeighIn, 15), new Criterion.Met(MishapKind.SlowChiller, 10), new Criterion.GravityWithin(4), new Criterion.VolumeWithin(4)])
        {
            Recipe = "harbour-lager",
            Unannounced = true,
            Seed = 7,
            Mishaps = [new(MishapKind.WrongWeighIn, Severity.Plain), new(MishapKind.SlowChiller, Severity.Severe)],
        },
    ];

    /// <summary>Null: there is none of that number.</summary>
    public static Exercise? Find(int? number) => All.FirstOrDefault(e => e.Number == number);

    /// <summary>The exercise is over before the day is.</summary>
    public static bool IsOver(Exercise exercise, RunState state) => exercise.Until is { } kind
        && state.Status == RunStatus.Running && state.Steps.Any(s => s.Spec.Kind == kind && s.Status == RunStatus.Complete);

    public static ImmutableArray<Judged> Judge(Exercise exercise, RunState state, Debrief debrief) =>
        [.. exercise.Passes.Select(c => new Judged(c, c.Holds(state, debrief)))];
}
