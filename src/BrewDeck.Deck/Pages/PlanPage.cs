using BrewDeck.Core.Planning;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Pages;

/// <summary>The plan as drawn: totals, run sheet, limits; or why there is none.</summary>
internal sealed class PlanPage(Shell shell, PlanResult result) : TextPage(shell)
{
    public override KeyContext Context => result is PlanResult.Drawn ? KeyContext.Plan : KeyContext.Text;

    protected override string Title => result is PlanResult.Drawn ? "The plan" : "This cannot be brewed";

    protected override IEnumerable<Line> Lines(DateTimeOffset now) => result switch
    {
        PlanResult.Drawn drawn => PlanLines.Of(drawn.Plan, Shell.Notation),
        PlanResult.Refused refused => RefusalWords.Lines(refused.Refusals, Shell.Notation),
        _ => [],
    };

    protected override void Handle(Command command, KeyStroke stroke, DateTimeOffset now)
    {
        if (command == Command.GoOn && result is PlanResult.Drawn drawn)
            Shell.Begin(drawn.Plan, now);
        else
            base.Handle(command, stroke, now);
    }
}
