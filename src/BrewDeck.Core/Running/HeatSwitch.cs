using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>A moment in a run-off at which the hands switch a vessel's heat: the kettle's on once it is covered, the tank's off before it shows.</summary>
/// <param name="AtS">Seconds since the start of the day.</param>
public sealed record HeatSwitch(string Vessel, bool On, double AtS)
{
    /// <summary>Those that are still to come of the run-off that runs; a level that is there already asks for none.</summary>
    /// <param name="rest">Running steps cut at now, each with its end.</param>
    internal static ImmutableArray<HeatSwitch> Ahead(RunState state, PlantSetting setting, PlantState plant, ImmutableArray<PlanStep> rest, double now) =>
        rest.FirstOrDefault(s => s.Spec.Kind.RunsOff() && state.Step(s.Spec.Id)?.Status == RunStatus.Running) is { DurationS: > 0 } step
            ? [.. Of(setting, plant, step, now).OrderBy(s => s.AtS)]
            : [];

    private static IEnumerable<HeatSwitch> Of(PlantSetting setting, PlantState plant, PlanStep step, double now)
    {
        var house = setting.Brewhouse;
        double Level(PlantState at, Vessel vessel) => Contents.LiquidL(at.Vessels[setting.IndexOf(vessel.Id)]);
        // one flow fills the kettle and empties the tank, litre for litre
        var perS = (Level(step.After, house.Kettle) - Level(plant, house.Kettle)) / step.DurationS;
        if (perS <= 0)
            yield break;
        var missing = house.Kettle.CoverL - Level(plant, house.Kettle);
        if (house.Kettle.IsHeated && missing > 0 && missing < perS * step.DurationS)
            yield return new(house.Kettle.Id, true, now + missing / perS);
        var tank = house.HotLiquorTank;
        var spare = Level(plant, tank) - tank.CoverL;
        // a tank whose plug is in the kettle by now has no heat to switch
        var fed = setting.NetHeatW(setting.IndexOf(tank.Id), tank.CapacityL, plant.PlugAt) > 0;
        if (fed && step.Spec.SpargeL is > 0 && spare > 0 && Level(step.After, tank) < tank.CoverL)
            yield return new(tank.Id, false, now + spare / perS);
    }
}
