using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>Which readings belong to a rest: those in it, and those of the doughing in that it follows, however long that took.</summary>
internal static class RestReadings
{
    /// <summary>The last of its kind in the rest's vessel; null: none.</summary>
    public static TakenReading? Last(RunState state, RunStep rest, ReadingKind kind)
    {
        var since = SinceMs(state, rest);
        return state.Readings.LastOrDefault(r => r.Reading.Kind == kind && r.Reading.Vessel == rest.Spec.Vessel && r.AtMs >= since);
    }

    /// <summary>
    /// How far a mash is off its rest at a moment, K. One that cools as the plan says it will is not off, nor is one that holds its
    /// temperature where the plan lets it cool.
    /// </summary>
    public static double OffK(RunState state, RunStep rest, double celsius, double targetC, long atMs)
    {
        var end = state.Plan!.Steps.FirstOrDefault(s => s.Spec.Id == rest.Spec.Id)?.After.Vessels[state.Live!.Setting.IndexOf(rest.Spec.Vessel)].TempC ?? targetC;
        var gone = rest.Spec.Minutes is > 0 and { } minutes && rest.StartedMs is { } since ? Math.Clamp((atMs - since) / 60_000.0 / minutes, 0, 1) : 0;
        var cooled = targetC + gone * (end - targetC);
        return celsius - Math.Clamp(celsius, Math.Min(cooled, targetC), Math.Max(cooled, targetC));
    }

    private static long SinceMs(RunState state, RunStep rest)
    {
        var before = state.Steps.TakeWhile(s => s.Spec.Id != rest.Spec.Id)
            .LastOrDefault(s => s.StartedMs is not null && (s.Spec.Vessel == rest.Spec.Vessel || s.Spec.To == rest.Spec.Vessel));
        var begins = before is { Spec.Kind: StepKind.DoughIn } ? before : rest;
        return begins.StartedMs ?? long.MaxValue;
    }
}
