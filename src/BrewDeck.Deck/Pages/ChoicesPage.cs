using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>What is decided or measured for this one day; the plan is drawn anew with each change.</summary>
internal sealed class ChoicesPage : ListPage
{
    private readonly Brewhouse _brewhouse;
    private readonly Recipe _recipe;
    private readonly ImmutableArray<DayRow> _rows;
    private DayChoices _choices = new();
    private PlanResult? _drawn;

    public ChoicesPage(Shell shell, Brewhouse brewhouse, Recipe recipe)
        : base(shell)
    {
        (_brewhouse, _recipe) = (brewhouse, recipe);
        _rows =
        [
            .. DayRows.For(brewhouse, recipe, shell.Notation, shell.Typed, shell.Ports.Profiles),
            .. WaterRows.For(shell, recipe),
        ];
    }

    public override KeyContext Context => KeyContext.Choices;

    protected override int Count => _rows.Length;

    protected override void Choose(int row, DateTimeOffset now) => Change(row, "");

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.Change:
                Change(Selected, "");
                break;
            case Command.PickRow:
                Change(Selected, stroke.Character.ToString());
                break;
            case Command.GoOn:
                SeePlan();
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    protected override Screen Compose(DateTimeOffset now) => new ListScreen(
        Shell.Notation.Text($"{_recipe.Name} on {_brewhouse.Name}: the day"),
        Shell.Notation.Clock(now.ToUnixTimeMilliseconds()),
        [new Column(Shell.Notation.Text("choice"), 0), new Column(Shell.Notation.Text("today"), 24, Right: true)],
        [.. _rows.Select(r => new Row([r.Label, r.Show(_choices)]))],
        Selected,
        Preview(),
        KeyMap.Hints(Context, Shell.Notation));

    private void SeePlan() => Shell.Push(new PlanPage(Shell, _brewhouse, _recipe, _choices, Set));

    private void Change(int row, string typed)
    {
        switch (_rows[row])
        {
            case DayRow.GoOn when typed.Length == 0:
                SeePlan();
                break;
            case DayRow.Turns turns when typed.Length == 0:
                Set(turns.Next(_choices));
                break;
            case DayRow.Typed line:
                Ask(new EntryAsk(this, line.Label + "?", typed, _ => Line.Of(line.Hint, Tone.Muted), (text, at) => Take(line, text, at)));
                break;
        }
    }

    private string? Take(DayRow.Typed line, string text, DateTimeOffset now)
    {
        if (line.Read(_choices, text, now, out var reason) is not { } changed)
            return reason;
        Set(changed);
        return null;
    }

    private void Set(DayChoices choices) => (_choices, _drawn) = (choices, null);

    private PlanResult Drawn() => _drawn ??= Planner.Draw(_brewhouse, _recipe, _choices);

    private ImmutableArray<Line> Preview() => Drawn() switch
    {
        PlanResult.Drawn drawn =>
        [
            Line.Of(Shell.Notation.Text("This gives"), Tone.Strong),
            .. PlanLines.Brief(drawn.Plan, Shell.Notation),
        ],
        PlanResult.Refused refused => [Line.Of(Shell.Notation.Text("This cannot be brewed"), Tone.Warning), .. RefusalWords.Lines(refused.Refusals, Shell.Notation)],
        _ => [],
    };
}
