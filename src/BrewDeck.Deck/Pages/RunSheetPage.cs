using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The live run sheet: how it went, and how it is expected to go on.</summary>
internal sealed class RunSheetPage(Shell shell, BrewDay day) : TextPage(shell)
{
    protected override string Title => Shell.Notation.Text($"Run sheet: {day.Plan.Recipe.Name}");

    public override DateTimeOffset? NextTick(DateTimeOffset now) => day.Over ? null : now.AddSeconds(Math.Max(15, Shell.Pace / 4));

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => RunSheetLines.Of(day.Moment(now, Shell.Notation));
}
