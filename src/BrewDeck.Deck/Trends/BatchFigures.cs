using System.Collections.Immutable;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Trends;

/// <summary>A figure of a batch that is followed over batches.</summary>
/// <param name="Name">Stable, snake_case with its unit.</param>
/// <param name="Format">For people.</param>
public sealed record TrendFigure(string Name, string Format, Func<RunState, double?> Of);

/// <summary>What one batch gives to the trends: measured, never the model's word; null where it was not measured.</summary>
public static class BatchFigures
{
    /// <summary>Two levels closer together than this say nothing of the steam between them.</summary>
    private const double LeastBoilMin = 10;

    public static ImmutableArray<TrendFigure> All { get; } =
    [
        new("efficiency_percent", "0.0", EfficiencyPercent),
        new("gravity_off_points", "0.0", s => s.Ferment.MeasuredOriginalSg is { } og ? 1000 * (og - s.Plan!.Totals.OriginalGravitySg) : null),
        new("evaporation_kg_per_h", "0.00", EvaporationKgPerH),
        new("runoff_l_per_min", "0.00", RunoffLPerMin),
        new("attenuation_percent", "0.0", s => 100 * FermentFigures.Of(s.Ferment)?.AttenuationFraction.P50),
        new("day_late_min", "0", DayLateMin),
    ];

    /// <param name="state">Of a batch whose day is complete.</param>
    public static double?[] Of(RunState state) => [.. All.Select(f => f.Of(state) is { } value && double.IsFinite(value) ? (double?)value : null)];

    /// <summary>Extract in the fermenter against that in the grist.</summary>
    private static double? EfficiencyPercent(RunState state)
    {
        var inGrist = state.Plan!.Recipe.Grist.Sum(g => g.ExtractKg);
        return Last(state, ReadingKind.Volume, PlantSetting.FermenterId) is { } litres && state.Ferment.MeasuredOriginalSg is { } og && inGrist > 0
            ? 100 * litres.Reading.Value * SugarSolution.ExtractKgPerL(SugarSolution.PlatoFromSg(og), 20) / inGrist
            : null;
    }

    /// <summary>From the first kettle level of the boil to the last, both hot.</summary>
    private static double? EvaporationKgPerH(RunState state)
    {
        var kettle = state.Plan!.Brewhouse.Kettle.Id;
        var boil = state.Steps.Where(s => s.Spec.Kind == StepKind.Boil && s is { StartedMs: not null, EndedMs: not null }).ToList();
        if (boil.Count == 0)
            return null;
        var levels = state.Readings.Where(r => r.Reading.Kind == ReadingKind.Volume && r.Reading.Vessel == kettle
            && r.AtMs >= boil[0].StartedMs && r.AtMs <= boil[^1].EndedMs).ToList();
        if (levels.Count < 2 || (levels[^1].AtMs - levels[0].AtMs) / 60_000.0 < LeastBoilMin)
            return null;
        var hours = (levels[^1].AtMs - levels[0].AtMs) / 3_600_000.0;
        return (levels[0].Reading.Value - levels[^1].Reading.Value) * Water.DensityKgPerM3(99) / 1000 / hours;
    }

    /// <summary>Hot wort into the kettle over the time of the lauter.</summary>
    private static double? RunoffLPerMin(RunState state) =>
        state.Steps.FirstOrDefault(s => s.Spec.Kind == StepKind.Lauter && s.Status == RunStatus.Complete) is { StartedMs: { } from, EndedMs: { } to } lauter && to > from
            && state.Readings.LastOrDefault(r => r.StepId == lauter.Spec.Id && r.Reading.Kind == ReadingKind.Volume && r.Reading.Vessel == lauter.Spec.To) is { } level
            ? level.Reading.Value / ((to - from) / 60_000.0)
            : null;

    private static double? DayLateMin(RunState state) =>
        state.DayStartMs is { } from && state.Steps.Max(s => s.EndedMs) is { } to ? ((to - from) / 1000.0 - state.Plan!.Totals.DayS) / 60 : null;

    private static TakenReading? Last(RunState state, ReadingKind kind, string vessel) =>
        state.Readings.LastOrDefault(r => r.Reading.Kind == kind && r.Reading.Vessel == vessel);
}
