using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Trends;

/// <summary>A figure of a batch that is followed over batches.</summary>
/// <param name="Name">Stable, snake_case with its unit.</param>
/// <param name="Format">For people.</param>
public sealed record TrendFigure(string Name, string Format, Func<RunState, double?> Of)
{
    /// <summary>What the day was off its plan by: nought is where it should lie.</summary>
    public bool AgainstPlan { get; init; }
}

/// <summary>What one batch gives to the trends: measured, never the model's word; null where it was not measured.</summary>
public static class BatchFigures
{
    /// <summary>A smaller rise is lost in the thermometer.</summary>
    private const double LeastRiseK = 8;

    private const long JustBeforeMs = 600_000;

    public static ImmutableArray<TrendFigure> All { get; } =
    [
        Figure("efficiency_percent", "0.0", EfficiencyPercent),
        Figure("gravity_off_points", "0.0", s => s.Ferment.MeasuredOriginalSg is { } og ? 1000 * (og - s.Plan!.Totals.OriginalGravitySg) : null) with { AgainstPlan = true },
        Figure("evaporation_kg_per_h", "0.00", s => BoiledOff.Of(s) is { LeftOut: null } off ? off.KgPerH : null),
        Figure("heat_up_kw", "0.00", HeatUpKw),
        Figure("runoff_l_per_min", "0.00", RunoffLPerMin),
        Figure("attenuation_percent", "0.0", s => 100 * FermentFigures.Of(s.Ferment)?.AttenuationFraction.P50),
        Figure("day_late_min", "0.0", DayLateMin) with { AgainstPlan = true },
        Figure("hot_liquor_lost_min", "0.0", s => LostMin(s, UnitProcedure.HotLiquor)),
        Figure("mash_lost_min", "0.0", s => LostMin(s, UnitProcedure.Mash)),
        Figure("lauter_lost_min", "0.0", s => LostMin(s, UnitProcedure.Lauter)),
        Figure("boil_lost_min", "0.0", s => LostMin(s, UnitProcedure.Boil)),
        Figure("cool_lost_min", "0.0", s => LostMin(s, UnitProcedure.Cool)),
    ];

    /// <param name="key">See <see cref="TrendFigure.Name"/>.</param>
    private static TrendFigure Figure(string key, string format, Func<RunState, double?> of) => new(key, format, of);

    /// <param name="state">Of a batch whose day is complete.</param>
    public static double?[] Of(RunState state) => [.. All.Select(f => f.Of(state) is { } value && double.IsFinite(value) ? (double?)value : null)];

    /// <summary>Extract in the fermenter against that in the grist.</summary>
    private static double? EfficiencyPercent(RunState state)
    {
        var inGrist = state.Plan!.Recipe.Grist.Sum(g => g.ExtractKg);
        return state.Ferment is { MeasuredL: { } litres, MeasuredOriginalSg: { } og } && inGrist > 0
            ? 100 * litres * SugarSolution.ExtractKgPerL(SugarSolution.PlatoFromSg(og), 20) / inGrist
            : null;
    }

    /// <summary>Hot wort into the kettle over the time of the lauter.</summary>
    private static double? RunoffLPerMin(RunState state) =>
        state.Steps.FirstOrDefault(s => s.Spec.Kind == StepKind.Lauter && s.Status == RunStatus.Complete) is { StartedMs: { } from, EndedMs: { } to } lauter && to > from && Spoiling.OfTimed(state, lauter) is null
            && state.Readings.LastOrDefault(r => r.StepId == lauter.Spec.Id && r.Reading.Is(ReadingKind.Volume, lauter.Spec.To)) is { } level
            ? level.Reading.Value / ((to - from) / 60_000.0)
            : null;

    /// <summary>
    /// What the strike water took up over its heat-up, kW. It began as it was read in the vessel just before, else as the source water was
    /// read or stated for the day; its mass is the plan's.
    /// </summary>
    private static double? HeatUpKw(RunState state)
    {
        var step = state.Steps.FirstOrDefault(s => s.Spec.Kind == StepKind.HeatStrike && s is { Status: RunStatus.Complete, StartedMs: not null, EndedMs: not null });
        if (step is null || Spoiling.OfTimed(state, step) is not null || state.Plan!.Step(step.Spec.Id) is not { } planned
            || Read(state, step.Spec.Vessel, step.StartedMs!.Value, step.EndedMs!.Value) is not { } end)
            return null;
        var from = (Read(state, step.Spec.Vessel, step.StartedMs.Value - JustBeforeMs, step.StartedMs.Value) ?? Read(state, Places.Source, long.MinValue, step.StartedMs.Value))
            ?.Reading.Value ?? state.Plan.Choices.SourceWaterC;
        var vessel = state.Plan.Brewhouse.Vessels.ToList().FindIndex(v => v.Id == step.Spec.Vessel);
        var (seconds, rise) = ((end.AtMs - step.StartedMs.Value) / 1000.0, end.Reading.Value - from);
        return vessel >= 0 && seconds > 60 && rise > LeastRiseK
            ? planned.After.Vessels[vessel].WaterKg * Water.SpecificHeatJPerKgK(0.5 * (from + end.Reading.Value)) * rise / seconds / 1000
            : null;
    }

    private static TakenReading? Read(RunState state, string vessel, long fromMs, long toMs) => state.Readings.LastOrDefault(r =>
        r.Reading.Is(ReadingKind.Temperature, vessel) && r.AtMs >= fromMs && r.AtMs <= toMs);

    /// <summary>What the steps of one part of the day took longer than planned; what was put in was not planned at all.</summary>
    private static double? LostMin(RunState state, UnitProcedure part)
    {
        var done = state.Steps.Where(s => s.Spec.Unit == part && s is { Status: RunStatus.Complete, StartedMs: not null, EndedMs: not null }).ToList();
        var planned = state.Plan!.Steps.Where(p => done.Exists(s => s.Spec.Id == p.Spec.Id)).ToList();
        return planned.Count == 0 ? null : (done.Sum(s => (s.EndedMs!.Value - s.StartedMs!.Value) / 1000.0) - planned.Sum(p => p.DurationS)) / 60;
    }

    private static double? DayLateMin(RunState state) =>
        state.DayStartMs is { } from && state.Steps.Max(s => s.EndedMs) is { } to ? ((to - from) / 1000.0 - state.Plan!.Totals.DayS) / 60 : null;

    private static TakenReading? Last(RunState state, ReadingKind kind, string vessel) =>
        state.Readings.LastOrDefault(r => r.Reading.Is(kind, vessel));
}
