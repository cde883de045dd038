using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>Draws a day: recipe, brewhouse and the day's choices become a run sheet, or refusals.</summary>
public static class Planner
{
    public static PlanResult Draw(Brewhouse brewhouse, Recipe recipe, DayChoices choices) =>
        throw new NotImplementedException();
}
