using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The plan as drawn: totals, run sheet, limits; or why there is none. One key turns to another number of circuits.</summary>
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
            case Command.Circuits:
                _before.Push(_choices);
                Change(_choices with { Circuits = InUse % _costs.Length + 1 });
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

    private int InUse => _choices.Circuits ?? _costs.Length;

    private void Change(DayChoices choices)
    {
        _choices = choices;
        _result = _draw(_choices);
        _chosen(_choices);
        Shell.Say(Shell.Notation.Text($"The plan is changed. {CircuitWords.Sentence(_costs, InUse, Shell.Notation)}"));
    }
}
