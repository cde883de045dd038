using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>The same day on so many circuits.</summary>
/// <param name="Plan">Null: it cannot be brewed on so few.</param>
public sealed record CircuitCost(int Circuits, Plan? Plan);

/// <summary>What fewer circuits cost, side by side.</summary>
public static class CircuitCosts
{
    public static ImmutableArray<CircuitCost> Of(Brewhouse house, Recipe recipe, DayChoices choices) =>
    [
        .. Enumerable.Range(1, house.Circuits.Length).Select(n => new CircuitCost(
            n, (Planner.Draw(house, recipe, choices with { Circuits = n }) as PlanResult.Drawn)?.Plan)),
    ];
}
