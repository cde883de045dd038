using System.Collections.Immutable;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The first screen: go on, begin, look back, help, leave.</summary>
internal sealed class OpeningPage(Shell shell) : ListPage(shell)
{
    /// <summary>More than these would push the rest off a small screen; the batches' own pages have them all.</summary>
    private const int MostDue = 5;

    private readonly DueToday _due = new(shell);

    private DateTimeOffset _now;
    private string? _on;
    private int _count;

    private sealed record Entry(string Title, string Detail, Action<DateTimeOffset> Choose);

    protected override int Count => Entries().Length;

    protected override void Choose(int row, DateTimeOffset now) => Entries()[row].Choose(now);

    protected override Screen Compose(DateTimeOffset now)
    {
        _now = now;
        var entries = Entries();
        // what is put in above leaves the cursor on its row; who was on the first one meets the batch to go on with there
        if (Selected > 0 && entries.Length != _count && entries.ToList().FindIndex(e => e.Title == _on) is >= 0 and var at)
            Select(at);
        Select(Selected);
        (_on, _count) = (entries[Selected].Title, entries.Length);
        return new ListScreen(
            "BrewDeck",
            Shell.Notation.Date(now.ToUnixTimeMilliseconds()),
            [new Column("", 0)],
            [.. entries.Select(e => new Row([e.Title]))],
            Selected,
            [Line.Of(entries[Selected].Detail)],
            KeyMap.Hints(Context, Shell.Notation, Command.Back, Shell.Notation.Text("leave")));
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
        Shell.Try(() => open = Shell.OpenBatch(Shell.Ports.Rehearsal is not null));
        Entry[] goOn = open is null
            ? []
            : [new(Shell.Notation.Text($"Go on with batch {open.Number}: {open.Recipe}"), Shell.Notation.Text($"Opened {Shell.Notation.Date(open.OpenedMs)} on {open.Brewhouse}. Its clock runs on while you are here."), _ => Shell.GoOn(open.Number))];
        return
        [
            .. goOn,
            .. Rehearsed(),
            .. Due(),
            new(Shell.Notation.Text("New brew day"), Shell.Notation.Text("Choose a brewhouse and a recipe, see the plan, brew it."), _ => PickBrewhousePage.Enter(Shell)),
            .. Shell.Ports.Exercises is { } book
                ? new Entry[] { new(Shell.Notation.Text("Exercises"), Shell.Notation.Text("Learn the brewhouse on a simulator: seven exercises, from water alone to a lager on which two things go wrong."), _ => Shell.Push(new ExercisesPage(Shell, book))) }
                : [],
            new(Shell.Notation.Text("Batches"), Shell.Notation.Text("What was brewed: planned against done, readings, remedies, notes."), _ => Shell.Push(new BatchesPage(Shell))),
            new(Shell.Notation.Text("Lessons"), Shell.Notation.Text("What the batches say about a brewhouse; take it into its profile, or leave it."), _ => LessonsPage.Enter(Shell)),
            .. Shell.Ports.Writer is null ? ImmutableArray<Entry>.Empty :
            [
                new(Shell.Notation.Text("Recipes"), Shell.Notation.Text("Read, make, copy or change a recipe, and see what it gives on a brewhouse."), _ => RecipesPage.Enter(Shell)),
                new(Shell.Notation.Text("New brewhouse"), Shell.Notation.Text("Describe your brewhouse with a tape measure and a kitchen scale, in about ten minutes. Your answers are kept."), _ => SetUpPage.Enter(Shell)),
            ],
            new(Shell.Notation.Text("Reckoner"), Shell.Notation.Text("One-off sums: hydrometer, dilution, priming and so on. The key k opens it anywhere."), _ => ReckonerPage.Enter(Shell)),
            new(Shell.Notation.Text("Keys"), Shell.Notation.Text("What each key does."), _ => Shell.Push(new HelpPage(Shell, Context))),
            new(Shell.Notation.Text("Leave"), Shell.Notation.Text("Close the program. Everything is on disk already."), _ => Leave()),
        ];
    }

    /// <summary>A rehearsal needs its own clock and plant: the deck is left for it, as for an exercise.</summary>
    private ImmutableArray<Entry> Rehearsed()
    {
        BatchHead? open = null;
        if (Shell.Ports is { Rehearsal: null, Exercises: not null })
            Shell.Try(() => open = Shell.OpenBatch(rehearsed: true));
        return open is null ? [] :
        [
            new(
                Shell.Notation.Text($"Go on with rehearsal {open.Number}: {open.Recipe}"),
                Shell.Notation.Text($"Rehearsed on {open.Brewhouse}, not brewed. It stands still until you go on with it."),
                _ =>
                {
                    if (Shell.Day is { Over: false } day)
                        Shell.Say(Shell.Notation.Text($"Batch {day.Number} still runs: finish it or give it up first."), Tone.Warning);
                    else
                        (Shell.LeftForRehearsal, Shell.Ended) = (true, true);
                }),
        ];
    }

    private IEnumerable<Entry> Due()
    {
        ImmutableArray<DueBatch> due = [];
        Shell.Try(() => due = _due.At(_now));
        return due.Take(MostDue).Select(d => new Entry(
            Overdue(d)
                ? Shell.Notation.Text($"Overdue: {FermentWords.Due(d.Item, d.State, Shell.Notation)}, batch {d.Head.Number} ({d.Head.Recipe})")
                : Shell.Notation.Text($"Due today: {FermentWords.Due(d.Item, d.State, Shell.Notation)}, batch {d.Head.Number} ({d.Head.Recipe})"),
            Shell.Notation.Text($"Due {FermentWords.Day(d.Item.DueMs, Shell.Notation)}; pitched {FermentWords.Day(d.State.PitchedMs ?? 0, Shell.Notation)}."),
            _ => AfterDayPage.Enter(Shell, d.Head.Number)));
    }

    private bool Overdue(DueBatch due) => string.CompareOrdinal(FermentWords.Day(due.Item.DueMs, Shell.Notation), FermentWords.Day(_now.ToUnixTimeMilliseconds(), Shell.Notation)) < 0;

    private void Leave()
    {
        if (Shell.Day is not { Over: false } day)
        {
            Shell.Ended = true;
            return;
        }
        Ask(new ChoiceAsk(
            this,
            Shell.Notation.Text($"Leave while batch {day.Number} runs?"),
            [Line.Of(Shell.Notation.Text("Nothing is lost: started again, the program comes back to it with the right time left."))],
            [new Row([Shell.Notation.Text("Stay")]), new Row([Shell.Notation.Text("Leave")])],
            (row, _) => Shell.Ended = row == 1));
    }
}
