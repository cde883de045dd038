using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>Which hose goes where before a step, and what the pump cannot bear.</summary>
public static class HoseWords
{
    public static IEnumerable<string> Of(PlanStep step, Plan plan)
    {
        if (step.Spec.Hoses is { IsEmpty: false } moves)
            yield return $"Valves shut; hoses {string.Join("; ", moves.Select(m => Move(m, plan)))}.";
        if (SuctionHeads.Cavitates(PlantSetting.Of(plan.Brewhouse, plan.Choices), step))
            yield return "The pump would cavitate: throttle it at its outlet, never at its inlet.";
    }

    /// <summary>"tun to wort pump to kettle": from an outlet, to an inlet; what stays is not said.</summary>
    private static string Move(HoseMove move, Plan plan) =>
        string.Join(" to ", new[] { Place(move.From, plan), Line(move, plan), Place(move.To, plan) }.OfType<string>());

    private static string Line(HoseMove move, Plan plan) => move.Line switch
    {
        "" => "hose",
        HoseMoves.Chiller => "chiller",
        _ => plan.Brewhouse.Pumps.Length > 1 ? $"{move.Line} pump" : "pump",
    };

    private static string? Place(string? vessel, Plan plan) =>
        vessel is null || plan.Brewhouse.Vessels.Any(v => v.Id == vessel) ? vessel : Names.Plainly(vessel);
}
