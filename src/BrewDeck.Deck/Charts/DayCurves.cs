using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Charts;

/// <summary>Temperature, volume and gravity of each vessel over the day: as planned, as read, and as expected from now on.</summary>
/// <param name="forecast">Null for a day that is looked back at.</param>
/// <param name="dayStartMs">Unix ms of second 0 of the day.</param>
public sealed class DayCurves(Plan plan, RunState state, Forecast? forecast, long dayStartMs, Notation notation)
{
    /// <summary>What is known of a day that is looked back at; null: its charts have no bands.</summary>
    public Outlook? Came { get; init; }

    private Outlook? Outlook => forecast?.Outlook ?? Came;

    /// <summary>Less than this is a wet vessel: it has no temperature worth drawing. Litres.</summary>
    private const double EmptyL = 0.5;

    /// <summary>Below it there is no wort to speak of, °P.</summary>
    private const double WaterPlato = 0.5;

    /// <summary>Always three; one without curves has nothing to show yet.</summary>
    public ImmutableArray<DayChart> All() =>
    [
        Chart(notation.Text("Temperature"), notation.TempUnit, "0", ReadingKind.Temperature, TempC, notation.InTempUnit, null),
        Chart(notation.Text("Volume"), notation.VolumeUnit, "0", ReadingKind.Volume, v => Contents.StandsL(v), notation.InVolumeUnit, Outlook?.FermenterL),
        Chart(notation.Text("Gravity"), "SG", "0.000", ReadingKind.Gravity, GravitySg, sg => sg, Outlook?.OriginalGravitySg),
    ];

    private DayChart Chart(
        string title, string unit, string format, ReadingKind kind, Func<VesselState, double> of, Func<double, double> shown, Figure? at)
    {
        ImmutableArray<CurvePoint> Shown(IEnumerable<CurvePoint> points) => [.. points.Select(p => p with { Value = shown(p.Value) })];
        var curves = Enumerable.Range(0, plan.Start.Vessels.Length).Select(i => new DayCurve(
            Name(i),
            i,
            Shown(Line(i, of, plan.Start, plan.Steps)),
            Shown(Read(Id(i), kind)),
            forecast is null ? [] : Shown(Line(i, of, forecast.Now, forecast.Rest))));
        return new(title, unit, format, EndS(), [.. curves.Where(HasSomething)], Band(at, shown));
    }

    private static bool HasSomething(DayCurve curve) => curve.Read.Length > 0 || curve.Planned.Any(p => double.IsFinite(p.Value));

    /// <summary>Before and after each step that does something to the vessel: what stands still is drawn flat.</summary>
    private static IEnumerable<CurvePoint> Line(int vessel, Func<VesselState, double> of, PlantState from, ImmutableArray<PlanStep> steps)
    {
        var before = from.Vessels[vessel];
        foreach (var step in steps)
        {
            var after = step.After.Vessels[vessel];
            if (after == before)
                continue;
            yield return new(Math.Max(step.StartS, before.AtS), of(before));
            yield return new(after.AtS, of(after));
            before = after;
        }
    }

    /// <summary>Where the wort stands in the fermenter, after the last step that fills it.</summary>
    private ChartBand? Band(Figure? figure, Func<double, double> shown) =>
        figure is { P10: { } low, P90: { } high } && FilledS() is { } filled ? new(filled, shown(low), shown(high)) : null;

    private double? FilledS() => forecast?.Rest.LastOrDefault(s => s.Spec.To == Places.Fermenter)?.EndS
        ?? (state.Steps.LastOrDefault(s => s.Spec.To == Places.Fermenter)?.EndedMs is { } ms ? (ms - dayStartMs) / 1000.0 : null);

    private static double TempC(VesselState v) => Contents.LiquidL(v) < EmptyL ? double.NaN : v.TempC;

    private static double GravitySg(VesselState v) =>
        Contents.LiquidL(v) < EmptyL || v.Plato < WaterPlato ? double.NaN : SugarSolution.SgFromPlato(v.Plato);

    private IEnumerable<CurvePoint> Read(string vessel, ReadingKind kind) => state.Readings
        .Where(r => r.Reading.Is(kind, vessel))
        .Select(r => new CurvePoint((r.AtMs - dayStartMs) / 1000.0, r.Reading.Value));

    /// <summary>The charts of a day end together.</summary>
    private double EndS()
    {
        var ended = state.Steps.Max(s => s.EndedMs) is { } ms ? (ms - dayStartMs) / 1000.0 : 0;
        var expected = forecast?.Rest.Select(s => s.EndS).DefaultIfEmpty(0).Max() ?? 0;
        return Math.Max(plan.Totals.DayS, Math.Max(ended, expected));
    }

    private string Id(int vessel) =>
        vessel < plan.Brewhouse.Vessels.Length ? plan.Brewhouse.Vessels[vessel].Id : Places.Fermenter;

    private string Name(int vessel) => Names.Sentence(Names.Vessel(plan.Brewhouse, Id(vessel), notation));
}
