using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;

namespace BrewDeck.Core.Learning;

/// <summary>What another number in the profile would change in the next plan.</summary>
public static class PlanEffect
{
    /// <summary>Figures of the plan before and after; empty where either cannot be drawn.</summary>
    public static ImmutableArray<Shift> Of(Brewhouse now, Brewhouse then, Recipe recipe, DayChoices choices) =>
        Planner.Draw(now, recipe, choices) is PlanResult.Drawn { Plan: var before } && Planner.Draw(then, recipe, choices) is PlanResult.Drawn { Plan: var after }
            ? Between(before, after)
            : [];

    private static ImmutableArray<Shift> Between(Plan a, Plan b) =>
    [
        new("grist_kg", a.Recipe.MashKg, b.Recipe.MashKg),
        new("strike_water_l", a.Totals.StrikeWaterL, b.Totals.StrikeWaterL),
        new("sparge_water_l", a.Totals.SpargeWaterL, b.Totals.SpargeWaterL),
        new("pre_boil_l", a.Totals.PreBoilL, b.Totals.PreBoilL),
        new("pre_boil_gravity_sg", a.Totals.PreBoilGravitySg, b.Totals.PreBoilGravitySg),
        new("post_boil_l", a.Totals.PostBoilL, b.Totals.PostBoilL),
        new("original_gravity_sg", a.Totals.OriginalGravitySg, b.Totals.OriginalGravitySg),
        new("day_s", a.Totals.DayS, b.Totals.DayS),
    ];
}
