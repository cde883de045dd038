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

    /// <param name="aside">Said in the corner beside batch and clock, such as a rehearsal's speed; empty: nothing.</param>
    public static DeckScreen Of(DeckMoment moment, ImmutableArray<KeyHint> keys, string aside = "")
    {
        var countdown = Countdown.Of(moment);
        var (strip, now) = DayStrip.Of(moment);
        var (title, headline, sentences) = Head(moment);
        // of a batch that was given up nothing is reckoned any more
        var goesOn = moment.State.Status != RunStatus.Aborted;
        return new DeckScreen(
            title,
            Corner(moment, aside),
            countdown.Digits,
            countdown.Label,
            countdown.Tone,
            headline,
            sentences,
            CautionLines(moment),
            Hands(moment),
            Next(moment),
            Background(moment),
            goesOn ? VesselGauges.Of(moment) : [],
            goesOn ? CircuitGauges.Of(moment) : [],
            goesOn ? OutlookItems.Of(moment) : [],
            strip,
            now,
            ActLog.Of(moment, LogShown),
            keys)
        {
            ListsFirst = moment.Current?.Spec.Kind == StepKind.WeighIn,
        };
    }

    private static (string Title, Line Headline, ImmutableArray<Line> Sentences) Head(DeckMoment moment)
    {
        if (moment.Current is { } step)
            return (Title(step, moment), Headline(step, moment), StepLines.Of(step, moment));
        var end = DayEnd.Of(moment);
        return (end.Title, Line.Of(end.Headline, Tone.Strong), [.. end.Sentences.Select(s => Line.Of(s))]);
    }

    /// <summary>"Mash · step 3 of 7".</summary>
    private static string Title(PlanStep step, DeckMoment moment)
    {
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

    private static Line Headline(PlanStep step, DeckMoment moment)
    {
        var held = moment.State.Step(step.Spec.Id) is { Status: RunStatus.Held };
        return new Line([.. held ? new[] { new Span(moment.Notation.Text("HELD  "), Tone.Warning) } : [], new Span(moment.Title(step), Tone.Strong)]);
    }

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
        if (moment.NeverGetsThere)
            return Line.Of(moment.Notation.Text("Hands now: like this it never gets there."), Tone.Warning);
        if (moment.Focus.Act is FocusAct.Wait && moment.Current is { } step && step.Spec.Kind.IsWatched())
            return Line.Of(moment.Notation.Text($"Stay with it: {Durations.Short(Math.Max(0, step.EndS - moment.NowS))} left, to {moment.Clock(step.EndS)}."), Tone.Due);
        if (HalfTimeMs(moment) <= moment.NowMs)
            return Line.Of(moment.Notation.Text("Hands now: stir the mash and read it."), Tone.Due);
        if (moment.Forecast is { HandsNeededS: { } first, Switches: [var heat, ..] } && heat.AtS <= first)
            return Line.Of(HeatWords.Needed(heat, heat.AtS - moment.NowS, moment.Clock(heat.AtS), moment.Notation));
        return moment.Forecast.HandsNeededS is not { } at
            ? Line.Of(moment.Notation.Text("No more hands needed."), Tone.Muted)
            : Line.Of(Needed(at, moment));
    }

    /// <summary>When the hands are needed, and by what where the headline is of another step.</summary>
    private static string Needed(double at, DeckMoment moment)
    {
        var (takes, clock) = (Durations.Short(Math.Max(0, at - moment.NowS)), moment.Clock(at));
        if (HalfTimeMs(moment) is { } half && Math.Abs((half - moment.DayStartMs) / 1000.0 - at) < 1)
            return moment.Notation.Text($"Stir the mash in {takes}, at {clock}.");
        return moment.Rest.FirstOrDefault(s => moment.IsRunning(s) && Math.Abs(s.EndS - at) < 1) is { } ends && ends.Spec.Id != moment.Focus.StepId && ends.Spec.Vessel.Length > 0
            ? moment.Notation.Text($"Hands in {takes}, at {clock}: {moment.Notation.Name(ends.Spec.Vessel)}.")
            : moment.Notation.Text($"Hands needed in {takes}, at {clock}.");
    }

    /// <summary>When a long rest wants its stir next; null: none does.</summary>
    private static long? HalfTimeMs(DeckMoment moment) => moment.State.Steps.Select(s => RestReadings.HalfTimeMs(moment.State, s)).Min();

    private static ImmutableArray<NextStep> Next(DeckMoment moment) => moment.Focus.Act == FocusAct.None ? [] :
    [
        .. moment.Rest
            .Where(s => s.Spec.Id != moment.Focus.StepId && moment.State.Step(s.Spec.Id) is not { Status: RunStatus.Running or RunStatus.Held })
            .OrderBy(s => s.StartS)
            .Take(NextShown)
            .Select(s => new NextStep(moment.Clock(s.StartS), moment.Title(s), PlanLines.Takes(s))),
    ];

    private static ImmutableArray<Line> Background(DeckMoment moment) => moment.Focus.Act == FocusAct.None ? [] :
    [
        .. moment.Rest
            .Where(s => s.Spec.Id != moment.Focus.StepId && moment.State.Step(s.Spec.Id) is { Status: RunStatus.Running or RunStatus.Held })
            .Select(s => Line.Of($"{moment.Title(s)}: {Going(s, moment)}", Tone.Muted)),
    ];

    private static string Going(PlanStep step, DeckMoment moment)
    {
        if (moment.State.Step(step.Spec.Id) is { Status: RunStatus.Held })
            return moment.Notation.Text("held");
        var left = step.EndS - moment.NowS;
        return left <= 0 ? moment.Notation.Text("due")
            : StepLines.HalfTime(step, moment) is { Length: > 0 } stir ? moment.Notation.Text($"{Durations.Short(left)} left; {stir}")
            : moment.Notation.Text($"{Durations.Short(left)} left");
    }
}
