using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>What was skipped or ended at the wrong time that the wort would have been another with: nobody needs to report it besides.</summary>
public static class Slips
{
    /// <summary>A brewer ends a boil this much early or late without meaning anything by it; s.</summary>
    private const double MistimedS = 120;

    /// <summary>The last one since a remedy was chosen; null: none.</summary>
    public static RunStep? Last(RunState state) => In(state).Where(s => s.EndedMs > state.LastChosenMs).MaxBy(s => s.EndedMs);

    /// <summary>By how much a piece of the boil was longer than it was meant to be, s.</summary>
    public static double OverS(RunStep boiled) =>
        boiled is { StartedMs: { } from, EndedMs: { } to } ? (to - from) / 1000.0 - 60 * (boiled.Spec.Minutes ?? 0) : 0;

    internal static IEnumerable<RunStep> In(RunState state) => LeftOut(state).Concat(Mistimed(state));

    internal static IEnumerable<RunStep> LeftOut(RunState state) => state.Steps.Where(s => s is
    { Status: RunStatus.Skipped, EndedMs: not null, Spec.Kind: StepKind.AddFirstWortHops or StepKind.AddToBoil or StepKind.AddToWhirlpool or StepKind.Boil });

    /// <summary>Pieces of the boil that were ended well before or after their time: what follows goes in early or late.</summary>
    private static IEnumerable<RunStep> Mistimed(RunState state) =>
        state.Steps.Where(s => s is { Spec.Kind: StepKind.Boil, Status: RunStatus.Complete } && Math.Abs(OverS(s)) > MistimedS);
}
