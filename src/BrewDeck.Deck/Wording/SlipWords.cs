using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;

namespace BrewDeck.Deck.Wording;

/// <summary>What was skipped or ended at the wrong time, as the cause of what is off plan.</summary>
public static class SlipWords
{
    public static string Of(RunStep slip, DeckMoment moment)
    {
        var (title, notation) = (moment.Title(slip.Spec.Id), moment.Notation);
        if (slip.Status == RunStatus.Skipped)
            return notation.Text($"Not done: {title}.");
        var over = Slips.OverS(slip);
        var (by, late) = (Durations.Short(Math.Abs(over)), over > 0);
        if (Followed(slip, moment) is not { } addition)
            return late ? notation.Text($"{title}: {by} too long.") : notation.Text($"{title}: {by} too short.");
        return late
            ? notation.Text($"{by} late: {moment.Title(addition.Spec.Id)}.")
            : notation.Text($"{by} early: {moment.Title(addition.Spec.Id)}.");
    }

    /// <summary>The addition that goes in at the end of a piece of the boil; null: none.</summary>
    private static RunStep? Followed(RunStep boiled, DeckMoment moment) =>
        moment.State.Steps.SkipWhile(s => s.Spec.Id != boiled.Spec.Id).Skip(1)
            .TakeWhile(s => s.Spec.Kind != StepKind.Boil).FirstOrDefault(s => s.Spec.Kind == StepKind.AddToBoil);
}
