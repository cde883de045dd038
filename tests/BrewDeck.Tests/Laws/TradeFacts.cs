using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Laws;

/// <summary>Facts of the trade: common practice, no source.</summary>
public class TradeFacts
{
    [Theory]
    [InlineData(220)]
    [InlineData(230)]
    [InlineData(240)]
    public void A_15_A_circuit_carries_3300_to_3600_W(double volts) =>
        Assert.InRange(new Circuit("A", volts, 15, 1).ContinuousW, 3300, 3600);

    [Fact]
    public void A_pump_of_3_4_m_head_can_load_a_false_bottom_of_0_39_m_with_some_400_kg()
    {
        var load = Demo.Plan().Limits.Single(l => l.Name == "false_bottom_load");
        Assert.InRange(load.Value, 380, 420);
    }

    [Theory]
    [InlineData(70)]
    [InlineData(80)]
    public void A_65_L_tun_with_an_extended_kettle_yields_70_to_80_L_of_ordinary_wort(double batchL)
    {
        var kettle = Demo.House.Kettle with { CapacityL = 110 };
        var tank = Demo.House.HotLiquorTank with { CapacityL = 90 };
        var house = Demo.House with
        {
            Vessels = [tank, Demo.House.MashTun, kettle],
            Fermenter = new Fermenter("steel 95", 95, 10),
        };
        var plan = Demo.Plan(Demo.Amber with { OriginalGravitySg = 1.045 }, new DayChoices { BatchL = batchL }, house);
        Assert.Equal(batchL, plan.Totals.FermenterL, 0.01);
        Assert.True(plan.Limits.Single(l => l.Name == "mash_in_tun").Ok);
    }

    [Theory]
    [InlineData(15, 0, 0.85)]
    [InlineData(30, 0.9, 1)]
    [InlineData(60, 0.99, 1)]
    public void A_mash_is_done_in_30_to_60_minutes(double minutes, double least, double most)
    {
        var plan = Demo.Plan(Demo.Amber with { Rests = [new MashRest("rest", 66, minutes)] });
        var setting = PlantSetting.Of(plan.Brewhouse, plan.Choices);
        var doughedIn = plan.Steps.Single(s => s.Spec.Kind == StepKind.DoughIn).After;
        var rest = plan.Steps.Single(s => s.Spec.Kind == StepKind.Rest).Spec;
        var tun = setting.IndexOf("tun");
        var fresh = doughedIn.Vessels[tun].UndissolvedKg;
        var left = PlantModel.Run(setting, rest, doughedIn, doughedIn.Vessels[tun].AtS, double.PositiveInfinity).State.Vessels[tun].UndissolvedKg;
        Assert.InRange(1 - left / fresh, least, most);
    }
}
