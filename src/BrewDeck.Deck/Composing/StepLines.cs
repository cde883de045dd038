using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>What the deck says of the step in hand: its orders, what should be read at its end, and what cannot be known without a look.</summary>
internal static class StepLines
{
    /// <summary>A mash that cools a little in its rest is where it should be; K, common practice, no source.</summary>
    private const double NearK = 1.5;

    public static ImmutableArray<Line> Of(PlanStep step, DeckMoment moment) =>
        [.. Reckoned(step, moment), .. Orders(step, moment).Select(s => Line.Of(s)), .. Middle(step, moment), .. Expected(step, moment)];

    /// <summary>A long rest is stirred and read once in its middle, whatever the hands are busy with; empty when that is done.</summary>
    public static string HalfTime(PlanStep step, DeckMoment moment) =>
        moment.State.Step(step.Spec.Id) is not { } run || RestReadings.HalfTimeMs(moment.State, run) is not { } half ? ""
        : half > moment.NowMs ? moment.Notation.Text($"stir and read at {moment.Notation.Clock(half)}")
        : moment.Notation.Text("stir and read it");

    private static IEnumerable<Line> Middle(PlanStep step, DeckMoment moment) =>
        moment.IsRunning(step) && HalfTime(step, moment) is { Length: > 0 } stir ? [Line.Of(Names.Sentence(stir) + ".", Tone.Due)] : [];

    // once it has begun the hoses of a flow are where they are
    private static ImmutableArray<string> Orders(PlanStep step, DeckMoment moment) => step.Spec.Kind.EndsBy() == EndsBy.Level && moment.State.Step(step.Spec.Id)?.StartedMs is not null
        ? HandsWords.Going(step, LiquorLeftL(step, moment), moment.Plan, moment.Notation)
        : HandsWords.AtTheDeck(step, moment.Plan, moment.Notation);

    /// <summary>Sparge liquor still to come, L at 20 °C: no more than the tank has to give; null: none is sparged.</summary>
    private static double? LiquorLeftL(PlanStep step, DeckMoment moment)
    {
        var house = moment.Plan.Brewhouse;
        return step.Spec.SpargeL is > 0 && moment.Forecast.Step(step.Spec.Id)?.Spec.SpargeL is { } left && house.Vessels.IndexOf(house.HotLiquorTank) is >= 0 and var tank
            ? Math.Max(0, Math.Min(left, Contents.CoolL(moment.Forecast.Now.Vessels[tank]) - house.HotLiquorTank.DeadSpaceL))
            : null;
    }

    // before a run-off is begun its hoses want the room, and its title says where it ends
    private static IEnumerable<Line> Expected(PlanStep step, DeckMoment moment) => step.Expected.IsEmpty || (step.Spec.Kind == StepKind.Lauter && moment.State.Step(step.Spec.Id)?.StartedMs is null)
        ? []
        : [Line.Of(moment.Notation.Text("Expected: ") + string.Join(", ", step.Expected.Select((e, i) => Expected(e, step, moment) + ByNow(e, moment.ExpectedNow(step).ElementAtOrDefault(i), moment) + Wanted(e, step, moment))) + ".", Tone.Muted)];

    // what a mash comes to is no news without what it should come to, by which its reading is judged
    private static string Wanted(ExpectedReading e, PlanStep step, DeckMoment moment) =>
        e.Kind == ReadingKind.Temperature && WantedC(e, step, moment) is { } wanted && Math.Abs(e.Value - wanted) >= (step.Spec.Kind == StepKind.Rest ? NearK : ReadingWords.NearK)
            ? moment.Notation.Text($" ({moment.Notation.Target(wanted)} wanted)")
            : "";

    // a raise is on its way from the rest that still goes on
    private static double? WantedC(ExpectedReading e, PlanStep step, DeckMoment moment) =>
        step.Spec.Kind is StepKind.Ramp or StepKind.Infuse or StepKind.ReturnDecoction && e.Vessel == (step.Spec.To.Length > 0 ? step.Spec.To : step.Spec.Vessel) ? step.Spec.TargetC : RestReadings.WantedC(moment.State, e.Vessel);

    // a bed that has closed or a slow chiller shows in no clock
    private static IEnumerable<Line> Reckoned(PlanStep step, DeckMoment moment)
    {
        if (moment.IsReckonedOver(step))
            return [Line.Of(moment.Notation.Text("Reckoned done: read the level first."), Tone.Warning)];
        return moment.Focus.Act == FocusAct.Finish && step is { TargetC: { } target } && step.Spec.Kind.EndsBy() == EndsBy.Temperature
            && moment.Unread(step).Any(e => e.Kind == ReadingKind.Temperature)
                ? [Line.Of(moment.Notation.Text($"It should be at {moment.Notation.Temp(target)} by now: stir and read it."), Tone.Warning)]
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
}
