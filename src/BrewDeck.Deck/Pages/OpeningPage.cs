using System.Collections.Immutable;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Pages;

/// <summary>The first screen: go on, begin, look back, help, leave.</summary>
internal sealed class OpeningPage(Shell shell) : ListPage(shell)
{
    private sealed record Entry(string Title, string Detail, Action<DateTimeOffset> Choose);

    protected override int Count => Entries().Length;

    protected override void Choose(int row, DateTimeOffset now) => Entries()[row].Choose(now);

    protected override Screen Compose(DateTimeOffset now)
    {
        var entries = Entries();
        Select(Selected);
        return new ListScreen(
            "BrewDeck",
            Shell.Notation.Date(now.ToUnixTimeMilliseconds()),
            [new Column("", 0)],
            [.. entries.Select(e => new Row([e.Title]))],
            Selected,
            [Line.Of(entries[Selected].Detail)],
            KeyMap.Hints(Context));
    }

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.Back)
            Leave();
        else
            base.Handle(command, stroke, now);
    }

    private ImmutableArray<Entry> Entries()
    {
        BatchHead? open = null;
        Shell.Try(() => open = Shell.OpenBatch());
        Entry[] goOn = open is null
            ? []
            : [new($"Go on with batch {open.Number}: {open.Recipe}", $"Opened {Shell.Notation.Date(open.OpenedMs)} on {open.Brewhouse}. Its clock runs on while you are here.", _ => Shell.GoOn(open.Number))];
        return
        [
            .. goOn,
            new("New brew day", "Choose a brewhouse and a recipe, see the plan, brew it.", _ => PickBrewhousePage.Enter(Shell)),
            new("Batches", "What was brewed: planned against done, readings, remedies, notes.", _ => Shell.Push(new BatchesPage(Shell))),
            new("Keys", "What each key does.", _ => Shell.Push(new HelpPage(Shell))),
            new("Leave", "Close the program. Everything is on disk already.", _ => Leave()),
        ];
    }

    private void Leave()
    {
        if (Shell.Day is not { Over: false } day)
        {
            Shell.Ended = true;
            return;
        }
        Ask(new ChoiceAsk(
            this,
            $"Leave while batch {day.Number} runs?",
            [Line.Of("Nothing is lost: started again, the program comes back to it with the right time left.")],
            [new Row(["Stay"]), new Row(["Leave"])],
            (row, _) => Shell.Ended = row == 1));
    }
}
