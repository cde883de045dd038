using System.Collections.Immutable;

namespace BrewDeck.Deck.Charts;

/// <summary>A vessel's planned line, the readings taken of it, and the line that is expected from now on.</summary>
/// <param name="Name">As typed; not yet safe to show in a page.</param>
/// <param name="Vessel">Its place in the brewhouse: keeps its colour, dash and mark in every drawing.</param>
/// <param name="Expected">Empty when the day is over.</param>
public sealed record DayCurve(
    string Name, int Vessel, ImmutableArray<CurvePoint> Planned, ImmutableArray<CurvePoint> Read, ImmutableArray<CurvePoint> Expected);

/// <param name="AtS">Seconds since the first step.</param>
/// <param name="Value">In the unit of its chart; NaN breaks the line.</param>
public readonly record struct CurvePoint(double AtS, double Value);

/// <summary>The outlook's 80 % band where it ends, in the unit of its chart.</summary>
/// <param name="AtS">Seconds since the first step.</param>
public readonly record struct ChartBand(double AtS, double Low, double High);

/// <param name="Format">Of the numbers at the axis.</param>
/// <param name="EndS">Where the axis of time ends.</param>
/// <param name="Band">Null when no spread is known.</param>
public sealed record DayChart(string Title, string Unit, string Format, double EndS, ImmutableArray<DayCurve> Curves, ChartBand? Band);
