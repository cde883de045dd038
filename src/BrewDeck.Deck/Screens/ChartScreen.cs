using System.Collections.Immutable;
using BrewDeck.Deck.Charts;
using BrewDeck.Deck.Trends;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Screens;

/// <summary>Drawings of a day; as many as there is room for are shown, from the chosen one on.</summary>
/// <param name="Selected">The first drawing shown.</param>
/// <param name="Offset">First row of the timetable shown; the terminal keeps it within the timetable.</param>
public sealed record ChartScreen(
    string Title,
    string Corner,
    ImmutableArray<Drawing> Drawings,
    int Selected,
    int Offset,
    ImmutableArray<KeyHint> Keys,
    Line? Notice = null,
    Overlay? Overlay = null) : Screen(Title, Corner, Keys, Notice, Overlay);

/// <summary>One picture of a chart screen.</summary>
public abstract record Drawing
{
    /// <summary>For the numbers at the axis and the words of the legend.</summary>
    public Notation Notation { get; init; } = Notation.Metric;
}

/// <param name="EndS">Seconds since the first step at which the axis ends.</param>
/// <param name="NowS">Null: the day is over.</param>
/// <param name="Hours">Full hours of the clock on the wall.</param>
public sealed record HourAxis(double EndS, double? NowS, ImmutableArray<HourMark> Hours);

/// <param name="AtS">Seconds since the first step.</param>
public readonly record struct HourMark(double AtS, string Clock);

/// <summary>A quantity of each vessel.</summary>
public sealed record CurveDrawing(DayChart Chart, HourAxis Axis) : Drawing;

/// <summary>The steps, planned against done.</summary>
public sealed record TimetableDrawing(ImmutableArray<TimetableRow> Rows, HourAxis Axis) : Drawing;

/// <param name="Planned">Null: a remedy put it in.</param>
/// <param name="Really">As done or as expected; null: neither.</param>
/// <param name="Late">How much later it ended or will end than planned, or what else became of it; empty: on time.</param>
public sealed record TimetableRow(string Title, TimeSpanS? Planned, TimeSpanS? Really, string Late, Tone Tone);

/// <summary>Seconds since the first step.</summary>
public readonly record struct TimeSpanS(double FromS, double ToS);

/// <summary>One figure over batches, in the order of time.</summary>
/// <param name="Sums">Centre, limits and the last value in words.</param>
/// <param name="StandsOut">The batches that something special must have happened to; empty: none.</param>
/// <param name="Format">Of the numbers at the axis.</param>
/// <param name="Chart">Null: too few batches for limits.</param>
public sealed record ControlDrawing(
    string Title, string Sums, string StandsOut, string Format, ImmutableArray<TrendPoint> Points, ControlChart? Chart) : Drawing;
