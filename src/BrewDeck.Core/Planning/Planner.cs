using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;

namespace BrewDeck.Core.Planning;

/// <summary>Draws a day: recipe, brewhouse and the day's choices become a run sheet, or refusals.</summary>
public static class Planner
{
    private const int FinishingRounds = 4;

    public static PlanResult Draw(Brewhouse brewhouse, Recipe recipe, DayChoices choices)
    {
        var fitting = brewhouse.CanSparge ? choices : choices with { Sparge = SpargeMethod.None };
        return KettleRings.Fewest(brewhouse, house => DrawOn(house, recipe, fitting));
    }

    private static PlanResult DrawOn(Brewhouse brewhouse, Recipe recipe, DayChoices choices)
    {
        var early = Refusals.Beforehand(brewhouse, recipe, choices);
        if (!early.IsEmpty)
            return new PlanResult.Refused(early);
        var (setting, batch, steps, water) = Solved(brewhouse, recipe, choices);
        var limits = LimitChecks.Of(setting, batch, steps);
        if (water is not null)
            limits = limits.AddRange(WaterLimits.Of(water, batch.Recipe.BatchL));
        // A stuck bed is a danger to watch for, not a reason to send the brewer home: it stays in the plan as a failed limit.
        ImmutableArray<Limit> failed = [.. limits.Where(l => !l.Ok && !l.Warns && !WaterLimits.Has(l))];
        if (!failed.IsEmpty)
            return new PlanResult.Refused(Refusals.Of(setting, batch, failed, new MendSearch(brewhouse, recipe, choices)));
        return new PlanResult.Drawn(new Plan
        {
            Brewhouse = brewhouse,
            Recipe = batch.Recipe,
            Written = recipe,
            Choices = choices,
            Start = PlantModel.Empty(setting),
            Steps = steps,
            Totals = DayTotals.Of(setting, batch.StrikeL, batch.SpargeL, steps),
            Limits = limits,
            Water = water,
        });
    }

    /// <summary>
    /// What a day would give, and every number held against its limit, also where it cannot be brewed: for looking ahead while
    /// something is made. The water is not treated.
    /// </summary>
    /// <returns>Null when there is nothing to reckon with: no mash, or circuits that carry nothing.</returns>
    /// <param name="hopsAlike">Of a recipe whose hops keep their proportion where the bitterness is fitted.</param>
    public static DayFigures? Figures(Brewhouse brewhouse, Recipe recipe, DayChoices choices, bool hopsAlike = false)
    {
        var fitting = choices with { Water = null, Sparge = brewhouse.CanSparge ? choices.Sparge : SpargeMethod.None };
        return KettleRings.Fewest(brewhouse, house => FiguresOn(house, recipe, fitting, hopsAlike), f => f?.Limits.Any(l => !l.Ok && l.Name == LimitName.WortInKettle) == true);
    }

    private static DayFigures? FiguresOn(Brewhouse brewhouse, Recipe recipe, DayChoices choices, bool hopsAlike)
    {
        if (!Refusals.Beforehand(brewhouse, recipe, choices).IsEmpty)
            return null;
        var (setting, batch, steps, _) = Solved(brewhouse, recipe, choices, hopsAlike);
        return new(batch.Recipe, DayTotals.Of(setting, batch.StrikeL, batch.SpargeL, steps), LimitChecks.Of(setting, batch, steps));
    }

    /// <summary>Every number that the plant of a day would have, whether it can be brewed or not.</summary>
    internal static ImmutableArray<Limit> LimitsOf(Brewhouse brewhouse, Recipe recipe, DayChoices choices)
    {
        var (setting, batch, steps, _) = Solved(brewhouse, recipe, choices with { Water = null });
        return LimitChecks.Of(setting, batch, steps);
    }

