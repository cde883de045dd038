using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The alarms that stand, to shelve one for some minutes, and the log of all there were.</summary>
internal sealed class AlarmsPage(Shell shell, BrewDay day) : ListPage(shell)
{
    private static readonly double[] ShelfMinutes = [5, 15, 30];

    private int _rows;

    protected override int Count => Math.Max(1, _rows);

    public override DateTimeOffset? NextTick(DateTimeOffset now) => day.Over ? null : now.AddSeconds(Math.Max(5, Shell.Pace / 4));

    protected override void Choose(int row, DateTimeOffset now)
    {
        if (row >= day.State.Alarms.Length)
        {
            Shell.Say(day.State.Alarms.IsEmpty ? Shell.Notation.Text("No alarm stands: there is nothing to shelve.") : Shell.Notation.Text("Only an alarm that stands can be shelved: those at the top."));
            return;
        }
        var alarm = day.State.Alarms[row].Alarm;
        Ask(new ChoiceAsk(
            this,
            Shell.Notation.Text("Shelve this alarm: silent and out of sight for how long?"),
            [Line.Of(Words(now).Whole(alarm))],
            [new Row([Shell.Notation.Text("Not at all")]), .. ShelfMinutes.Select(m => new Row([Durations.Words(m * 60, Shell.Notation)]))],
            (chosen, at) =>
            {
                if (chosen > 0)
                    new Acts(Shell, day).Do(new RunCommand.Shelve(alarm.Key, ShelfMinutes[chosen - 1]), at);
            }));
    }

    /// <summary>What stands, the limits ahead and the log are one list, so that the arrows reach all of it; the chosen line is told whole below.</summary>
    protected override Screen Compose(DateTimeOffset now)
    {
        var moment = day.Moment(now, Shell.Notation);
        ImmutableArray<(Row Row, string Whole)> lines = [.. Standing(moment), .. Limits(moment), .. History(moment)];
        _rows = lines.Length;
        Select(Selected);
        return new ListScreen(
            Shell.Notation.Text("Alarms"),
            Shell.Notation.Clock(day.Ms(now)),
            [new Column(Shell.Notation.Text("since"), 5), new Column("", 9), new Column(Shell.Notation.Text("alarm"), 0)],
            [.. lines.Select(l => l.Row)],
            Selected,
            [Line.Of(lines[Selected].Whole, Tone.Muted)],
            KeyMap.Hints(Context, Shell.Notation));
    }

    private static IEnumerable<(Row Row, string Whole)> Standing(DeckMoment moment) => moment.State.Alarms.IsEmpty
        ? [Told(new Row(["", "", moment.Notation.Text("No alarm stands.")], Tone.Muted))]
        : moment.State.Alarms.Select(a => (Standing(a, moment), AlarmLines.Words(moment).Whole(a.Alarm)));

    private static (Row Row, string Whole) Told(Row row) => (row, row.Cells[^1]);

    private AlarmWords Words(DateTimeOffset now) => AlarmLines.Words(day.Moment(now, Shell.Notation));

    private static Row Standing(StandingAlarm alarm, DeckMoment moment) => new(
        [moment.Notation.Clock(alarm.RaisedMs), State(alarm, moment), AlarmLines.Words(moment).Cause(alarm.Alarm)],
        alarm.Acknowledged ? Tone.Normal : Tone.Warning);

    private static string State(StandingAlarm alarm, DeckMoment moment) => alarm switch
    {
        { ShelvedUntilMs: { } until } when alarm.IsShelved(moment.NowMs) => moment.Notation.Text($"to {moment.Notation.Clock(until)}"),
        { Acknowledged: true } => moment.Notation.Text("heard"),
        _ => AlarmWords.Priority(alarm.Alarm.Priority, moment.Notation),
    };

    /// <summary>What the rest of the day is held against, the nearest first.</summary>
    private static IEnumerable<(Row Row, string Whole)> Limits(DeckMoment moment) =>
        from limit in LiveLimits.Of(moment.State, moment.Forecast)
        orderby limit.Bound > 0 ? limit.Margin / limit.Bound : double.MaxValue
        // at 80 columns there is no room for what is held against what
        select (
            new Row(["", LimitWords.Margin(limit, moment.Notation), LimitWords.AfterMargin(limit, moment.Notation, moment.Plan.Brewhouse)], limit.Ok ? Tone.Normal : Tone.Warning),
            LimitWords.Of(limit, moment.Notation, moment.Plan.Brewhouse));

    private static IEnumerable<(Row Row, string Whole)> History(DeckMoment moment)
    {
        var words = new EventWords(moment.Plan.Brewhouse, moment.Notation, moment.Title);
        return moment.Events.Where(EventWords.IsOfAlarms).Reverse()
            .Select(e => Told(new Row([moment.Notation.Clock(e.AtMs), moment.Notation.Text("log"), words.Of(e, moment.Events)], Tone.Muted)))
            .DefaultIfEmpty(Told(new Row(["", moment.Notation.Text("log"), moment.Notation.Text("No alarm today so far.")], Tone.Muted)));
    }
}
