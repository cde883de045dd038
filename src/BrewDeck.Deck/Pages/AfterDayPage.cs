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
            Shell.Say(Shell.Notation.Text("Nothing written after the day is left to take back."), Tone.Warning);
        else
            base.Handle(command, stroke, now);
    }

    protected override Screen Compose(DateTimeOffset now)
    {
        Select(Selected);
        return new ListScreen(
            Shell.Notation.Text($"Batch {day.Number} after the day: {day.Plan.Recipe.Name}"),
            Corners.Of(Shell, now),
            [new Column(Shell.Notation.Text("write down"), 0), new Column("", 24, Right: true)],
            [.. Entries().Select(e => new Row([e.Label, e.Value]))],
            Selected,
            [.. FermentWords.Brief(State, Shell.Notation)],
            KeyMap.Hints(Context, Shell.Notation));
    }

    private static void Enter(Shell shell, BrewDay? day)
    {
        if (day?.State.Ferment.PitchedMs is null && day?.State.Status != RunStatus.Complete)
            shell.Say(shell.Notation.Text("This batch has not been pitched."), Tone.Warning);
        else
            shell.Push(new AfterDayPage(shell, day));
    }

    private ImmutableArray<Entry> Entries() =>
    [
        new(Shell.Notation.Text("Gravity"), "", Reading(FermenterFigure.Gravity, Shell.Notation.Text("Gravity?"), Shell.Notation.Text("1.012, 1.012@22 (sample at 22 °C), 6.5bx; of another day: 1.012 2026-12-07"))),
        new(Shell.Notation.Text("Temperature"), "", Reading(FermenterFigure.Temperature, Shell.Notation.Text("Fermenter temperature?"), Shell.Notation.Units == UnitSystem.Us ? Shell.Notation.Text("65 or 18.5c; of another day: 65 2026-12-07") : Shell.Notation.Text("18.5 or 65f; of another day: 18.5 2026-12-07"))),
        new("pH", "", Reading(FermenterFigure.Ph, "pH?", Shell.Notation.Text("4.35, sample at room temperature"))),
        .. DueDates.Of(State).Where(d => d.Kind == DueKind.Addition).Select(Made),
        new(Shell.Notation.Text("Another addition"), "", _ => Typed(Shell.Notation.Text("How much of what?"), Shell.Notation.Text("80 g Cascade"), (text, at) =>
            FermenterTyping.Addition(text, Shell.Notation, out var reason) is { } addition ? Do(new RunCommand.After.Add(addition), at) : reason)),
        new(Shell.Notation.Text("Bottles"), "", _ => new PackagingAsks(Shell, this, State, PackageKind.Bottles, Do).Begin()),
        new(Shell.Notation.Text("Keg"), "", _ => new PackagingAsks(Shell, this, State, PackageKind.Keg, Do).Begin()),
        .. State is { Lots.IsEmpty: false, IsPackaged: false }
            ? [new(Shell.Notation.Text("Packaging is done: the rest is lees"), Shell.Notation.Volume(State.LeftL), at => Do(new RunCommand.After.EndPackaging(), at))]
            : ImmutableArray<Entry>.Empty,
        new(Shell.Notation.Text("Tasting"), "", _ => Typed(Shell.Notation.Text("How does it taste?"), Shell.Notation.Text("4 clean, dry (1 to 5 first, if you rate it)"), (text, at) =>
            FermenterTyping.Tasting(text) is var (note, rating)
                ? Do(new RunCommand.After.Taste(note, rating), at)
                : Shell.Notation.Text("Rate from 1 to 5, or write in words how it tastes."))),
        .. DueDates.Of(State).Select(Dated),
        new(Shell.Notation.Text("Date for another addition"), "", _ => Typed(Shell.Notation.Text("What is to be added?"), Shell.Notation.Text("oak chips"), (text, _) =>
        {
            if (text.Trim().Length == 0)
                return Shell.Notation.Text("Write what is to be added, or Esc.");
            AskDate(new DueItem(DueKind.Addition, text.Trim(), 0));
            return null;
        })),
        new(Shell.Notation.Text("All that is written down"), "", _ => Shell.Push(new AfterDayRecordPage(Shell, day))),
    ];

    private Action<DateTimeOffset> Reading(FermenterFigure figure, string question, string example) => _ => Typed(question, example, (text, at) =>
        new FermenterTyping(Shell.Typed, State, Shell.Notation).Read(figure, text, at, out var reason) is { } reading
            ? TakeIt(new RunCommand.After.ReadFermenter(reading), question, example, at)
            : reason);

    private string? TakeIt(RunCommand.After.ReadFermenter read, string question, string example, DateTimeOffset now)
    {
        var decision = _acts.Do(read, now);
        var gravity = Shell.Notation.Gravity(read.Reading.Value);
        switch (decision)
        {
            case Decision.Rises rises:
                AskAgain(
                    Shell.Notation.Text($"{gravity} is higher than the last reading, {Shell.Notation.Gravity(rises.LastSg)}. Take it?"),
                    Shell.Notation.Text("Beer gains no gravity by itself: was it another instrument, or another batch?"),
                    LastIsGravity);
                return null;
            case Decision.TooSoon soon:
                AskAgain(
                    Shell.Notation.Text($"{gravity} is {Shell.Notation.Number(100 * soon.Attenuation, "0")} % fermented, {Durations.Words(3600 * soon.Hours, Shell.Notation)} after pitching. Take it?"),
                    Shell.Notation.Text("No yeast is so fast: was it another batch, or another day? Then write the day after the gravity."),
                    false);
                return null;
            default:
                return Refusal(decision);
        }

        void AskAgain(string doubt, string why, bool lastMayBeWrong) => Ask(new ChoiceAsk(
            this,
            doubt,
            [Line.Of(why)],
            [
                new Row([Shell.Notation.Text("Type it again")]), new Row([Shell.Notation.Text("Take it all the same")]),
                .. lastMayBeWrong ? [new Row([Shell.Notation.Text("The last one was misread: take it back, and keep this one")])] : ImmutableArray<Row>.Empty,
            ],
            (row, at) =>
            {
                if (row == 2)
                    Do(new RunCommand.Undo(), at);
                if (row == 0)
                    Reading(read.Reading.Figure, question, example)(at);
                else
                    Do(read with { Confirmed = true }, at);
            },
            byArrows: true));
    }

    /// <summary>Only what was written down last can be taken back.</summary>
    private bool LastIsGravity => day.State.UndoSeq is { } seq && day.Events[seq] is FermenterRead { Reading.Figure: FermenterFigure.Gravity };

    private Entry Made(DueItem item)
    {
        var grams = State.Recipe?.Hops.FirstOrDefault(h => h.Name == item.Name && h.Use == Core.Recipes.HopUse.DryHop)?.MassG;
        return new(Names.Sentence(FermentWords.Due(item, State, Shell.Notation)), Shell.Notation.Text("write it down as in"), at =>
            Do(new RunCommand.After.Add(new DatedAddition(item.Name, grams ?? 1, grams is null ? "lot" : "g")), at));
    }

    private Entry Dated(DueItem item) => new(
        Shell.Notation.Text($"Date: {FermentWords.Due(item, State, Shell.Notation)}"), FermentWords.Day(item.DueMs, Shell.Notation), _ => AskDate(item));

    private void AskDate(DueItem item) => Typed(Shell.Notation.Text($"When: {FermentWords.Due(item, State, Shell.Notation)}?"), Shell.Notation.Text(DateTyping.HowTo), (text, at) =>
        DateTyping.Read(text, at, Shell.Notation) is { } ms
            ? Do(new RunCommand.After.SetDate(item with { DueMs = ms }), at)
            : Shell.Notation.Text($"Write a date within a year such as {Shell.Notation.Text(DateTyping.HowTo)}."));

    private void Typed(string question, string example, Func<string, DateTimeOffset, string?> take) =>
        Ask(new EntryAsk(this, question, "", _ => Line.Of(Shell.Notation.Text($"such as {example}"), Tone.Muted), take));

    /// <returns>Null: the question is answered; what became of it stands in the notice.</returns>
    private string? Do(RunCommand command, DateTimeOffset now) => Refusal(_acts.Do(command, now));

    private string? Refusal(Decision decision) =>
        decision is Decision.Refused refused ? DecisionWords.Refused(refused.Code, Shell.Notation) : null;
}
