using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;
using static BrewDeck.Tests.Planning.OneOperation;

namespace BrewDeck.Tests.Planning;

/// <summary>Water, wort and mash that are moved take the time of the tap or the plumbing, and keep mass and heat.</summary>
public class MovingTests
{
    [Fact]
    public void A_fill_takes_its_litres_over_the_taps_flow_and_goes_on_where_it_was_cut()
    {
        var setting = Setting;
        var fill = Step(StepKind.Fill, Tank) with { VolumeL = 30 };
        var whole = Run(setting, fill, PlantModel.Empty(setting));
        Assert.Equal(60 * 30 / setting.Habits.FillLPerMin, whole.DurationS, 1e-6);
        Assert.Null(whole.Left);
        Assert.Equal(30, Contents.CoolL(whole.State.Vessels[Tank]), 1e-9);

        var cut = Run(setting, fill, PlantModel.Empty(setting), 0.25 * whole.DurationS);
        Assert.Equal(22.5, cut.Left!.VolumeL!.Value, 1e-9);
        Assert.Equal(7.5, Contents.CoolL(cut.State.Vessels[Tank]), 1e-9);
        Assert.Equal(0.75 * whole.DurationS, Run(setting, cut.Left, cut.State).DurationS, 1e-6);
    }

    [Fact]
    public void Added_water_brings_its_own_heat_or_that_of_the_tap()
    {
        var setting = Setting;
        var state = With(setting, Tun, new VesselState(0, 20, 0, 60));
        var wall = setting.HeatCapacityJPerK(Tun);
        foreach (double? celsius in new double?[] { 95, null })
        {
            var after = Run(setting, Step(StepKind.AddWater, Tun) with { VolumeL = 5, TargetC = celsius }, state);
            var brought = Contents.WaterKg(5) * Water.EnthalpyJPerKg(celsius ?? setting.SourceWaterC);
            Assert.Equal(0, after.DurationS);
            Assert.Equal(Contents.HeatJ(state.Vessels[Tun], wall) + brought, Contents.HeatJ(after.State.Vessels[Tun], wall), 1.0);
        }
    }

    [Fact]
    public void A_tun_is_drained_down_to_its_outlet()
    {
        var setting = Setting;
        var after = Run(setting, Step(StepKind.Drain, Tun) with { Minutes = 4 }, With(setting, Tun, new VesselState(0, 18, 2, 60, HoldC: 60)));
        var left = after.State.Vessels[Tun];
        Assert.Equal(Demo.House.Vessels[Tun].DeadSpaceL, Contents.CoolL(left), 1e-9);
        Assert.Equal(10, left.Plato, 1e-9);
        Assert.False(left.HoldsTemperature);
        Assert.InRange(left.TempC, 50, 59.9);
        Assert.Equal(240, after.DurationS);
        var little = new VesselState(0, 1, 0, 60);
        Assert.Equal(1, Run(setting, Step(StepKind.Drain, Tun), With(setting, Tun, little)).State.Vessels[Tun].WaterKg, 1e-12);
    }

    [Fact]
    public void No_more_strike_liquor_comes_than_stands_in_the_tank()
    {
        var setting = Setting;
        var spec = Step(StepKind.TransferStrike, Tank) with { To = "tun", VolumeL = 30 };
        var outcome = Run(setting, spec, With(setting, Tank, new VesselState(0, 20, 0, 72)));
        Assert.Equal(0, outcome.State.Vessels[Tank].WaterKg, 1e-9);
        Assert.Equal(20, outcome.State.Vessels[Tun].WaterKg, 1e-9);
        // both know the same moment, and neither is warmer than what was moved
        Assert.All([Tank, Tun], v => Assert.Equal(outcome.DurationS, outcome.State.Vessels[v].AtS, 1e-9));
        Assert.InRange(outcome.State.Vessels[Tun].TempC, 60, 72);
    }

