using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>What an exercise asks, before it begins; the way back leads to its deck.</summary>
internal sealed class ExercisePage(Shell shell, Exercise exercise) : TextPage(shell)
{
    public override KeyContext Context => KeyContext.Brief;

    protected override string Title => ExerciseWords.Title(exercise, Shell.Notation);

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => ExerciseWords.Brief(exercise, Shell.Notation);

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.GoOn)
            Shell.Pop();
        else
            base.Handle(command, stroke, now);
    }
}
