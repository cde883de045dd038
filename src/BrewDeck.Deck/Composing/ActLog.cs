using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>The last acts with their times, newest first.</summary>
public static class ActLog
{
    public static ImmutableArray<Line> Of(DeckMoment moment, int most)
    {
        var words = new EventWords(moment.Plan.Brewhouse, moment.Notation, moment.Title);
        var lines = ImmutableArray.CreateBuilder<Line>();
        for (var i = moment.Events.Count - 1; i >= 0 && lines.Count < most; i--)
        {
            if (!EventWords.IsDoneAtOnce(moment.Events[i], moment.Events))
                lines.Add(One(moment.Events[i], words, moment));
        }
        return lines.ToImmutable();
    }

    private static Line One(RunEvent happened, EventWords words, DeckMoment moment) => new([
        new Span(moment.Notation.Clock(happened.AtMs) + "  ", Tone.Muted),
        new Span(words.Of(happened, moment.Events), Tone.Normal)]);
}
