using System.Collections.Immutable;

namespace BrewDeck.Reports.Charts;

/// <summary>A vessel's planned line and the readings taken of it.</summary>
/// <param name="Name">As typed; not yet safe to show.</param>
/// <param name="Vessel">Its place in the brewhouse: keeps its colour in every drawing.</param>
internal sealed record DayCurve(string Name, int Vessel, ImmutableArray<CurvePoint> Planned, ImmutableArray<CurvePoint> Read);

/// <param name="AtS">Seconds since the first step.</param>
/// <param name="Value">In the unit of its chart; NaN breaks the line.</param>
internal readonly record struct CurvePoint(double AtS, double Value);

/// <param name="Format">Of the numbers at the axis.</param>
/// <param name="EndS">Where the axis of time ends.</param>
internal sealed record DayChart(string Title, string Unit, string Format, double EndS, ImmutableArray<DayCurve> Curves);
