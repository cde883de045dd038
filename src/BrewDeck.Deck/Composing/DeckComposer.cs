using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>Puts the running brew day together as a screen.</summary>
public static class DeckComposer
{
    private const int NextShown = 9;
    private const int LogShown = 24;

    /// <summary>A mash that cools a little in its rest is where it should be; K, common practice, no source.</summary>
    private const double NearK = 1.5;

    /// <summary>Read a little early, half time is read; ms, common practice, no source.</summary>
    private const long EarlyMs = 5 * 60_000;

    /// <param name="aside">Said in the corner beside batch and clock, such as a rehearsal's speed; empty: nothing.</param>
    public static DeckScreen Of(DeckMoment moment, ImmutableArray<KeyHint> keys, string aside = "")
    {
        var countdown = Countdown.Of(moment);
        var (strip, now) = DayStrip.Of(moment);
        return new DeckScreen(
            Title(moment),
            Corner(moment, aside),
            countdown.Digits,
            countdown.Label,
            countdown.Tone,
            Headline(moment),
            Sentences(moment),
            CautionLines(moment),
            Hands(moment),
            Next(moment),
            Background(moment),
            GivenUp(moment) ? [] : VesselGauges.Of(moment),
            GivenUp(moment) ? [] : CircuitGauges.Of(moment),
            GivenUp(moment) ? [] : OutlookItems.Of(moment),
            strip,
            now,
            ActLog.Of(moment, LogShown),
            keys);
    }

    /// <summary>"Mash · step 3 of 7".</summary>
    private static string Title(DeckMoment moment)
    {
        if (moment.Current is not { } step)
            return moment.State.Status == RunStatus.Aborted ? moment.Notation.Text("Aborted") : moment.Notation.Text("Day over");
        var same = moment.State.Steps.Where(s => s.Spec.Unit == step.Spec.Unit).ToList();
        var place = same.FindIndex(s => s.Spec.Id == step.Spec.Id) + 1;
        return moment.Notation.Text($"{Names.Sentence(Names.Unit(step.Spec.Unit, moment.Notation))} · step {place} of {same.Count}");
    }

    private static string Corner(DeckMoment moment, string aside)
    {
        string[] parts = [moment.Plan.Recipe.Name, aside, moment.Notation.Clock(moment.NowMs), .. Day(moment)];
        return string.Join(" · ", parts.Where(p => p.Length > 0));
    }

    private static ImmutableArray<string> Day(DeckMoment moment) =>
        moment.State.DayStartMs is null ? [] : [moment.Notation.Text($"day {PlanLines.Since(moment.NowS)}")];

    private static Line Headline(DeckMoment moment)
    {
        if (moment.Current is not { } step)
            return Line.Of(moment.State.Status == RunStatus.Aborted ? moment.Notation.Text("The batch was given up.") : moment.Notation.Text("The day is done."), Tone.Strong);
        var held = moment.Run(step.Spec.Id) is { Status: RunStatus.Held };
        return new Line([.. held ? new[] { new Span(moment.Notation.Text("HELD  "), Tone.Warning) } : [], new Span(moment.Title(step), Tone.Strong)]);
    }

    private static ImmutableArray<Line> Sentences(DeckMoment moment) => moment.Current is { } step
        ? [.. Reckoned(step, moment), .. Orders(step, moment).Select(s => Line.Of(s)), .. Expected(step, moment)]
        : [.. (GivenUp(moment) ? HandsWords.GivenUp(IsHot(moment), moment.Notation) : HandsWords.DayOver(moment.Forecast.Outlook, moment.State.Readings, moment.Notation)).Select(s => Line.Of(s))];

    // at its end the hoses of a flow are where they are
    private static ImmutableArray<string> Orders(PlanStep step, DeckMoment moment) => moment.IsReckonedOver(step)
        ? HandsWords.WithoutHoses(step, moment.Plan, moment.Notation)
        : HandsWords.AtTheDeck(step, moment.Plan, moment.Notation);

    private static bool IsHot(DeckMoment moment) => moment.Forecast.Now.Vessels.Any(v => v.TempC >= HandsWords.HotC);

    private static bool GivenUp(DeckMoment moment) => moment.State.Status == RunStatus.Aborted;

    private static IEnumerable<Line> Expected(PlanStep step, DeckMoment moment) => step.Expected.IsEmpty
        ? []
        : [Line.Of(moment.Notation.Text("Expected: ") + string.Join(", ", step.Expected.Select((e, i) => Expected(e, step, moment) + ByNow(e, moment.ExpectedNow(step).ElementAtOrDefault(i), moment) + Wanted(e, moment))) + ".", Tone.Muted)];

    // what a mash comes to is no news without what it should come to
    private static string Wanted(ExpectedReading e, DeckMoment moment) =>
        e.Kind == ReadingKind.Temperature && RestReadings.WantedC(moment.State, e.Vessel) is { } wanted && Math.Abs(e.Value - wanted) >= NearK
            ? moment.Notation.Text($" ({moment.Notation.Target(wanted)} wanted)")
            : "";

    // a bed that has closed or a slow chiller shows in no clock
    private static IEnumerable<Line> Reckoned(PlanStep step, DeckMoment moment)
    {
        if (moment.IsReckonedOver(step))
            return [Line.Of(moment.Notation.Text("By reckoning over: read the level first."), Tone.Warning)];
        return moment.Focus.Act == FocusAct.Finish && step is { TargetC: { } target } && step.Spec.Kind.EndsBy() == EndsBy.Temperature
            && moment.Unread(step).Any(e => e.Kind == ReadingKind.Temperature)
                ? [Line.Of(moment.Notation.Text($"It should have {moment.Notation.Temp(target)} by now: stir and read it."), Tone.Warning)]
                : [];
    }

