using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Planning.Operations;
using static BrewDeck.Tests.Planning.OneOperation;

namespace BrewDeck.Tests.Planning;

/// <summary>Heating liquor, doughing in and resting keep the heat balance.</summary>
public class MashingTests
{
    /// <summary>What a vessel takes to warm by a kelvin is how its heat grows, and wort of 12 °P is the sugar solution's.</summary>
    [Fact]
    public void Heat_grows_by_the_heat_capacity()
    {
        var mash = new VesselState(0, 25, 2, 66, 8, 5.5);
        var slope = Contents.HeatAtJ(mash, 7000, 66.5) - Contents.HeatAtJ(mash, 7000, 65.5);
        Assert.Equal(slope, Contents.CapacityJPerK(mash, 7000, 66), 1e-3 * slope);
        var wort = new VesselState(0, 0.88, 0.12, 60);
        Assert.Equal(SugarSolution.SpecificHeatJPerKgK(12, 60), Contents.CapacityJPerK(wort, 0, 60), 1e-6);
        Assert.Equal(Contents.LiquidL(mash) + 0.67 * 5.5, Contents.StandsL(mash), 1e-9);
    }

    /// <summary>The model counts water and dry grain apart, the kernel malt by the printed table: both must give one mash.</summary>
    [Fact]
    public void A_dough_in_gives_the_temperature_of_the_mash_heat_balance()
    {
        var setting = Setting;
        var malt = new Charge(ChargeKind.Grist, "pale malt", 8, "kg", ExtractKg: 6.2, WaterKg: 0.32, ColourEbc: 6);
        var state = With(setting, Tun, new VesselState(0, 25, 0, 72));
        var mash = Run(setting, Step(StepKind.DoughIn, Tun) with { Charges = [malt] }, state).State;
        var balance = MashHeat.MashTempC(25, 8, setting.GrainC, 0.04, 72, setting.HeatCapacityJPerK(Tun), 72);
        var tun = mash.Vessels[Tun];
        Assert.Equal(balance, tun.TempC, 0.1);
        Assert.Equal((25.32, 8.0, 7.68), (tun.WaterKg, tun.GrainKg, tun.GrainDryKg));
        Assert.Equal(setting.Habits.ConversionYield * 6.2, tun.UndissolvedKg, 1e-12);
        Assert.Equal(48, mash.ColourKgEbc, 1e-12);
    }

    /// <summary>Heated to what the strike asks for, moved into the cold tun and doughed in, it stands where it should.</summary>
    [Theory]
    [InlineData(62)]
    [InlineData(68)]
    public void Strike_liquor_is_as_hot_as_the_mash_wants_it(double wantedC)
    {
        var setting = Setting;
        var malt = new Charge(ChargeKind.Grist, "pale malt", 8, "kg", ExtractKg: 6.2, WaterKg: 0.32);
        var heat = Step(StepKind.HeatStrike, Tank) with { To = "tun", VolumeL = 24, TargetC = wantedC, Charges = [malt], Minutes = 3 };
        var heated = Run(setting, heat, With(setting, Tank, new VesselState(0, 30, 0, 12)));
        Assert.Equal(heated.TargetC!.Value, heated.State.Vessels[Tank].TempC, 1e-6);
        var moved = PlantModel.After(setting, heat with { Kind = StepKind.TransferStrike }, heated.State, heated.EndS);
        var mash = PlantModel.After(setting, heat with { Kind = StepKind.DoughIn, Vessel = "tun", To = "" }, moved.State, moved.EndS);
        Assert.Equal(wantedC, mash.State.Vessels[Tun].TempC, 0.02);
    }

    [Fact]
    public void A_mash_cools_while_it_is_doughed_in()
    {
        var setting = Setting;
        var doughIn = Step(StepKind.DoughIn, Tun) with { Charges = [new(ChargeKind.Grist, "pale malt", 8, "kg", ExtractKg: 6.2, WaterKg: 0.32)] };
        VesselState After(double minutes) => Run(setting, doughIn with { Minutes = minutes }, With(setting, Tun, new VesselState(0, 25, 0, 72))).State.Vessels[Tun];
        Assert.InRange(After(0).TempC - After(10).TempC, 0.2, 2.0);
    }

    [Fact]
    public void A_tun_with_heat_of_its_own_keeps_its_rest_and_any_other_drifts_to_the_room()
    {
        var rest = Step(StepKind.Rest, Tun) with { Minutes = 60, TargetC = 66 };
        var mash = new VesselState(0, 25, 0, 66, 8, 7.7);
        VesselState After(PlantSetting setting) => Run(setting, rest, With(setting, Tun, mash) with { PlugAt = [.. setting.Circuits.Select(_ => Tun)] }).State.Vessels[Tun];
        PlantSetting By(MashHeating heating) => Setting with { Habits = Setting.Habits with { MashHeating = heating } };

        Assert.Equal(66, After(By(MashHeating.Direct)).TempC, 1e-9);
        Assert.Equal(66, After(By(MashHeating.Decoction)).HoldC, 1e-9);

        var drifted = After(By(MashHeating.HotWater));
        var setting = Setting;
        var lumpS = Contents.CapacityJPerK(mash, setting.HeatCapacityJPerK(Tun), 66) / setting.LossWPerK(Tun);
        Assert.Equal(setting.AmbientC + (66 - setting.AmbientC) * Math.Exp(-HourS / lumpS), drifted.TempC, 1e-6);
        Assert.False(drifted.HoldsTemperature);
    }

    [Theory]
    [InlineData(66.0, true)]
    [InlineData(66.0, false)]
    public void What_is_hot_enough_already_takes_no_time_and_is_kept_if_it_is_to_be(double celsius, bool held)
    {
        var bench = new Workbench(Setting, With(Setting, Tank, new VesselState(0, 30, 0, celsius)));
        var progress = Heating.To(bench, Tank, Step(StepKind.HeatSparge, Tank), celsius, double.PositiveInfinity, held);
        Assert.Equal((0.0, null), (progress.ElapsedS, progress.Left));
        Assert.Equal(held, bench.Vessels[Tank].HoldsTemperature);
    }

    [Fact]
    public void A_heat_up_that_is_cut_is_not_there_yet_and_goes_on_to_the_same_end()
    {
        var setting = Setting;
        var heat = Step(StepKind.HeatSparge, Tank) with { TargetC = 77 };
        var cold = With(setting, Tank, new VesselState(0, 30, 0, 12));
        var whole = Run(setting, heat, cold);
        var cut = Run(setting, heat, cold, 0.4 * whole.DurationS);
        Assert.Same(heat, cut.Left);
        Assert.Null(whole.Left);
        Assert.InRange(cut.State.Vessels[Tank].TempC, 30, 50);
        Assert.False(cut.State.Vessels[Tank].HoldsTemperature);
        var rest = Run(setting, cut.Left!, cut.State with { Vessels = [.. cut.State.Vessels.Select(v => v with { AtS = 0 })] });
        Assert.Equal(whole.DurationS, cut.DurationS + rest.DurationS, 0.01 * whole.DurationS);
        Assert.Equal(77, rest.State.Vessels[Tank].TempC, 1e-9);
        Assert.Equal(77, rest.State.Vessels[Tank].HoldC);
    }
}
