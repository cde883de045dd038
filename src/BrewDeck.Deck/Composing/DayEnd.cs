using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>What is said of a day that has no step left: brewed, given up, or an exercise of its beginning alone.</summary>
internal sealed record DayEnd(string Title, string Headline, ImmutableArray<string> Sentences)
{
    public static DayEnd Of(DeckMoment moment)
    {
        var notation = moment.Notation;
        if (moment.State.ExerciseOver)
            return new(notation.Text("Exercise over"), notation.Text("The exercise is over."), HandsWords.ExerciseOver(notation));
        if (moment.State.Status == RunStatus.Aborted)
            return new(notation.Text("Aborted"), notation.Text("The batch was given up."), HandsWords.GivenUp(IsHot(moment), notation));
        return new(
            notation.Text("Day over"), notation.Text("The day is done."),
            HandsWords.DayOver(moment.Forecast.Outlook, moment.State.Readings, notation));
    }

    private static bool IsHot(DeckMoment moment) => moment.Forecast.Now.Vessels.Any(v => v.TempC >= HandsWords.HotC);
}