    // what waits goes on: a mash that stands cools
    private static string ByNow(ExpectedReading e, ExpectedReading? now, DeckMoment moment) =>
        e.Kind == ReadingKind.Temperature && now is not null && now.Kind == e.Kind && ReadingWords.Value(e.Kind, now.Value, moment.Notation) is var value && value != ReadingWords.Value(e.Kind, e.Value, moment.Notation)
            ? moment.Notation.Text($" (by now {value})")
            : "";

    // the vessel that the step is about goes without saying
    private static string Expected(ExpectedReading e, PlanStep step, DeckMoment moment)
    {
        var about = step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel;
        var what = e.Vessel == about ? Names.Kind(e.Kind, moment.Notation) : ReadingWords.What(e.Kind, e.Vessel, moment.Plan.Brewhouse, moment.Notation);
        var value = ReadingWords.Value(e.Kind, e.Value, moment.Notation);
        return e.Kind == ReadingKind.Ph ? value : $"{what} {(IsHotLevel(e, step, moment) ? moment.Notation.Text($"{value} hot") : value)}";
    }

    /// <summary>Hot wort takes about four hundredths more room than cold: which of the two is read must be said.</summary>
    private static bool IsHotLevel(ExpectedReading e, PlanStep step, DeckMoment moment) => e.Kind == ReadingKind.Volume
        && moment.State.Live?.Setting.IndexOf(e.Vessel) is >= 0 and var index && step.After.Vessels[index].TempC >= HandsWords.HotC;

    private static ImmutableArray<Line> CautionLines(DeckMoment moment) => moment.Current is { } step
        ? [.. CautionWords.Of(step.Spec.Cautions, moment.Notation).Select(c => Line.Of(c, Tone.Warning))]
        : [];

    private static Line Hands(DeckMoment moment)
    {
        if (moment.Focus.Act is FocusAct.None)
            return Line.Of(moment.Notation.Text("Space: batch, log, fermenter readings."));
        if (moment.Focus.Act is FocusAct.Finish)
            return Line.Of(moment.Notation.Text("Hands now. Space when it is done."), Tone.Due);
        if (moment.Focus.Act is FocusAct.Resume)
            return Line.Of(moment.Notation.Text("On hold. Space goes on with it."), Tone.Warning);
        if (moment.Focus.Act is FocusAct.Start && moment.Focus.DueMs <= moment.NowMs)
            return Line.Of(moment.Notation.Text("Hands now. Space when you begin."), Tone.Due);
        if (moment.Focus.Act is FocusAct.Wait && moment.Current is { } step && step.Spec.Kind.IsWatched())
            return Line.Of(moment.Notation.Text($"Stay with it: {Durations.Short(Math.Max(0, step.EndS - moment.NowS))} left, to {moment.Clock(step.EndS)}."), Tone.Due);
        if (moment.Forecast is { HandsNeededS: { } first, Switches: [var heat, ..] } && heat.AtS <= first)
            return Line.Of(HeatWords.Needed(heat, heat.AtS - moment.NowS, moment.Clock(heat.AtS), moment.Notation));
        return moment.Forecast.HandsNeededS is not { } at
            ? Line.Of(moment.Notation.Text("No more hands needed."), Tone.Muted)
            : Line.Of(moment.Notation.Text($"Hands needed in {Durations.Short(Math.Max(0, at - moment.NowS))}, at {moment.Clock(at)}."));
    }

    private static ImmutableArray<NextStep> Next(DeckMoment moment) => moment.Focus.Act == FocusAct.None ? [] :
    [
        .. moment.Rest
            .Where(s => s.Spec.Id != moment.Focus.StepId && moment.Run(s.Spec.Id) is not { Status: RunStatus.Running or RunStatus.Held })
            .OrderBy(s => s.StartS)
            .Take(NextShown)
            .Select(s => new NextStep(moment.Clock(s.StartS), moment.Title(s), PlanLines.Takes(s))),
    ];

    private static ImmutableArray<Line> Background(DeckMoment moment) => moment.Focus.Act == FocusAct.None ? [] :
    [
        .. moment.Rest
            .Where(s => s.Spec.Id != moment.Focus.StepId && moment.Run(s.Spec.Id) is { Status: RunStatus.Running or RunStatus.Held })
            .Select(s => Line.Of($"{moment.Title(s)}: {Going(s, moment)}", Tone.Muted)),
    ];

    private static string Going(PlanStep step, DeckMoment moment)
    {
        if (moment.Run(step.Spec.Id) is { Status: RunStatus.Held })
            return moment.Notation.Text("held");
        var left = step.EndS - moment.NowS;
        return left <= 0 ? moment.Notation.Text("due")
            : HalfTime(step, moment) is { Length: > 0 } stir ? moment.Notation.Text($"{Durations.Short(left)} left; {stir}")
            : moment.Notation.Text($"{Durations.Short(left)} left");
    }

    // a long rest is stirred and read once in its middle, while the hands are busy elsewhere
    private static string HalfTime(PlanStep step, DeckMoment moment)
    {
        if (step.Spec.Kind != StepKind.Rest || step.Spec.Minutes is not (>= HandsWords.LongRestMin and { } minutes) || moment.Run(step.Spec.Id) is not { StartedMs: { } since })
            return "";
        var half = since + (long)(minutes * 30_000);
        var read = moment.State.Readings.Any(r => r.AtMs >= half - EarlyMs && r.Reading.Kind == ReadingKind.Temperature && r.Reading.Vessel == step.Spec.Vessel);
        return read ? "" : half > moment.NowMs ? moment.Notation.Text($"stir and read at {moment.Notation.Clock(half)}") : moment.Notation.Text("stir and read it");
    }
}
