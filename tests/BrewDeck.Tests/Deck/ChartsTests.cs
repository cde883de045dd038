using BrewDeck.Core.Running;
using BrewDeck.Deck.Charts;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public class ChartsTests
{
    private static TimetableDrawing Timetable(double intoRestS) =>
        DayDrawings.Of(Moments.Resting(intoRestS)).OfType<TimetableDrawing>().Single();

    [Fact]
    public void The_timetable_has_what_was_done_and_what_is_expected_beside_the_plan()
    {
        var rows = Timetable(60).Rows;

        Assert.Equal(Moments.State.Steps.Length, rows.Length);
        Assert.Equal(new TimeSpanS(600, 1200), rows[1].Really);
        Assert.Equal(new TimeSpanS(1200, Quayside.HeatSparge.EndS), rows[2].Really);
        Assert.Equal(new TimeSpanS(Quayside.Boil.StartS, Quayside.Boil.EndS), rows[^1].Really);
        Assert.All(rows, r => Assert.NotNull(r.Planned));
    }

    [Fact]
    public void What_ended_late_says_by_how_much_and_what_was_skipped_says_so()
    {
        var state = Moments.State with
        {
            Steps = Moments.State.Steps
                .SetItem(1, Moments.State.Steps[1] with { EndedMs = Moments.At(Quayside.DoughIn.EndS + 420) })
                .SetItem(4, Moments.State.Steps[4] with { Status = RunStatus.Skipped }),
        };

        var rows = new DayTimetable(Quayside.Plan, state, null, Quayside.StartMs, Notation.Metric).Rows();

        Assert.Equal(["+7 min", "skipped"], [rows[1].Late, rows[4].Late]);
        Assert.Null(rows[4].Really);
    }

    [Fact]
    public void Hours_are_those_of_the_clock_on_the_wall()
    {
        var axis = Timetable(60).Axis;

        Assert.Equal(Moments.RestS + 60, axis.NowS);
        Assert.Equal(["08:00", "09:00", "10:00"], axis.Hours.Take(3).Select(h => h.Clock));
        Assert.Equal([0, 3600, 7200], axis.Hours.Take(3).Select(h => h.AtS));
    }

    [Fact]
    public void A_reading_stands_where_it_was_taken_in_the_units_that_are_shown()
    {
        var reading = new TakenReading(3, Moments.At(1500), "mash.rest-1", new Reading(ReadingKind.Temperature, "tun", 65, "65"), 66, []);
        var state = Moments.State with { Readings = [reading] };
        var us = new Notation(UnitSystem.Us, TimeZoneInfo.Utc);

        var chart = new DayCurves(Quayside.Plan, state, null, Quayside.StartMs, us).All()[0];

        Assert.Equal(("Temperature", "°F"), (chart.Title, chart.Unit));
        Assert.Equal(new CurvePoint(1500, 149), Assert.Single(chart.Curves.Single(c => c.Read.Length > 0).Read));
    }
}
