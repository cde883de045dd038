using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The graded exercises; choosing one leaves this deck for the rehearsal's.</summary>
internal sealed class ExercisesPage(Shell shell, IExerciseBook book) : ListPage(shell)
{
    protected override int Count => Exercises.All.Length;

    protected override void Choose(int row, DateTimeOffset now)
    {
        if (Shell.Day is { Over: false } open)
        {
            Shell.Say(Shell.Notation.Text($"Batch {open.Number} still runs: finish it or give it up first."), Tone.Warning);
            return;
        }
        Shell.Exercise = Exercises.All[row].Number;
        Shell.Ended = true;
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text("Exercises"),
        Shell.Notation.Text($"{Exercises.All.Count(e => book.HasPassed(e.Number))} of {Count} passed"),
        [new Column(Shell.Notation.Text("no."), 4, Right: true), new Column(Shell.Notation.Text("exercise"), 0), new Column("", 8)],
        [.. Exercises.All.Select(e => new Row([Shell.Notation.Number(e.Number, "0"), Shell.Notation.Text(e.Name), book.HasPassed(e.Number) ? Shell.Notation.Text("passed") : ""]))],
        Selected,
        ExerciseWords.Brief(Exercises.All[Selected], Shell.Notation),
        KeyMap.Hints(Context, Shell.Notation));
}
