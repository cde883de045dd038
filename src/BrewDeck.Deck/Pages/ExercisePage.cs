using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>What an exercise asks, before it begins; the way back leads to its deck.</summary>
internal sealed class ExercisePage(Shell shell, Exercise exercise) : TextPage(shell)
{
    protected override string Title => ExerciseWords.Title(exercise, Shell.Notation);

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => ExerciseWords.Brief(exercise, Shell.Notation);
}
