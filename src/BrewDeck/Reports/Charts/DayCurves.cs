using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Reports.Charts;

/// <summary>Temperature, volume and gravity of each vessel over the day, as planned and as read.</summary>
internal static class DayCurves
{
    /// <summary>Less than this is a wet vessel: it has no temperature worth drawing. Litres.</summary>
    private const double EmptyL = 0.5;

    /// <summary>Below it there is no wort to speak of, °P.</summary>
    private const double WaterPlato = 0.5;

    public static ImmutableArray<DayChart> Of(RecordSource source)
    {
        var us = source.Notation.Units == UnitSystem.Us;
        return
        [
            Chart("Temperature", us ? "°F" : "°C", "0", ReadingKind.Temperature, TempC, us ? c => c * 9 / 5 + 32 : c => c, source),
            Chart("Volume", us ? "gal" : "L", "0", ReadingKind.Volume, v => Contents.StandsL(v), us ? l => l / 3.785411784 : l => l, source),
            Chart("Gravity", "SG", "0.000", ReadingKind.Gravity, GravitySg, sg => sg, source),
        ];
    }

    private static DayChart Chart(
        string title, string unit, string format, ReadingKind kind, Func<VesselState, double> of, Func<double, double> shown, RecordSource source)
    {
        var curves = Enumerable.Range(0, source.Plan.Start.Vessels.Length).Select(i => new DayCurve(
            Name(i, source.Plan), i,
            [.. Planned(i, of, source.Plan).Select(p => p with { Value = shown(p.Value) })],
            [.. Read(Id(i, source.Plan), kind, source).Select(p => p with { Value = shown(p.Value) })]));
        return new(title, unit, format, EndS(source), [.. curves.Where(c => c.Read.Length > 0 || c.Planned.Any(p => double.IsFinite(p.Value)))]);
    }

    /// <summary>Before and after each step that does something to the vessel: what stands still is drawn flat.</summary>
    private static IEnumerable<CurvePoint> Planned(int vessel, Func<VesselState, double> of, Plan plan)
    {
        var before = plan.Start.Vessels[vessel];
        foreach (var step in plan.Steps)
        {
            var after = step.After.Vessels[vessel];
            if (after == before)
                continue;
            yield return new(Math.Max(step.StartS, before.AtS), of(before));
            yield return new(after.AtS, of(after));
            before = after;
        }
    }

    private static double TempC(VesselState v) => Contents.LiquidL(v) < EmptyL ? double.NaN : v.TempC;

    private static double GravitySg(VesselState v) =>
        Contents.LiquidL(v) < EmptyL || v.Plato < WaterPlato ? double.NaN : SugarSolution.SgFromPlato(v.Plato);

    private static IEnumerable<CurvePoint> Read(string vessel, ReadingKind kind, RecordSource source) => source.State.Readings
        .Where(r => r.Reading.Kind == kind && r.Reading.Vessel == vessel)
        .Select(r => new CurvePoint((r.AtMs - source.DayStartMs) / 1000.0, r.Reading.Value));

    /// <summary>The charts of a day end together.</summary>
    private static double EndS(RecordSource source) => Math.Max(
        source.Plan.Totals.DayS, source.State.Steps.Max(s => s.EndedMs) is { } ended ? (ended - source.DayStartMs) / 1000.0 : 0);

    private static string Id(int vessel, Plan plan) =>
        vessel < plan.Brewhouse.Vessels.Length ? plan.Brewhouse.Vessels[vessel].Id : PlantSetting.FermenterId;

    private static string Name(int vessel, Plan plan) => Names.Sentence(Names.Vessel(plan.Brewhouse, Id(vessel, plan)));
}
