using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Asks;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The plan as drawn: totals, run sheet, limits; or why there is none. One key asks for another number of circuits.</summary>
internal sealed class PlanPage : TextPage
{
    private readonly ImmutableArray<CircuitCost> _costs;
    private readonly Func<DayChoices, PlanResult> _draw;
    private readonly Action<DayChoices> _chosen;
    private readonly Stack<DayChoices> _before = new();
    private DayChoices _choices;
    private PlanResult _result;

    /// <param name="chosen">Told when the choices change here.</param>
    public PlanPage(Shell shell, Brewhouse house, Recipe recipe, DayChoices choices, Action<DayChoices> chosen)
        : base(shell)
    {
        _costs = CircuitCosts.Of(house, recipe, choices);
        _draw = c => Planner.Draw(house, recipe, c);
        (_choices, _chosen) = (choices, chosen);
        _result = _draw(choices);
    }

    public override KeyContext Context => _result is PlanResult.Drawn ? KeyContext.Plan : KeyContext.Refused;

    protected override string Title => _result is PlanResult.Drawn ? Shell.Notation.Text("The plan") : Shell.Notation.Text("This cannot be brewed");

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => _result switch
    {
        PlanResult.Drawn drawn => [.. PlanLines.Of(drawn.Plan, Shell.Notation), .. CircuitWords.Lines(_costs, InUse, Shell.Notation)],
        PlanResult.Refused refused => [.. RefusalWords.Lines(refused.Refusals, Shell.Notation), .. CircuitWords.Lines(_costs, InUse, Shell.Notation)],
        _ => [],
    };

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        switch (command)
        {
            case Command.GoOn when _result is PlanResult.Drawn drawn:
                Shell.Begin(drawn.Plan, now);
                break;
            case Command.Choose when _result is PlanResult.Drawn drawn:
                AskToOpen(drawn.Plan);
                break;
            case Command.Circuits when _costs.Length < 2:
                Shell.Say(Shell.Notation.Text("This brewhouse has one circuit only."));
                break;
            case Command.Circuits:
                AskCircuits();
                break;
            case Command.Undo when _before.TryPop(out var before):
                Change(before);
                break;
            case Command.Undo:
                Shell.Say(Shell.Notation.Text("Nothing to take back."));
                break;
            default:
                base.Handle(command, stroke, now);
                break;
        }
    }

    // a batch that is opened stays in the logbook: Enter alone, struck to go on from something else, opens none
    private void AskToOpen(Plan plan) => Ask(new ChoiceAsk(
        this,
        Shell.Notation.Text("Open the batch and begin the brew day?"),
        [Line.Of(Shell.Notation.Text("It stays in the logbook from then on. Space opens it without this question."), Tone.Muted)],
        [new Row([Shell.Notation.Text("Not yet")]), new Row([Shell.Notation.Text("Open it")])],
        (row, at) =>
        {
            if (row == 1)
                Shell.Begin(plan, at);
        }));

    private void AskCircuits() => Ask(new ChoiceAsk(
        this,
        Shell.Notation.Text("How many circuits today?"),
        [],
        [.. _costs.Select(c => new Row([CircuitWords.Says(c, _costs, Shell.Notation)]))],
        (row, _) =>
        {
            if (_costs[row].Circuits == InUse)
                return;
            _before.Push(_choices);
            Change(_choices with { Circuits = _costs[row].Circuits });
        }));

    private int InUse => _choices.Circuits ?? _costs.Length;

    private void Change(DayChoices choices)
    {
        _choices = choices;
        _result = _draw(_choices);
        _chosen(_choices);
        Shell.Say(Shell.Notation.Text($"The plan is changed. {CircuitWords.Sentence(_costs, InUse, Shell.Notation)}"));
    }
}
