using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Core.Learning;

/// <summary>What of a day must teach nothing: by what the brewer reported, held or mended, and by what a rehearsal was dealt.</summary>
public static class Spoiling
{
    /// <summary>
    /// Something that ends by itself took so much longer than the profile says that the key is the likelier cause: four standard
    /// deviations of what is usual, and more, for each of them.
    /// </summary>
    public const double LateHeat = 0.85, LateFlow = 0.6;

    /// <summary>Null: what these steps gave can be believed.</summary>
    public static Spoilt? Of(RunState state, IEnumerable<RunStep> steps) => steps.Select(s => Of(state, s)).FirstOrDefault(s => s is not null);

    /// <summary>The same where it matters how long they took.</summary>
    public static Spoilt? OfTimed(RunState state, params IReadOnlyCollection<RunStep> steps) =>
        Of(state, steps) ?? (steps.Any(s => s.HeldForMs > 0) ? Spoilt.Held : null);

    private static Spoilt? Of(RunState state, RunStep step) =>
        step.EndedShort ? Spoilt.EndedShort : Reported(state, step) ?? Mended(state, step) ?? Dealt(state, step);

    private static Spoilt? Reported(RunState state, RunStep step) => state.Troubles
        .Select(t => t.Trouble.Kind switch
        {
            TroubleKind.BoiledOver when t.Trouble.About == step.Spec.Id => Spoilt.BoiledOver,
            TroubleKind.RunoffStuck when t.Trouble.About == step.Spec.Id => Spoilt.RunOffStuck,
            TroubleKind.BoilInterrupted when t.Trouble.About == step.Spec.Id => Spoilt.BoilStopped,
            TroubleKind.CircuitTripped or TroubleKind.ElementFailed when Heats(step) && Beside(step, t.AtMs, t.OverMs ?? long.MaxValue) => Spoilt.WithoutPower,
            _ => (Spoilt?)null,
        }).FirstOrDefault(s => s is not null);

    private static bool Heats(RunStep step) => step.Spec.Kind is StepKind.Boil or StepKind.HotBreak || step.Spec.Kind.EndsBy() == EndsBy.Temperature;

    private static Spoilt? Mended(RunState state, RunStep step) => step.Spec.Kind.RunsOff()
        && state.Remedies.Any(r => r.Remedy.Kind is RemedyKind.RakeBed or RemedyKind.Underlet or RemedyKind.RestBed && Beside(step, r.AtMs, r.AtMs))
        ? Spoilt.RunOffStuck
        : null;

    private static Spoilt? Dealt(RunState state, RunStep step) => state.Card?.Mishaps.FirstOrDefault(m => m.StepId == step.Spec.Id)?.Kind switch
    {
        null => null,
        MishapKind.BoilOver => Spoilt.BoiledOver,
        MishapKind.StuckBed => Spoilt.RunOffStuck,
        MishapKind.TrippedCircuit or MishapKind.FailedElement => Spoilt.WithoutPower,
        _ => Spoilt.Mishap,
    };

    private static bool Beside(RunStep step, long fromMs, long toMs) => step.StartedMs <= toMs && (step.EndedMs ?? long.MaxValue) >= fromMs;
}
