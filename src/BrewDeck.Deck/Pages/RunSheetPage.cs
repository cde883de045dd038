using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The live run sheet: how it went, and how it is expected to go on.</summary>
internal sealed class RunSheetPage(Shell shell, BrewDay day) : TextPage(shell)
{
    protected override string Title => Shell.Notation.Text($"Run sheet: {day.Plan.Recipe.Name}");

    public override DateTimeOffset? NextTick(DateTimeOffset now) => day.Over ? null : now.AddSeconds(Math.Max(15, Shell.Pace / 4));

    protected override IEnumerable<Line> Lines(DateTimeOffset now)
    {
        var moment = day.Moment(now, Shell.Notation);
        return [.. Orders(moment), .. RunSheetLines.Of(moment), .. Finish(moment)];
    }

    /// <summary>The sheet lets nobody be late; the outlook reckons with hands as they are.</summary>
    private static IEnumerable<Line> Finish(DeckMoment moment) => OutlookItems.Finish(moment) is { Band.Length: > 0 } finish
        ? [Line.Of(""), Line.Of(moment.Notation.Text($"Times ahead: each step begun at once. With the usual waits all is done at {finish.Value} ({finish.Band})."), Tone.Muted)]
        : [];

    /// <summary>What the hands do now, whole: the deck shows what has room.</summary>
    private static IEnumerable<Line> Orders(DeckMoment moment) => moment.Current is { } step
        ?
        [
            Line.Of(moment.Title(step), Tone.Strong),
            .. HandsWords.AtTheDeck(step, moment.Plan, moment.Notation, brief: false).Select(s => Line.Of("  " + s)),
            Line.Of(""),
        ]
        : [];
}
