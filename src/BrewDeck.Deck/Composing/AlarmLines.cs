using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>The alarms that stand and are not shelved, the most urgent first.</summary>
public static class AlarmLines
{
    private const int Shown = 2;

    /// <summary>What nobody has acknowledged changes its tone once in so many seconds of the wall: well below two flashes a second.</summary>
    private const double FlashS = 1;

    private static IReadOnlyList<StandingAlarm> InSight(DeckMoment moment) =>
    [
        .. moment.State.Alarms.Where(a => !a.IsShelved(moment.NowMs)).Select(a => a with { Alarm = Now(a.Alarm, moment) })
            .OrderByDescending(a => a.Alarm.Priority).ThenBy(a => a.Acknowledged).ThenBy(a => a.RaisedMs),
    ];

    public static IReadOnlyList<StandingAlarm> Unheard(DeckMoment moment) => [.. InSight(moment).Where(a => !a.Acknowledged)];

    /// <param name="pace">Seconds of the day in one second of the wall.</param>
    public static ImmutableArray<Line> Of(DeckMoment moment, double pace)
    {
        var alarms = InSight(moment);
        var words = Words(moment);
        var lit = (long)(moment.NowMs / (1000 * FlashS * Math.Max(1, pace))) % 2 == 0;
        var more = alarms.Count - Shown;
        return
        [
            .. alarms.Take(Shown).Select(a => One(a, words, lit, moment.Notation)),
            .. more > 0 ? new[] { Line.Of(moment.Notation.Text($"{more} more {(more == 1 ? moment.Notation.Text("alarm") : moment.Notation.Text("alarms"))}: l lists all."), Tone.Warning) } : [],
        ];
    }

    /// <summary>A limit ahead moves with each reading: the record keeps it as it was found, the deck says it as it is.</summary>
    private static Alarm Now(Alarm alarm, DeckMoment moment) =>
        alarm.Limit is { } found && LiveLimits.Of(moment.State, moment.Forecast).FirstOrDefault(l => l.Name == found.Name) is { } limit
            ? alarm with { Value = limit.Value, Bound = limit.Bound, Limit = limit } : alarm;

    public static AlarmWords Words(DeckMoment moment) => new(moment.Plan.Brewhouse, moment.Notation, moment.Title)
    {
        ByCoil = HandsWords.Way(moment.Plan) == MashHeating.Coil,
        IsBeside = id => moment.State.Step(id)?.Spec.Unit == UnitProcedure.CleanDown && moment.State.Steps.Any(s => s.Open && s.Spec.Unit != UnitProcedure.CleanDown),
    };

    private static Line One(StandingAlarm alarm, AlarmWords words, bool lit, Notation notation)
    {
        var tone = alarm.Acknowledged ? Tone.Normal : lit ? Loud(alarm.Alarm.Priority) : Tone.Strong;
        return new Line([
            new Span($"{(alarm.Acknowledged ? notation.Text("heard") : "!!")} {AlarmWords.Priority(alarm.Alarm.Priority, notation)} ", tone),
            new Span(words.Cause(alarm.Alarm), tone),
            new Span($" {words.Follows(alarm.Alarm)} {words.Action(alarm.Alarm)}")]);
    }

    private static Tone Loud(AlarmPriority priority) => priority == AlarmPriority.High ? Tone.Alarm : Tone.Warning;
}
