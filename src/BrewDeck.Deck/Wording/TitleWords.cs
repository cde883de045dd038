using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;

namespace BrewDeck.Deck.Wording;

/// <summary>The title of the terminal's window: what is wanted of the brewer, to be read in a list of windows.</summary>
public static class TitleWords
{
    public const string Plain = "BrewDeck";

    /// <param name="moment">Null: no batch runs.</param>
    public static string Of(DeckMoment? moment)
    {
        if (moment is null)
            return Plain;
        if (AlarmLines.Unheard(moment) is [var first, ..])
            return $"!! {AlarmLines.Words(moment).Cause(first.Alarm)} {Plain}";
        return moment.Focus.Act is FocusAct.Finish or FocusAct.Resume || (moment.Focus.Act == FocusAct.Start && moment.Focus.DueMs <= moment.NowMs)
            ? moment.Notation.Text($"Hands now: {moment.Title(moment.Focus.StepId)} - {Plain}")
            : $"{moment.Title(moment.Focus.StepId)} - {Plain}";
    }
}
