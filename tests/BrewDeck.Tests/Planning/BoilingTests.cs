using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;
using static BrewDeck.Tests.Planning.OneOperation;

namespace BrewDeck.Tests.Planning;

/// <summary>What a boil gives off, keeps hot and gives to its hops.</summary>
public class BoilingTests
{
    [Fact]
    public void A_boil_gives_off_what_the_kettle_does_in_an_hour_or_what_its_heat_can()
    {
        var setting = Setting;
        var wort = new VesselState(0, 40, 5, 101);
        double GoneKg(PlantSetting with, double minutes) => 40 - Boil(with, wort, minutes).Vessels[Kettle].WaterKg;
        Assert.Equal(setting.Habits.EvaporationKgPerH / 2, GoneKg(setting, 30), 1e-9);
        Assert.Equal(setting.Habits.EvaporationKgPerH, GoneKg(setting, 60), 1e-9);

        // no thermometer of a brewhouse tells wort that is a third of a kelvin short of it from wort that boils
        var near = wort with { TempC = Boiling.BoilingC(setting, wort) - 0.3 };
        Assert.Equal(setting.Habits.EvaporationKgPerH, 40 - Boil(setting, near, 60).Vessels[Kettle].WaterKg, 1e-9);

        // a kettle with less heat than that: latent heat and the loss of its wall are all that it has
        var weak = setting with { HeatFactor = setting.HeatFactor.SetItem(Kettle, 0.5) };
        var boiling = Boiling.BoilingC(weak, wort);
        var net = 0.5 * 5500 * 0.95 - weak.LossWPerK(Kettle) * (boiling - weak.AmbientC);
        Assert.Equal(HourS * net / Water.LatentHeatJPerKg(boiling), GoneKg(weak, 60), 1e-6);
    }

    [Fact]
    public void Wort_boils_hotter_than_water_by_its_sugar()
    {
        var wort = new VesselState(0, 40, 5, 90);
        Assert.Equal(Setting.BoilingC + SugarSolution.BoilingPointRiseK(wort.Plato), Boiling.BoilingC(Setting, wort), 1e-12);
        Assert.Equal(Boiling.BoilingC(Setting, wort), Boil(Setting, wort with { TempC = 101 }, 5).Vessels[Kettle].TempC, 0.01);
        Assert.Equal(Setting.BoilingC, Boiling.BoilingC(Setting, new VesselState(0, 40, 0, 90)));
    }

    [Fact]
    public void Wort_that_has_cooled_comes_back_to_the_boil_within_its_minutes_and_a_kettle_without_heat_never_does()
    {
        var cool = new VesselState(0, 40, 5, 90);
        var (hot, back) = (Boil(Setting, cool with { TempC = 101 }, 30), Boil(Setting, cool, 30));
        Assert.True(back.Vessels[Kettle].WaterKg > hot.Vessels[Kettle].WaterKg + 0.1);
        Assert.InRange(back.Vessels[Kettle].WaterKg, 36, 39.9);
        Assert.Equal(30 * 60, back.Vessels[Kettle].AtS, 1e-6);

        var dead = Boil(Setting with { HeatFactor = Setting.HeatFactor.SetItem(Kettle, 0) }, cool, 30).Vessels[Kettle];
        Assert.Equal(40, dead.WaterKg, 1e-9);
        Assert.True(dead.TempC < 90);
        var died = Boil(Setting with { HeatFactor = Setting.HeatFactor.SetItem(Kettle, 0) }, cool with { TempC = 101 }, 30).Vessels[Kettle];
        Assert.Equal((40.0, 0.0), (died.WaterKg, Math.Floor(died.TempC / 100)));
    }

    [Fact]
    public void Wort_that_is_brought_to_the_boil_is_kept_there()
    {
        var boiled = Run(Setting, Step(StepKind.HeatToBoil, Kettle), Plugged(Setting, new VesselState(0, 40, 5, 70)));
        Assert.Equal(Boiling.BoilingC(Setting, boiled.State.Vessels[Kettle]), boiled.State.Vessels[Kettle].TempC, 1e-6);
        Assert.True(Boiling.IsKeptAtTheBoil(Setting, boiled.State.Vessels[Kettle]));
    }

