using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Plant;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Tests.Planning;

/// <summary>A mash raised by boiling part of it.</summary>
public sealed class DecoctionTests
{
    private static readonly DayChoices Decoct = new() { MashHeating = MashHeating.Decoction };

    private static readonly Recipe Stepped = Demo.Amber with
    {
        Rests = [new MashRest("maltose", 63, 30), new MashRest("saccharification", 72, 30), new MashRest("mash-out", 77, 10)],
    };

    private static readonly Brewhouse Low = Covered(3);

    [Fact]
    public void Each_decoction_brings_the_mash_to_its_rest()
    {
        var plan = Demo.Plan(Stepped, Decoct, Low);
        var returns = plan.Steps.Where(s => s.Spec.Kind == StepKind.ReturnDecoction).ToList();
        Assert.Equal([72, 77], returns.Select(s => s.Spec.TargetC));
        Assert.All(returns, s => Assert.Equal(s.Spec.TargetC!.Value, s.After.Vessels[1].TempC, 0.3));
        Assert.All(returns, s => Assert.Equal(0, s.After.Vessels[2].LiquidKg, 1e-9));
    }

    /// <summary>Without losses, without a kettle wall to heat and without steam it is the brewers' cross of the handbooks.</summary>
    [Fact]
    public void Without_losses_the_brewers_cross_comes_out()
    {
        var ideal = Low with
        {
            Vessels = [.. Low.Vessels.Select(v => v with { LossWPerK = 0, HeatCapacityJPerK = v.Id == "tun" ? v.HeatCapacityJPerK : 1e-3 })],
            Habits = Low.Habits with { EvaporationKgPerH = 1e-3 },
        };
        var plan = Demo.Plan(Stepped, Decoct, ideal);
        foreach (var pull in plan.Steps.Where(s => s.Spec.Kind == StepKind.PullDecoction))
        {
            var before = plan.Steps[plan.Steps.IndexOf(pull) - 1].After.Vessels[1];
            double from = pull.After.Vessels[1].TempC, pulledL = pull.VolumeL!.Value, mashL = pulledL + Contents.StandsL(pull.After.Vessels[1]);
            var cross = MashHeat.DecoctionVolumeL(mashL, from, pull.Spec.TargetC!.Value, 100.1);
            // the wall of the tun is warmed too, and water's heat grows a little with temperature
            Assert.InRange(pulledL / cross, 0.98, 1.09);
            Assert.True(before.GrainKg > 0);
        }
    }

    [Fact]
    public void Losses_ask_for_more()
    {
        double Pulled(Brewhouse house) => Demo.Plan(Stepped, Decoct, house).Steps.First(s => s.Spec.Kind == StepKind.PullDecoction).VolumeL!.Value;
        // a tun that heats itself is kept at its rest meanwhile
        Brewhouse Losing(double wattsPerK) => Low with { Vessels = [.. Low.Vessels.Select(v => v.Id == "tun" ? v with { Elements = [], LossWPerK = wattsPerK } : v)] };
        Assert.True(Pulled(Losing(6)) > Pulled(Losing(2)) + 0.1);
    }

    [Fact]
    public void Nothing_is_lost_but_steam()
    {
        var plan = Demo.Plan(Stepped, Decoct, Low);
        var steps = plan.Steps.Where(s => s.Spec.Unit == UnitProcedure.Mash && s.Spec.Kind >= StepKind.PullDecoction).ToList();
        double Dry(PlanStep s) => s.After.Vessels.Sum(v => v.ExtractKg + v.GrainDryKg);
        Assert.All(steps, s => Assert.Equal(Dry(steps[0]), Dry(s), 1e-9));
        var boiled = steps.Where(s => s.Spec.Kind == StepKind.BoilDecoction).Sum(s => s.DurationS) / 3600;
        Assert.InRange(boiled, 0.3, 0.4);
    }