    private static (PlantSetting Setting, Batch Batch, ImmutableArray<PlanStep> Steps, WaterTreatment? Water) Solved(
        Brewhouse brewhouse, Recipe recipe, DayChoices choices, bool hopsAlike = false)
    {
        var setting = PlantSetting.Of(brewhouse, choices);
        var fitted = RecipeFit.WithChoices(brewhouse, recipe, choices);
        var (batch, (steps, water)) = Finished(setting, fitted, Shortest(setting, fitted, recipe, choices, hopsAlike), choices);
        return (setting, batch, steps, water);
    }

    /// <summary>The solver does not see the moves of hoses and plugs, which shift the day by seconds: this brings the batch back to what is asked for.</summary>
    private static (Batch Batch, (ImmutableArray<PlanStep> Steps, WaterTreatment? Water) Day) Finished(
        PlantSetting setting, Recipe fitted, (Batch Batch, (ImmutableArray<PlanStep> Steps, WaterTreatment? Water) Day) drawn, DayChoices choices)
    {
        var (batch, day) = drawn;
        for (var round = 0; round < FinishingRounds && PlanSolver.Finer(setting, fitted, batch, day.Steps[^1].After, choices) is { } finer; round++)
            (batch, day) = (finer, Fold(setting, finer, choices));
        return (batch, day);
    }

    private static (Batch Batch, (ImmutableArray<PlanStep> Steps, WaterTreatment? Water) Day) Shortest(
        PlantSetting setting, Recipe fitted, Recipe written, DayChoices choices, bool hopsAlike)
    {
        var usual = PlanSolver.Solve(setting, fitted, written, choices, LiquorOrder.WhileMashing, hopsAlike);
        var day = Fold(setting, usual, choices);
        var orders = LiquorOrders.WorthTrying(setting, usual, day.Steps).ToArray();
        if (orders.Length == 0)
            return (usual, day);
        // the waters hardly depend on the order: only the best one is worked out again
        var (cost, best) = orders.Select(o => (Cost(setting, Fold(setting, usual with { Liquor = o }, choices).Steps), o)).MinBy(x => x.Item1);
        if (cost >= Cost(setting, day.Steps))
            return (usual, day);
        var batch = PlanSolver.Solve(setting, fitted, written, choices, best, hopsAlike);
        return (batch, Fold(setting, batch, choices));
    }

    /// <summary>Length of the day, and every minute that a rest waits for heat beyond its time once more: it is not what the recipe asks for.</summary>
    internal static double Cost(PlantSetting setting, ImmutableArray<PlanStep> steps)
    {
        var tun = setting.Brewhouse.MashTun.Id;
        var mash = steps.Where(s => (s.Spec.Vessel == tun || s.Spec.To == tun) && s.Spec.Unit is UnitProcedure.Mash or UnitProcedure.Lauter).ToArray();
        return steps.Max(s => s.EndS) + mash.Zip(mash.Skip(1), (a, b) => Math.Max(0, b.StartS - a.EndS)).Sum();
    }

    /// <summary>The lauter ends at the pre-boil volume that the fold gives: from then on it is a target, whatever the day brings.</summary>
    private static (ImmutableArray<PlanStep> Steps, WaterTreatment? Water) Fold(PlantSetting setting, Batch batch, DayChoices choices)
    {
        var steps = DayFold.Over(setting, RunSheet.Write(setting, batch, choices), PlantModel.Empty(setting));
        var preBoil = steps.Last(s => s.Spec.Unit == UnitProcedure.Lauter && s.Spec.Kind.FillsKettle()).VolumeL ?? 0;
        var sheet = RunSheet.Write(setting, batch with { PreBoilL = preBoil }, choices);
        sheet = HoseMoves.OnSheet(setting, sheet);
        var water = WaterDay.Of(batch, sheet, choices);
        sheet = [.. WaterDay.OnSheet(sheet, water)];
        var first = DayFold.Over(setting, sheet, PlantModel.Empty(setting));
        var shortest = PlugMoves.Later(sheet)
            .Select(s => DayFold.Over(setting, s, PlantModel.Empty(setting)))
            .Append(first)
            .MinBy(s => s.Max(x => x.EndS))!;
        return (shortest, water);
    }
}
