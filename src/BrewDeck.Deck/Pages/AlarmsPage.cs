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

    protected override int Count => day.State.Alarms.Length;

    public override DateTimeOffset? NextTick(DateTimeOffset now) => day.Over ? null : now.AddSeconds(Math.Max(5, Shell.Pace / 4));

    protected override void Choose(int row, DateTimeOffset now)
    {
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

    protected override Screen Compose(DateTimeOffset now)
    {
        Select(Selected);
        var moment = day.Moment(now, Shell.Notation);
        return new ListScreen(
            Shell.Notation.Text("Alarms"),
            Shell.Notation.Clock(day.Ms(now)),
            [new Column(Shell.Notation.Text("since"), 5), new Column("", 9), new Column(Shell.Notation.Text("alarm"), 0)],
            Count == 0 ? [new Row(["", "", Shell.Notation.Text("No alarm stands.")], Tone.Muted)] : [.. day.State.Alarms.Select(a => Standing(a, moment))],
            Count == 0 ? -1 : Selected,
            [.. Limits(moment), .. History(moment)],
            KeyMap.Hints(Context, Shell.Notation));
    }

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
    private static IEnumerable<Line> Limits(DeckMoment moment)
    {
        var limits = LiveLimits.Of(moment.State, moment.Forecast);
        if (limits.IsEmpty)
            yield break;
        yield return Line.Of(moment.Notation.Text("Limits of the rest of the day"), Tone.Strong);
        foreach (var limit in limits.OrderBy(l => l.Bound > 0 ? l.Margin / l.Bound : double.MaxValue))
            yield return Line.Of("  " + LimitWords.Of(limit, moment.Notation), limit.Ok ? Tone.Normal : Tone.Warning);
        yield return Line.Of("");
    }

    private static IEnumerable<Line> History(DeckMoment moment)
    {
        var words = new EventWords(moment.Plan.Brewhouse, moment.Notation, moment.Title);
        var past = moment.Events.Where(EventWords.IsOfAlarms).Reverse().ToList();
        return past.Count == 0
            ? [Line.Of(moment.Notation.Text("No alarm today so far."), Tone.Muted)]
            : past.Prepend(null).Select(e => e is null
                ? Line.Of(moment.Notation.Text("Today so far"), Tone.Strong)
                : Line.Of($"{moment.Notation.Clock(e.AtMs)}  {words.Of(e, moment.Events)}"));
    }
}