    [Theory]
    [InlineData(0.99, true)]
    [InlineData(1.01, false)]
    public void A_decoction_that_does_not_cover_the_element_is_refused(double share, bool ok)
    {
        var stands = Demo.Plan(Stepped, Decoct, Low).Limits.Single(l => l.Name == "decoction_covers_elements").Value;
        Check(Planner.Draw(Covered(share * stands), Stepped, Decoct), "decoction_covers_elements", ok);
    }

    [Theory]
    [InlineData(76, true)]
    [InlineData(85, false)]
    public void No_more_than_half_is_boiled_at_once(double toC, bool ok) => Check(
        Planner.Draw(Low, Demo.Amber with { Rests = [new MashRest("one", 63, 30), new MashRest("two", toC, 10)] }, Decoct), "decoction_share", ok);

    [Fact]
    public void A_kettle_that_is_the_mash_tun_cannot_decoct()
    {
        var one = Demo.House with { Vessels = [Demo.House.Vessels[0] with { Roles = VesselRoles.HotLiquor }, Demo.House.Vessels[2] with { Roles = VesselRoles.Mash | VesselRoles.Boil }] };
        Check(Planner.Draw(one, Stepped, Decoct), "tun_cannot_heat", ok: false);
    }

    /// <summary>The rehearsal's plant boils and returns by its own equations, and what it gives is near.</summary>
    [Fact]
    public void A_rehearsed_decoction_reaches_its_rests()
    {
        var plan = Demo.Plan(Stepped, Decoct, Low with { Habits = Low.Habits with { MashHeating = MashHeating.Decoction } });
        var day = RehearsalRun.Of(plan, 4, 1_780_000_000_000);
        Assert.Equal((RehearsalResult.Pitched, RunStatus.Complete), (day.Ended, day.Final.Status));
        Assert.Equal(plan.Totals.OriginalGravitySg, day.Truth.OriginalGravitySg, 0.004);
        var read = day.Readings.Where(r => r.StepId.StartsWith("mash.return-", StringComparison.Ordinal) && r.Reading.Kind == ReadingKind.Temperature).ToList();
        Assert.Equal(2, read.Count);
        Assert.All(read, r => Assert.InRange(r.Reading.Value - plan.Steps.Single(s => s.Spec.Id == r.StepId).TargetC!.Value, -3.5, 3.5));
    }

    [Fact]
    public void The_plant_loses_nothing_in_a_decoction()
    {
        var plant = new VirtualPlant(HiddenTruth.AsProfile(Low, Decoct));
        plant.AddWater("tun", 30, 70);
        plant.DoughIn(9, 0.4, 6.8, 60);
        plant.Advance(1800);
        plant.PullMash("tun", "kettle", 11, 10);
        plant.Advance(300);
        Assert.InRange(plant["kettle"].StandsL, 10.8, 11.2);
        plant.Heat("kettle", 150, 4000);
        plant.Advance(1500);
        Assert.InRange(plant["kettle"].TempC, 99.5, 101.5);
        plant.HeatOff("kettle");
        plant.ReturnMash("kettle", "tun", 10);
        plant.Advance(300);
        Assert.Equal(0, plant["kettle"].StandsL, 1e-6);
        Assert.InRange(plant.Tun.TempC, 68, 82);
        Assert.Equal(0, plant.WaterResidualKg, 1e-9);
        Assert.Equal(0, plant.DryResidualKg, 1e-9);
        Assert.Equal(0, plant.HeatResidualJ, 1.0);
    }

    private static Brewhouse Covered(double litres) => Demo.House with
    {
        Vessels = [.. Demo.House.Vessels.Select(v => v.Id == "kettle" ? v with { Elements = [v.Elements[0] with { CoverL = litres }] } : v)],
    };

    private static void Check(PlanResult result, string code, bool ok)
    {
        if (ok)
            Assert.True(result is PlanResult.Drawn, string.Join("; ", (result as PlanResult.Refused)?.Refusals ?? []));
        else
            Assert.NotEmpty(Assert.Single(Assert.IsType<PlanResult.Refused>(result).Refusals, r => r.Code == code).Mends);
    }
}