    [Fact]
    public void Mash_that_is_moved_for_half_of_the_time_is_half_of_everything()
    {
        var five = PlantSetting.Of(Demo.FiveVessels, new DayChoices()) with { LidLeak = 0 };
        var mash = new VesselState(0, 24, 3, 70, 9, 5, 0.5);
        var spec = Step(StepKind.TransferMash, Tun) with { To = "lauter" };
        var whole = Run(five, spec, With(five, Tun, mash));
        var half = Run(five, spec, With(five, Tun, mash), 0.5 * whole.DurationS);
        Assert.NotNull(half.Left);
        Assert.Null(whole.Left);
        var (stays, came) = (half.State.Vessels[Tun], half.State.Vessels[2]);
        Assert.Equal(12, came.WaterKg, 1e-9);
        Assert.Equal(4.5, came.GrainKg, 1e-9);
        Assert.All<Func<VesselState, double>>(
            [v => v.WaterKg, v => v.GrainKg, v => v.LiquidKg + v.GrainDryKg, v => v.ExtractKg + v.UndissolvedKg],
            of => Assert.Equal(of(stays), of(came), 1e-2));
        Assert.Equal(0, whole.State.Vessels[Tun].LiquidKg + whole.State.Vessels[Tun].GrainDryKg, 1e-9);
    }

    [Fact]
    public void What_is_moved_takes_the_time_of_the_plumbing_at_its_mean_level()
    {
        var setting = Setting;
        var tank = new VesselState(0, 40, 0, 72);
        var spec = Step(StepKind.TransferStrike, Tank) with { To = "tun", VolumeL = 20 };
        var outcome = Run(setting, spec, With(setting, Tank, tank));
        var flow = Plumbing.LPerMin(setting, Tank, Tun, Contents.LiquidL(tank) - 10, 72);
        Assert.Equal(60 * 20 / flow, outcome.DurationS, 1e-6);
        Assert.Equal(Contents.WaterKg(20), outcome.State.Vessels[Tun].WaterKg, 1e-9);

        var five = PlantSetting.Of(Demo.FiveVessels, new DayChoices());
        var mash = new VesselState(0, 24, 3, 70, 9, 5, 0.5);
        var moved = Run(five, Step(StepKind.TransferMash, Tun) with { To = "lauter" }, With(five, Tun, mash));
        Assert.Equal(60 * Contents.StandsL(mash) / Plumbing.LPerMin(five, Tun, 2, 0.5 * Contents.StandsL(mash), 70), moved.DurationS, 1e-6);
    }

    /// <summary>Vessels that lose nothing show that pouring keeps the heat; any others are colder for the time that it takes.</summary>
    [Fact]
    public void Pouring_keeps_the_heat_but_for_what_the_room_gets()
    {
        var five = PlantSetting.Of(Demo.FiveVessels, new DayChoices()) with { LidLeak = 0 };
        var tight = five with { Brewhouse = five.Brewhouse with { Vessels = [.. five.Brewhouse.Vessels.Select(v => v with { LossWPerK = 0 })] } };
        var mash = With(five, Tun, new VesselState(0, 24, 3, 70, 9, 5));
        var spec = Step(StepKind.TransferMash, Tun) with { To = "lauter" };
        double HeatJ(PlantState state) => new[] { Tank, Tun, 2 }.Sum(i => Contents.HeatJ(state.Vessels[i], five.HeatCapacityJPerK(i)));
        Assert.Equal(HeatJ(mash), HeatJ(Run(tight, spec, mash).State), 1.0);
        Assert.InRange(HeatJ(Run(five, spec, mash).State), 0.98 * HeatJ(mash), HeatJ(mash) - 1000);

        var strike = With(five, Tank, new VesselState(0, 30, 0, 72));
        var over = Step(StepKind.TransferStrike, Tank) with { To = "tun", VolumeL = 20 };
        Assert.Equal(HeatJ(strike), HeatJ(Run(tight, over, strike).State), 1.0);
        var (kept, cooled) = (Run(tight, over, strike).State, Run(five, over, strike).State);
        Assert.All([Tank, Tun], v => Assert.True(cooled.Vessels[v].TempC < kept.Vessels[v].TempC));
    }

    [Fact]
    public void Liquid_is_moved_with_its_extract()
    {
        var bench = new Workbench(Setting, With(Setting, Tun, new VesselState(0, 27, 3, 70)));
        Transfers.Move(bench, Tun, Kettle, 10);
        Assert.Equal((18.0, 2.0), (bench.Vessels[Tun].WaterKg, bench.Vessels[Tun].ExtractKg));
        Assert.Equal((9.0, 1.0), (bench.Vessels[Kettle].WaterKg, bench.Vessels[Kettle].ExtractKg));
    }
}
