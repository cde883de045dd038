using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;

namespace BrewDeck.Core.Planning;

/// <summary>Draws a day: recipe, brewhouse and the day's choices become a run sheet, or refusals.</summary>
public static class Planner
{
    public static PlanResult Draw(Brewhouse brewhouse, Recipe recipe, DayChoices choices)
    {
        var early = Refusals.Beforehand(brewhouse, recipe, choices);
        if (!early.IsEmpty)
            return new PlanResult.Refused(early);
        var setting = PlantSetting.Of(brewhouse, choices);
        var fitted = RecipeFit.WithChoices(recipe, choices);
        var batch = PlanSolver.Solve(setting, fitted, recipe, choices);
        var water = WaterDay.Of(batch, RunSheet.Write(setting, batch, choices), choices);
        var steps = Fold(setting, batch, choices, water);
        var limits = LimitChecks.Of(setting, batch, steps);
        if (water is not null)
            limits = limits.AddRange(WaterLimits.Of(water, batch.Recipe.BatchL));
        // A stuck bed is a danger to watch for, not a reason to send the brewer home: it stays in the plan as a failed limit.
        var refusals = Refusals.Of(setting, batch, [.. limits.Where(l => l.Name != "false_bottom_load" && !WaterLimits.Has(l))]);
        return refusals.IsEmpty
            ? new PlanResult.Drawn(new Plan
            {
                Brewhouse = brewhouse,
                Recipe = batch.Recipe,
                Choices = choices,
                Start = PlantModel.Empty(setting),
                Steps = steps,
                Totals = DayTotals.Of(setting, batch.StrikeL, batch.SpargeL, steps),
                Limits = limits,
                Water = water,
            })
            : new PlanResult.Refused(refusals);
    }

    /// <summary>The lauter ends at the pre-boil volume that the fold gives: from then on it is a target, whatever the day brings.</summary>
    private static ImmutableArray<PlanStep> Fold(PlantSetting setting, Batch batch, DayChoices choices, WaterTreatment? water)
    {
        var steps = DayFold.Over(setting, RunSheet.Write(setting, batch, choices), PlantModel.Empty(setting));
        var preBoil = steps.Last(s => s.Spec.Unit == UnitProcedure.Lauter).VolumeL ?? 0;
        var sheet = RunSheet.Write(setting, batch with { PreBoilL = preBoil }, choices);
        return DayFold.Over(setting, WaterDay.OnSheet(sheet, water), PlantModel.Empty(setting));
    }
}
