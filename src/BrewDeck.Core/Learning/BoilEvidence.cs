using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using static BrewDeck.Core.Learning.InstrumentErrors;

namespace BrewDeck.Core.Learning;

/// <summary>The kettle's volume falling over the boil: evaporation, by a weighted straight line through its readings.</summary>
internal static class BoilEvidence
{
    /// <summary>What steams off between the end of the lauter and the boil is not known better, and much the same each time; L.</summary>
    private const double HeatUpSteamL = 0.1;

    private const double ShortestH = 0.4;

    /// <summary>Room that dissolved extract takes: sucrose in solution at 20 °C.</summary>
    private const double DissolvedLPerKg = 0.62;

    public static IEnumerable<Evidence> Of(BatchTrace batch)
    {
        var kettle = batch.Plan.Brewhouse.Kettle.Id;
        if (batch.LastDone(s => s.Kind == StepKind.HeatToBoil)?.EndedMs is not { } boils
            || batch.LastDone(s => s.Kind == StepKind.Boil)?.EndedMs is not { } over)
            yield break;
        var since = batch.LastDone(s => s.Kind is StepKind.Lauter or StepKind.RunOff)?.StartedMs ?? boils;
        var points = batch.Final.Readings
            .Where(r => r.Reading.Kind == ReadingKind.Volume && r.Reading.Vessel == kettle && r.AtMs >= since && r.AtMs <= over + 600_000)
            .Select(r => Point(batch, r, boils, over)).ToList();
        if (points.Count < 2 || points.Max(p => p.Hours) - points.Min(p => p.Hours) < ShortestH)
            yield break;
        var (slope, sd) = Line(points);
        var hours = points.Max(p => p.Hours) - points.Min(p => p.Hours);
        var perL = Water.DensityKgPerM3(20) / 1000;
        yield return batch.Says(
            LessonParameters.Evaporation, -slope * perL, sd * perL, Root(VolumeScaleFraction * slope, HeatUpSteamL / hours),
            new DrivingReading("kettle_before_l", points[0].CoolL), new DrivingReading("kettle_after_l", points[^1].CoolL), new DrivingReading("boiled_h", points.Max(p => p.Hours)));
    }

    private static (double Hours, double CoolL, double Sd) Point(BatchTrace batch, TakenReading read, long boils, long over)
    {
        var hours = (Math.Clamp(read.AtMs, boils, over) - boils) / 3.6e6;
        var plato = SugarSolution.PlatoFromSg(batch.Plan.Totals.OriginalGravitySg);
        var cool = LauterEvidence.CoolL(read, plato, 99) - PutInL(batch, read.AtMs);
        return (hours, cool, VolumeNoiseL);
    }

    /// <summary>
    /// What remedies have put into the kettle by then, litres at 20 °C, and with it the water that did not boil off meanwhile because the
    /// heat went into what was added.
    /// </summary>
    private static double PutInL(BatchTrace batch, long atMs) => batch
        .Done(s => s.Kind is StepKind.AddWater or StepKind.AddExtract && s.Vessel == batch.Plan.Brewhouse.Kettle.Id)
        .Where(s => s.EndedMs <= atMs)
        .Sum(s => (s.Spec.VolumeL ?? 0) * (1 + NotBoiledOff(batch, s)) + s.Spec.Charges.Sum(c => c.WaterKg + DissolvedLPerKg * c.ExtractKg));

    private static double NotBoiledOff(BatchTrace batch, RunStep step) =>
        Water.SpecificHeatJPerKgK(60) * (100 - (step.Spec.TargetC ?? batch.Plan.Choices.SourceWaterC)) / Water.LatentHeatJPerKg(100);

    private static (double Slope, double Sd) Line(List<(double Hours, double CoolL, double Sd)> points)
    {
        double w = points.Sum(p => 1 / Squared(p.Sd)), x = points.Sum(p => p.Hours / Squared(p.Sd)) / w, y = points.Sum(p => p.CoolL / Squared(p.Sd)) / w;
        var xx = points.Sum(p => Squared(p.Hours - x) / Squared(p.Sd));
        return (points.Sum(p => (p.Hours - x) * (p.CoolL - y) / Squared(p.Sd)) / xx, 1 / Math.Sqrt(xx));
    }
}
