using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>
/// Which readings belong to a rest: those in it, those of the doughing in that it follows, however long that took, and before that
/// those of the strike liquor in the tun.
/// </summary>
public static class RestReadings
{
    /// <summary>The temperature that the rest in a vessel is for, once it goes on or is doughed in for, °C; null: there is none.</summary>
    public static double? WantedC(RunState state, string vessel) => In(state, vessel)?.Spec.TargetC;

    /// <summary>How far a temperature in a vessel is off the rest that goes on there or is doughed in for; null: there is none.</summary>
    public static (double OffK, double WantedC)? OffK(RunState state, string vessel, double celsius, long atMs) =>
        In(state, vessel) is { Spec.TargetC: { } wanted } rest ? (OffK(state, rest, celsius, wanted, atMs), wanted) : null;

    /// <summary>A rest from here up only ends the conversion and thins the wort, °C; common practice, no source.</summary>
    public const double MashOutC = 75;

    /// <summary>A rest as long as this is stirred and read at half time, min; common practice, no source.</summary>
    public const double LongMin = 20;

    /// <summary>Read a little early, half time is read; ms, common practice, no source.</summary>
    private const long EarlyMs = 5 * 60_000;

    /// <summary>When a long rest that goes on is at half time, Unix ms; null: it is short, does not run, or has been read there.</summary>
    public static long? HalfTimeMs(RunState state, RunStep rest)
    {
        if (rest is not { Spec: { Kind: StepKind.Rest, Minutes: >= LongMin and var minutes }, Status: RunStatus.Running, StartedMs: { } since })
            return null;
        var half = since + (long)(minutes * 30_000);
        return state.Readings.Any(r => r.AtMs >= half - EarlyMs && r.Reading.Is(ReadingKind.Temperature, rest.Spec.Vessel)) ? null : half;
    }

    private static RunStep? In(RunState state, string vessel) => Rest(state, DoughingIn(state)) is { } rest && rest.Spec.Vessel == vessel ? rest : null;

    /// <summary>The rest that goes on, or the one that a doughing in leads to.</summary>
    internal static RunStep? Rest(RunState state, RunStep? doughIn) => state.Steps.FirstOrDefault(s => s.Spec.Kind == StepKind.Rest
        && (s.Status == RunStatus.Running || (s.Status == RunStatus.Idle && s.Spec.Vessel == doughIn?.Spec.Vessel)));

    internal static RunStep? DoughingIn(RunState state) => state.Steps.FirstOrDefault(s => s is { Status: RunStatus.Running, Spec.Kind: StepKind.DoughIn });

    /// <summary>The last of its kind in the rest's vessel; null: none.</summary>
    internal static TakenReading? Last(RunState state, RunStep rest, ReadingKind kind)
    {
        var since = SinceMs(state, rest);
        return state.Readings.LastOrDefault(r => r.Reading.Is(kind, rest.Spec.Vessel) && r.AtMs >= since);
    }

    /// <summary>
    /// How far a mash is off its rest at a moment, K. One that cools as the plan says it will is not off, nor is one that holds its
    /// temperature where the plan lets it cool.
    /// </summary>
    internal static double OffK(RunState state, RunStep rest, double celsius, double targetC, long atMs)
    {
        var end = state.Plan!.Step(rest.Spec.Id)?.After.Vessels[state.Live!.Setting.IndexOf(rest.Spec.Vessel)].TempC ?? targetC;
        var gone = rest.Spec.Minutes is > 0 and { } minutes && rest.StartedMs is { } since ? Math.Clamp((atMs - since) / 60_000.0 / minutes, 0, 1) : 0;
        var cooled = targetC + gone * (end - targetC);
        return celsius - Math.Clamp(celsius, Math.Min(cooled, targetC), Math.Max(cooled, targetC));
    }

    private static long SinceMs(RunState state, RunStep rest)
    {
        var before = state.Steps.TakeWhile(s => s.Spec.Id != rest.Spec.Id)
            .LastOrDefault(s => s.StartedMs is not null && (s.Spec.Vessel == rest.Spec.Vessel || s.Spec.To == rest.Spec.Vessel));
        var begins = before is { Spec.Kind: StepKind.DoughIn or StepKind.TransferStrike } ? before : rest;
        return begins.StartedMs ?? long.MaxValue;
    }
}
