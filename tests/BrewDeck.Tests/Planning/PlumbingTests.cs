using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Planning;

/// <summary>Flow by pump and by fall, and what a pump cannot do.</summary>
public sealed class PlumbingTests
{
    private const double Level = 30;

    private static readonly Pump Curved = new("P1", 3.4, 12, 60) { FreeFlowLPerMin = 25 };

    private static Brewhouse House(Pump? pump, double outletM = 0.6, double inletM = 0.6) => Demo.House with
    {
        Pumps = pump is null ? [] : [pump],
        Hose = new Hose(2, 0.0127),
        Vessels = [.. Demo.House.Vessels.Select(v => v with { OutletM = outletM, InletM = inletM })],
    };

    private static double Flow(Brewhouse house, double celsius = 20, double litres = Level) =>
        Plumbing.LPerMin(PlantSetting.Of(house, new DayChoices()), 0, 1, litres, celsius);

    /// <summary>The liquor stands at the height of the inlet: no lift, and the flow that the brewer has measured.</summary>
    [Fact]
    public void Without_lift_a_pump_gives_its_usual_flow()
    {
        var level = Plumbing.LevelM(Demo.House.Vessels[0], Level);
        Assert.Equal(12, Flow(House(Curved, 0.6, 0.6 + level)), 3);
        Assert.Equal(12, Flow(House(Curved with { FreeFlowLPerMin = null }, 0.6, 3)), 9);
    }

    /// <summary>
    /// With curve and losses both quadratic the flow under a lift is the usual one times the root of what is left of the head; friction in a
    /// smooth hose grows a little slower than the square, so the real one is a little less.
    /// </summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(1.5)]
    [InlineData(3.0)]
    public void Lift_takes_its_share_of_the_head(double lift)
    {
        var level = Plumbing.LevelM(Demo.House.Vessels[0], Level);
        var quadratic = 12 * Math.Sqrt(1 - lift / 3.4);
        Assert.InRange(Flow(House(Curved, 0.6, 0.6 + level + lift)) / quadratic, 0.97, 1.0001);
    }

    /// <summary>Torricelli through a bore with a loss coefficient: the same equation of energy, friction of the hose beside it.</summary>
    [Theory]
    [InlineData(0.4)]
    [InlineData(1.0)]
    public void Without_a_pump_the_fall_alone_drives(double fall)
    {
        var house = House(null, 1 + fall, 1);
        double litresPerMin = Flow(house, litres: Demo.House.Vessels[0].DeadSpaceL), metresPerS = litresPerMin / 60_000 / Cylinder.AreaM2(0.0127);
        var friction = PipeFriction.Churchill(metresPerS * 0.0127 * Water.DensityKgPerM3(20) / Water.ViscosityPaS(20), Hose.RoughnessM / 0.0127);
        Assert.Equal(fall, (4 + friction * 2 / 0.0127) * metresPerS * metresPerS / (2 * 9.80665), 6);
    }

    [Fact]
    public void Hot_liquor_runs_faster_than_cold_and_a_wider_hose_faster_than_a_narrow_one()
    {
        Assert.True(Flow(House(Curved), 80) > Flow(House(Curved), 15));
        var wide = House(null, 2, 1);
        Assert.True(Flow(wide with { Hose = new Hose(2, 0.019) }) > 2 * Flow(wide));
    }

    [Fact]
    public void A_transfer_takes_as_long_as_the_pump_needs_for_its_lift()
    {
        var low = Demo.Plan(house: House(Curved)).Steps.Single(s => s.Spec.Kind == StepKind.TransferStrike);
        var high = Demo.Plan(house: House(Curved, 0.2, 2.4)).Steps.Single(s => s.Spec.Kind == StepKind.TransferStrike);
        Assert.InRange(high.DurationS / low.DurationS, 1.3, 2.5);
    }

    [Theory]
    [InlineData(1.01, true)]
    [InlineData(0.99, false)]
    public void An_inlet_higher_than_the_pump_lifts_is_refused(double share, bool ok)
    {
        var high = House(Curved, 0.2, 3);
        var lift = Planner.LimitsOf(high, Demo.Amber, new DayChoices()).Single(l => l.Name == "lift_of_pump").Value;
        Refuses(high with { Pumps = [Curved with { ShutOffHeadM = share * lift / 0.95 }] }, "lift_of_pump", ok);
    }

    [Theory]
    [InlineData(0.12, true)]
    [InlineData(0.03, false)]
    public void Without_a_pump_there_must_be_a_fall(double fall, bool ok) => Refuses(House(null, 1 + fall, 1), "fall_by_gravity", ok);

    /// <summary>High above the sea hot liquor is nearer to its boil: the same pump that had enough cavitates, and the step says so.</summary>
    [Fact]
    public void Hot_wort_at_altitude_may_cavitate()
    {
        var low = Suction(0);
        Assert.True(low.Ok);
        Assert.True(Suction(3000).Value < low.Value);

        var needs = Demo.House with { Pumps = [Demo.House.Pumps[0] with { NeedsSuctionM = low.Value + 0.01 }] };
        var plan = Demo.Plan(house: needs);
        Assert.False(plan.Limits.Single(l => l.Name == "suction_head").Ok);
        Assert.Contains(plan.Steps, s => SuctionHeads.Cavitates(PlantSetting.Of(plan.Brewhouse, plan.Choices), s));
        Assert.True(Demo.Plan(house: Demo.House with { Pumps = [Demo.House.Pumps[0] with { NeedsSuctionM = low.Value - 0.01 }] })
            .Limits.Single(l => l.Name == "suction_head").Ok);
    }

    private static Limit Suction(double altitudeM) =>
        Demo.Plan(choices: new DayChoices { AltitudeM = altitudeM }).Limits.Single(l => l.Name == "suction_head");

    private static void Refuses(Brewhouse house, string code, bool ok)
    {
        if (ok)
            Assert.True(Demo.Plan(house: house).Limits.Single(l => l.Name == code).Ok);
        else
            Assert.Contains(Assert.IsType<PlanResult.Refused>(Planner.Draw(house, Demo.Amber, new DayChoices())).Refusals, r => r.Code == code);
    }
}
