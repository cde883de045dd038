using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>All that came after the day in the order of time, scrolled: weeks of readings are longer than a small page.</summary>
internal sealed class AfterDayRecordPage(Shell shell, BrewDay day) : TextPage(shell)
{
    protected override string Title => Shell.Notation.Text($"Batch {day.Number} after the day: {day.Plan.Recipe.Name}");

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => FermentWords.Lines(day.State.Ferment, Shell.Notation).Skip(1);
}