    [Fact]
    public void Hops_in_a_boil_have_its_minutes_at_its_temperature_in_the_wort_that_it_is_meanwhile()
    {
        var wort = new VesselState(0, 40, 5, 101);
        var after = Run(Setting, Step(StepKind.Boil, Kettle) with { Minutes = 60 }, Plugged(Setting, wort) with { Hops = [new HopDose("bittering", 3, 0.05)] }).State;
        var hop = after.Hops.Single();
        Assert.Equal(60 * Isomerisation.RelativeRate(Boiling.BoilingC(Setting, wort)), hop.BoilMinutes, 1e-9);
        double Sg(VesselState v) => SugarSolution.SgFromPlato(v.Plato);
        Assert.Equal(0.5 * (Sg(wort) + Sg(after.Vessels[Kettle])), hop.GravitySg, 2e-4);
    }

    [Fact]
    public void First_wort_hops_get_the_same_from_a_heat_up_and_from_its_pieces()
    {
        var heat = Step(StepKind.HeatToBoil, Kettle);
        var start = Plugged(Setting, new VesselState(0, 40, 5, 75)) with { Hops = [new HopDose("first wort", 3, 0.05)] };
        var whole = Run(Setting, heat, start);
        var (at, pieces) = (start, 0);
        for (StepSpec? left = heat; left is not null && pieces < 100; pieces++)
        {
            var outcome = PlantModel.Run(Setting, left, at, pieces * 60.0, 60);
            (at, left) = (outcome.State, outcome.Left);
        }
        Assert.InRange(pieces, 10, 60);
        Assert.Equal(at.Hops[0].BoilMinutes, whole.State.Hops[0].BoilMinutes, 0.02 * at.Hops[0].BoilMinutes);
        // no longer than it took, and none of it hotter than the boil
        Assert.InRange(whole.State.Hops[0].BoilMinutes, 0.1 * whole.DurationS / 60, whole.DurationS / 60);
    }

    [Fact]
    public void Foam_that_was_watched_boils_on_until_the_next_step_and_cast_wort_does_not()
    {
        var setting = Setting;
        var seen = Run(setting, Step(StepKind.HotBreak, Kettle) with { Minutes = 1 }, Plugged(setting, new VesselState(0, 40, 5, 101))).State;
        Assert.True(Boiling.IsKeptAtTheBoil(setting, seen.Vessels[Kettle]));
        var later = PlantModel.WaitUntil(setting, seen, 60 + HourS / 2).Vessels[Kettle];
        Assert.Equal(setting.Habits.EvaporationKgPerH / 2, seen.Vessels[Kettle].WaterKg - later.WaterKg, 1e-6);
        Assert.True(Boiling.IsKeptAtTheBoil(setting, later));
        Assert.Equal(60 + HourS / 2, later.AtS, 1e-9);

        var cast = PlantModel.WaitUntil(setting, seen with { KnockedOutL = 40 }, 60 + HourS / 2).Vessels[Kettle];
        Assert.Equal(seen.Vessels[Kettle].WaterKg, cast.WaterKg, 1e-9);
    }

    [Fact]
    public void Each_charge_brings_into_the_kettle_what_it_is()
    {
        var setting = Setting;
        Charge hop = new(ChargeKind.Hop, "aroma", 50, "g", AlphaG: 3), extract = new(ChargeKind.Extract, "dried extract", 2, "kg", ExtractKg: 1.9, WaterKg: 0.1, ColourEbc: 10);
        Charge fining = new(ChargeKind.Other, "carrageen", 5, "g", WaterKg: 7);
        var state = With(setting, Kettle, new VesselState(0, 40, 5, 90)) with { ColourKgEbc = 100 };
        var after = Run(setting, Step(StepKind.AddToBoil, Kettle) with { Charges = [hop, extract, fining] }, state).State;
        Assert.Equal([new HopDose("aroma", 3, 0.05)], after.Hops);
        Assert.Equal((40.1, 6.9, 120.0), (after.Vessels[Kettle].WaterKg, after.Vessels[Kettle].ExtractKg, after.ColourKgEbc));
        var brought = 0.1 * Water.EnthalpyJPerKg(setting.AmbientC) + 1.9 * Contents.ExtractJPerKgK * setting.AmbientC;
        var wall = setting.HeatCapacityJPerK(Kettle);
        Assert.Equal(Contents.HeatJ(state.Vessels[Kettle], wall) + brought, Contents.HeatJ(after.Vessels[Kettle], wall), 1.0);
    }

    private static PlantState Boil(PlantSetting setting, VesselState wort, double minutes) =>
        Run(setting, Step(StepKind.Boil, Kettle) with { Minutes = minutes }, Plugged(setting, wort)).State;
}
