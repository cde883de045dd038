using System.Collections.Immutable;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>A batch after pitching: what can be written down, what is due, and what it has come to.</summary>
internal sealed class AfterDayPage(Shell shell, BrewDay day) : ListPage(shell)
{
    private sealed record Entry(string Label, string Value, Action<DateTimeOffset> Choose);

    private readonly Acts _acts = new(shell, day);

    public override KeyContext Context => KeyContext.List | KeyContext.AfterDay;

    protected override int Count => Entries().Length;

    private FermentState State => day.State.Ferment;

    /// <summary>Opens it for a batch on disk.</summary>
    public static void Enter(Shell shell, int batch)
    {
        if (shell.Day?.Number == batch)
            Enter(shell, shell.Day);
        else
            shell.Try(() => Enter(shell, BrewDay.GoOn(shell.Ports.Store, batch)));
    }

    protected override void Choose(int row, DateTimeOffset now) => Entries()[row].Choose(now);

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.Undo && day.State.UndoSeq is { } seq && FermentFold.Belongs(day.Events[seq]))
            Do(new RunCommand.Undo(), now);
        else if (command == Command.Undo)
            Shell.Say("Nothing written after the day is left to take back.", Tone.Warning);
        else
            base.Handle(command, stroke, now);
    }

    protected override Screen Compose(DateTimeOffset now)
    {
        Select(Selected);
        return new ListScreen(
            $"Batch {day.Number} after the day: {day.Plan.Recipe.Name}",
            Corners.Of(Shell, now),
            [new Column("write down", 0), new Column("", 24, Right: true)],
            [.. Entries().Select(e => new Row([e.Label, e.Value]))],
            Selected,
            [.. FermentWords.Lines(State, Shell.Notation).Skip(1)],
            KeyMap.Hints(Context, Shell.Notation));
    }

    private static void Enter(Shell shell, BrewDay? day)
    {
        if (day?.State.Ferment.PitchedMs is null && day?.State.Status != RunStatus.Complete)
            shell.Say("This batch has not been pitched.", Tone.Warning);
        else
            shell.Push(new AfterDayPage(shell, day));
    }

    private ImmutableArray<Entry> Entries() =>
    [
        new("Gravity", "", Reading(FermenterFigure.Gravity, "Gravity?", "1.012, 1.012@22 (sample at 22 °C), 6.5bx (refractometer)")),
        new("Temperature", "", Reading(FermenterFigure.Temperature, "Fermenter temperature?", ReadingWords.HowToType(ReadingKind.Temperature, false, Shell.Notation))),
        new("pH", "", Reading(FermenterFigure.Ph, "pH?", "4.35, sample at room temperature")),
        .. DueDates.Of(State).Where(d => d.Kind == DueKind.Addition).Select(Made),
        new("Another addition", "", _ => Typed("How much of what?", "80 g Cascade", (text, at) =>
            FermenterTyping.Addition(text, out var reason) is { } addition ? Do(new RunCommand.After.Add(addition), at) : reason)),
        new("Bottles", "", _ => new PackagingAsks(Shell, this, State, Do).Bottles()),
        new("Keg", "", _ => new PackagingAsks(Shell, this, State, Do).Keg()),
        new("Tasting", "", _ => Typed("How does it taste?", "4 clean, dry (1 to 5 first, if you rate it)", (text, at) =>
        {
            var (note, rating) = FermenterTyping.Tasting(text);
            return Do(new RunCommand.After.Taste(note, rating), at);
        })),
        .. DueDates.Of(State).Select(Dated),
        new("Date for another addition", "", _ => Typed("What is to be added?", "oak chips", (text, _) =>
        {
            if (text.Trim().Length == 0)
                return "Write what is to be added, or Esc.";
            AskDate(new DueItem(DueKind.Addition, text.Trim(), 0));
            return null;
        })),
    ];

    private Action<DateTimeOffset> Reading(FermenterFigure figure, string question, string example) => _ => Typed(question, example, (text, at) =>
        new FermenterTyping(Shell.Typed, State.OriginalSg).Read(figure, text, out var reason) is { } reading
            ? Do(new RunCommand.After.ReadFermenter(reading), at)
            : reason);

    private Entry Made(DueItem item)
    {
        var grams = State.Recipe?.Hops.FirstOrDefault(h => h.Name == item.Name && h.Use == Core.Recipes.HopUse.DryHop)?.MassG;
        return new(Names.Sentence(FermentWords.Due(item, State, Shell.Notation)), "done", at =>
            Do(new RunCommand.After.Add(new DatedAddition(item.Name, grams ?? 1, grams is null ? "lot" : "g")), at));
    }

    private Entry Dated(DueItem item) => new(
        $"Date: {FermentWords.Due(item, State, Shell.Notation)}", FermentWords.Day(item.DueMs, Shell.Notation), _ => AskDate(item));

    private void AskDate(DueItem item) => Typed($"When: {FermentWords.Due(item, State, Shell.Notation)}?", DateTyping.HowTo, (text, at) =>
        DateTyping.Read(text, at, Shell.Notation.Zone) is { } ms
            ? Do(new RunCommand.After.SetDate(item with { DueMs = ms }), at)
            : $"Write a date within a year such as {DateTyping.HowTo}.");

    private void Typed(string question, string example, Func<string, DateTimeOffset, string?> take) =>
        Ask(new EntryAsk(this, question, "", _ => Line.Of("such as " + example, Tone.Muted), take));

    /// <returns>Null: the question is answered; what became of it stands in the notice.</returns>
    private string? Do(RunCommand command, DateTimeOffset now) =>
        _acts.Do(command, now) is Decision.Refused refused ? DecisionWords.Refused(refused.Code, Shell.Notation) : null;
}
