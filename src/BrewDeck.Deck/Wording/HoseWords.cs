using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>Which hose goes where before a step, and what the pump cannot bear.</summary>
public static class HoseWords
{
    public static IEnumerable<string> Of(PlanStep step, Plan plan, Notation notation)
    {
        if (step.Spec.Hoses is { IsEmpty: false } moves)
            yield return notation.Text($"Valves shut; hoses {string.Join("; ", moves.Select(m => Move(m, plan, notation)))}.");
        if (SuctionHeads.Cavitates(PlantSetting.Of(plan.Brewhouse, plan.Choices), step))
            yield return notation.Text("The pump would cavitate: throttle it at its outlet, never at its inlet.");
    }

    /// <summary>"tun to wort pump to kettle": from an outlet, to an inlet; what stays is not said.</summary>
    private static string Move(HoseMove move, Plan plan, Notation notation) =>
        new[] { Place(move.From, plan, notation), Line(move, plan, notation), Place(move.To, plan, notation) }.OfType<string>().Aggregate((from, to) => notation.Text($"{from} to {to}"));

    private static string Line(HoseMove move, Plan plan, Notation notation) => move.Line switch
    {
        "" => notation.Text("hose"),
        HoseMoves.Chiller => notation.Text("chiller"),
        _ => plan.Brewhouse.Pumps.Length > 1 ? notation.Name($"{move.Line} pump", notation.Text($"{move.Line} pump")) : notation.Text("pump"),
    };

    private static string? Place(string? vessel, Plan plan, Notation notation) =>
        vessel is null ? null : plan.Brewhouse.Vessels.Any(v => v.Id == vessel) ? notation.Name(vessel) : notation.Name(Names.Plainly(vessel));
}
