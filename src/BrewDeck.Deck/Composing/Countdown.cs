using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>The big digits: time left until it is due, or time over, always from the deadline.</summary>
public sealed record Countdown(string Digits, string Label, Tone Tone)
{
    /// <summary>Over time is nothing to worry about for so long.</summary>
    private const double GraceS = 300;

    private const string Never = "--:--";

    public static Countdown Of(DeckMoment moment)
    {
        if (moment.Focus.Act == FocusAct.None)
            return new(Durations.Digits(moment.NowS), Unit(moment.NowS, moment.State is { Status: RunStatus.Aborted, ExerciseOver: false } ? moment.Notation.Text("until it was given up") : moment.Notation.Text("the day took"), moment.Notation), Tone.Muted);
        var run = moment.State.Step(moment.Focus.StepId);
        if (run is { Status: RunStatus.Held, HeldMs: { } since })
            return Held((moment.NowMs - since) / 1000.0, moment.Notation);
        if (moment.Focus.Act == FocusAct.Finish && run is { StartedMs: { } started } && run.Spec.Kind.EndsBy() == EndsBy.Hands)
            return Handwork(PlannedS(moment, run.Spec.Id) - ((moment.NowMs - started) / 1000.0), moment.Notation);
        if (moment.NeverGetsThere)
            return new(Never, moment.Notation.Text("does not get there"), Tone.Warning);
        return Due((moment.Focus.DueMs - moment.NowMs) / 1000.0, moment.Focus.Act, moment.Notation);
    }

    // hands take the time they take: the plan only says how much was meant for it
    private static Countdown Handwork(double s, Notation notation) => s > 0
        ? new(Up(s), Unit(s, notation.Text("planned for it"), notation), Tone.Due)
        : new(Durations.Digits(-s), Unit(-s, notation.Text("over the planned time"), notation), s < -GraceS ? Tone.Warning : Tone.Due);

    private static double PlannedS(DeckMoment moment, string id) => moment.Plan.Step(id)?.DurationS
        ?? (moment.State.Step(id)?.Spec is { } remedy ? 60 * remedy.Minutes ?? remedy.HandsS : 0);

    private static Countdown Held(double s, Notation notation) => new(Durations.Digits(s), Unit(s, notation.Text("held"), notation), Tone.Warning);

    private static Countdown Due(double s, FocusAct act, Notation notation)
    {
        if (s <= 0)
            return new(Durations.Digits(-s), Unit(-s, act == FocusAct.Start ? notation.Text("waiting to start") : notation.Text("over time"), notation), s < -GraceS ? Tone.Warning : Tone.Due);
        // rounded up: 0:00 is shown when it is due, not a second before
        return new(Up(s), Unit(s, act == FocusAct.Start ? notation.Text("until the start") : notation.Text("left"), notation), Tone.Normal);
    }

    private static string Up(double s) => Durations.Digits(Math.Ceiling(s));

    private static string Unit(double s, string label, Notation notation) => Durations.DigitsAreHours(s) ? label + notation.Text(", hours") : label;
}
