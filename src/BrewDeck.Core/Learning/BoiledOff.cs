using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using static BrewDeck.Core.Learning.InstrumentErrors;

namespace BrewDeck.Core.Learning;

/// <summary>What boiled off by the kettle's levels, in litres at 20 °C, with what remedies put in taken out again: lessons and trends rest on this one sum.</summary>
/// <param name="BeforeL">At the first level.</param>
/// <param name="AfterL">At the last level.</param>
/// <param name="BoiledH">Into the boil at the last level.</param>
/// <param name="OverH">Between the first level and the last.</param>
/// <param name="LeftOut">Why it says nothing of the evaporation; null: it does.</param>
public sealed record BoiledOff(double KgPerH, double SdKgPerH, double BeforeL, double AfterL, double BoiledH, double OverH, Spoilt? LeftOut)
{
    private const double ShortestH = 0.4;

    /// <summary>Room that dissolved extract takes: sucrose in solution at 20 °C.</summary>
    private const double DissolvedLPerKg = 0.62;

    /// <summary>Null when there are no two levels far enough apart.</summary>
    public static BoiledOff? Of(RunState state)
    {
        if (state.Plan is not { } plan || state.LastDone(s => s.Kind == StepKind.HeatToBoil)?.EndedMs is not { } boils
            || state.LastDone(s => s.Kind == StepKind.Boil)?.EndedMs is not { } over)
            return null;
        var kettle = plan.Brewhouse.Kettle.Id;
        var points = Levels(state, kettle, boils).Where(r => r.AtMs <= over + 600_000)
            .Select(r => (Hours: (Math.Clamp(r.AtMs, boils, over) - boils) / 3.6e6, CoolL: CoolL(state, r))).ToList();
        if (points.Count < 2 || points.Max(p => p.Hours) - points.Min(p => p.Hours) < ShortestH)
            return null;
        var (slope, sd) = Line(points);
        var perL = Water.DensityKgPerM3(20) / 1000;
        return new(-slope * perL, sd * perL, points[0].CoolL, points[^1].CoolL, points.Max(p => p.Hours), points.Max(p => p.Hours) - points.Min(p => p.Hours),
            Spoiling.OfTimed(state, [.. state.Done(s => s.Kind is StepKind.HeatToBoil or StepKind.HotBreak or StepKind.Boil)]));
    }

    /// <summary>From the end of the last run-off on: of the levels that were read while it went on, its last one, for more came after the others.</summary>
    private static IEnumerable<TakenReading> Levels(RunState state, string kettle, long boilsMs)
    {
        var ranOff = state.LastDone(s => s.Kind.RunsOff());
        var levels = state.Readings.Where(r => r.Reading.Is(ReadingKind.Volume, kettle) && r.Reading.StillRuns != true && r.AtMs >= (ranOff?.StartedMs ?? boilsMs)).ToList();
        return levels.Skip(Math.Max(0, levels.FindLastIndex(r => r.AtMs <= (ranOff?.EndedMs ?? boilsMs))));
    }

    private static double CoolL(RunState state, TakenReading read) =>
        LauterEvidence.CoolL(read, SugarSolution.PlatoFromSg(state.Plan!.Totals.OriginalGravitySg), 99) - PutInL(state, read.AtMs);

    /// <summary>
    /// What remedies have put into the kettle by then, litres at 20 °C, and with it the water that did not boil off meanwhile because the
    /// heat went into what was added.
    /// </summary>
    private static double PutInL(RunState state, long atMs) => state
        .Done(s => s.Kind is StepKind.AddWater or StepKind.AddExtract && s.Vessel == state.Plan!.Brewhouse.Kettle.Id)
        .Where(s => s.EndedMs <= atMs)
        .Sum(s => (s.Spec.VolumeL ?? 0) * (1 + NotBoiledOff(state.Plan!, s)) + s.Spec.Charges.Sum(c => c.WaterKg + DissolvedLPerKg * c.ExtractKg));

    private static double NotBoiledOff(Plan plan, RunStep step) =>
        Water.SpecificHeatJPerKgK(60) * (100 - (step.Spec.TargetC ?? plan.Choices.SourceWaterC)) / Water.LatentHeatJPerKg(100);

    /// <summary>A straight line; each level is read as well as any other.</summary>
    private static (double Slope, double Sd) Line(List<(double Hours, double CoolL)> points)
    {
        double x = points.Average(p => p.Hours), y = points.Average(p => p.CoolL);
        var xx = points.Sum(p => Squared(p.Hours - x));
        return (points.Sum(p => (p.Hours - x) * (p.CoolL - y)) / xx, VolumeNoiseL / Math.Sqrt(xx));
    }
}
