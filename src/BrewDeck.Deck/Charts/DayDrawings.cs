using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Charts;

/// <summary>All drawings of a day: temperature, volume, gravity, timetable.</summary>
public static class DayDrawings
{
    private const long HourMs = 3_600_000;

    /// <summary>Of the day that runs.</summary>
    public static ImmutableArray<Drawing> Of(DeckMoment moment) => Of(
        new DayCurves(moment.Plan, moment.State, moment.State.OverMs is null ? moment.Forecast : null, moment.DayStartMs, moment.Notation) { Came = moment.Forecast.Outlook },
        new DayTimetable(moment.Plan, moment.State, moment.State.OverMs is null ? moment.Forecast : null, moment.DayStartMs, moment.Notation),
        moment.DayStartMs, moment.Notation, moment.State.OverMs is null ? moment.NowS : null);

    /// <summary>Of a day that is looked back at; none when nothing was planned.</summary>
    public static ImmutableArray<Drawing> Of(IReadOnlyList<RunEvent> events, Notation notation)
    {
        var state = RunFold.Of(events);
        if (state.Plan is not { } plan)
            return [];
        var dayStartMs = state.DayStartMs ?? events[0].AtMs;
        return Of(
            new DayCurves(plan, state, null, dayStartMs, notation) { Came = Forecasts.At(state, events[^1].AtMs).Outlook },
            new DayTimetable(plan, state, null, dayStartMs, notation), dayStartMs, notation, null);
    }

    private static ImmutableArray<Drawing> Of(DayCurves curves, DayTimetable timetable, long dayStartMs, Notation notation, double? nowS)
    {
        var charts = curves.All();
        var endS = Math.Max(charts[0].EndS, nowS ?? 0);
        var axis = new HourAxis(endS, nowS, Hours(dayStartMs, endS, notation));
        return
        [
            .. charts.Where(c => c.Curves.Length > 0).Select(c => new CurveDrawing(c, axis) { Notation = notation }),
            new TimetableDrawing(timetable.Rows(), axis) { Notation = notation },
        ];
    }

    // some zones lie half an hour beside the hour
    private static ImmutableArray<HourMark> Hours(long dayStartMs, double endS, Notation notation)
    {
        var offsetMs = (long)notation.Local(dayStartMs).Offset.TotalMilliseconds;
        var intoHourMs = (dayStartMs + offsetMs) % HourMs;
        var firstMs = dayStartMs + (intoHourMs == 0 ? 0 : HourMs - intoHourMs);
        var marks = ImmutableArray.CreateBuilder<HourMark>();
        for (var ms = firstMs; ms <= dayStartMs + endS * 1000; ms += HourMs)
            marks.Add(new((ms - dayStartMs) / 1000.0, notation.Clock(ms)));
        return marks.ToImmutable();
    }
}
