using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Waters;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Waters;

public class WaterDayTests
{
    private static readonly DayChoices Treated = new()
    {
        Water = Given.Supply(soft: SourceWater.Distilled, acid: Given.Lactic),
        WaterTarget = Given.Pale,
    };

    [Fact]
    public void Without_an_analysis_the_sheet_is_as_ever()
    {
        var plan = Demo.Plan(Demo.Amber with { Water = Given.Pale });
        Assert.Null(plan.Water);
        Assert.Empty(Step(plan, "liquor.treat").Spec.Charges);
        Assert.DoesNotContain(plan.Steps, s => s.Spec.Id == "liquor.treat-sparge");
        Assert.DoesNotContain(plan.Steps.SelectMany(s => s.Expected), e => e.Kind == ReadingKind.Ph);
        Assert.DoesNotContain(plan.Limits, l => l.Name.StartsWith("water", StringComparison.Ordinal));
    }

    [Fact]
    public void Treating_steps_take_what_the_tank_holds()
    {
        var plan = Demo.Plan(choices: Treated);
        var water = plan.Water!;
        Assert.Equal(Step(plan, "liquor.fill").VolumeL!.Value, water.Strike.VolumeL, 9);
        Assert.Equal(Step(plan, "liquor.fill-sparge").VolumeL!.Value, water.Sparge!.VolumeL, 9);
        Same(water.Strike, Step(plan, "liquor.treat").Spec);
        Same(water.Sparge, Step(plan, "liquor.treat-sparge").Spec);
        Assert.NotEmpty(water.Strike.Salts);
        Assert.NotNull(water.Strike.Acid);
    }

    [Fact]
    public void Sparge_liquor_is_treated_between_filling_and_heating()
    {
        var ids = Demo.Plan(choices: Treated).Steps.Select(s => s.Spec.Id).ToList();
        var at = ids.IndexOf("liquor.treat-sparge");
        Assert.Equal(["liquor.fill-sparge", "liquor.treat-sparge", "liquor.heat-sparge"], ids[(at - 1)..(at + 2)]);
    }

    [Fact]
    public void The_weigh_in_lists_what_is_still_to_go_in()
    {
        var plan = Demo.Plan(choices: Treated);
        var weighed = Step(plan, "setup.weigh-in").Spec.Charges.Where(c => c.ForStepId is not null).ToList();
        Assert.Equal(Step(plan, "liquor.treat-sparge").Spec.Charges.Select(c => (c.Name, c.Amount)), weighed.Select(c => (c.Name, c.Amount)));
        Assert.All(weighed, c => Assert.Equal("liquor.treat-sparge", c.ForStepId));
    }

    [Fact]
    public void The_predicted_pH_is_to_be_read_at_the_end_of_the_first_rest()
    {
        var plan = Demo.Plan(choices: Treated);
        var expected = Assert.Single(plan.Steps.SelectMany(s => s.Expected), e => e.Kind == ReadingKind.Ph);
        Assert.Equal(plan.Water!.MashPh, expected.Value);
        Assert.Contains(expected, Step(plan, "mash.rest-1").Expected);
        Assert.InRange(expected.Value, 5.38, 5.42);
    }

    [Fact]
    public void An_analysis_without_a_target_predicts_the_pH_and_adds_nothing()
    {
        var plan = Demo.Plan(choices: new DayChoices { Water = Given.Supply(acid: Given.Lactic) });
        Assert.All(plan.Water!.Doses(), d => Assert.True(d.IsEmpty));
        Assert.Equal(MashAcidity.Ph(plan.Recipe.Grist, plan.Totals.StrikeWaterL, Given.Tap.Ions), plan.Water.MashPh, 9);
    }

    [Fact]
    public void The_recipe_states_the_target_and_the_day_may_state_another()
    {
        var recipe = Demo.Amber with { Water = new WaterTarget { Name = "recipe's", MashPh = 5.5 } };
        Assert.Equal("recipe's", Demo.Plan(recipe, Treated with { WaterTarget = null }).Water!.Target.Name);
        Assert.Equal(Given.Pale, Demo.Plan(recipe, Treated).Water!.Target);
    }

    [Fact]
    public void Soft_water_goes_in_with_the_filling()
    {
        var target = new WaterTarget { BicarbonateMgPerL = new(0, 60), SulphateMgPerL = new(20, 30), SodiumMgPerL = new(0, 15) };
        var plan = Demo.Plan(choices: Treated with { Water = Given.Supply(soft: SourceWater.Distilled), WaterTarget = target });
        Assert.InRange(plan.Water!.SoftShare, 0.3, 0.9);
        var poured = Assert.Single(Step(plan, "liquor.fill").Spec.Charges);
        Assert.Equal(ChargeKind.SoftWater, poured.Kind);
        Assert.Equal(plan.Water.SoftShare * Step(plan, "liquor.fill").VolumeL!.Value, poured.Amount, 9);
    }

    [Fact]
    public void Acid_and_slaked_lime_bring_their_cautions()
    {
        Assert.True(Step(Demo.Plan(choices: Treated), "liquor.treat").Spec.Cautions.HasFlag(Cautions.Acid));
        var lime = Treated with
        {
            Water = new WaterSupply { Source = Given.Empty, Salts = [BrewingSalt.SlakedLime] },
            WaterTarget = new WaterTarget { ResidualAlkalinityAsCaCO3 = new(60, 60) },
        };
        var treat = Step(Demo.Plan(choices: lime), "liquor.treat").Spec;
        Assert.True(treat.Cautions.HasFlag(Cautions.Caustic));
        Assert.False(treat.Cautions.HasFlag(Cautions.Acid));
    }

    /// <summary>One water trips the limit, the next is just inside; neither stops the day.</summary>
    [Theory]
    [InlineData("water_sulphate", 405, false)]
    [InlineData("water_sulphate", 395, true)]
    [InlineData("water_chloride", 255, false)]
    [InlineData("water_chloride", 245, true)]
    [InlineData("water_sodium", 155, false)]
    [InlineData("water_sodium", 145, true)]
    [InlineData("water_magnesium", 41, false)]
    [InlineData("water_magnesium", 39, true)]
    [InlineData("water_calcium", 205, false)]
    [InlineData("water_calcium", 195, true)]
    public void What_is_above_the_safe_range_is_told(string limit, double mgPerL, bool ok)
    {
        var ions = limit switch
        {
            "water_sulphate" => Given.Tap.Ions with { SulphateMgPerL = mgPerL },
            "water_chloride" => Given.Tap.Ions with { ChlorideMgPerL = mgPerL },
            "water_sodium" => Given.Tap.Ions with { SodiumMgPerL = mgPerL },
            "water_magnesium" => Given.Tap.Ions with { MagnesiumMgPerL = mgPerL },
            _ => Given.Tap.Ions with { CalciumMgPerL = mgPerL },
        };
        var plan = Demo.Plan(choices: new DayChoices { Water = new WaterSupply { Source = Given.Tap with { Ions = ions } } });
        Assert.Equal(ok, Assert.Single(plan.Limits, l => l.Name == limit).Ok);
    }

    [Theory]
    [InlineData(-60, true, true)]
    [InlineData(400, true, false)]
    [InlineData(-400, false, true)]
    public void A_mash_pH_outside_its_window_is_told(double alkalinity, bool aboveLow, bool belowHigh)
    {
        var source = new SourceWater("any", new(0, 0, 0, 0, 0, alkalinity), 7);
        var plan = Demo.Plan(choices: new DayChoices { Water = new WaterSupply { Source = source } });
        Assert.Equal(aboveLow, Assert.Single(plan.Limits, l => l.Name == "water_mash_ph_low").Ok);
        Assert.Equal(belowHigh, Assert.Single(plan.Limits, l => l.Name == "water_mash_ph_high").Ok);
    }

    [Fact]
    public void Lactate_that_is_tasted_is_told()
    {
        double Lactate(double alkalinity)
        {
            var source = new SourceWater("any", new(80, 5, 10, 20, 20, alkalinity), 7.5);
            var choices = Treated with { Water = Given.Supply(source, acid: Given.Lactic), WaterTarget = new() { MashPh = 5.3, SpargePh = 5.5 } };
            return Assert.Single(Demo.Plan(choices: choices).Limits, l => l.Name == "water_lactate").Margin;
        }
        Assert.True(Lactate(50) > 0);
        Assert.True(Lactate(400) < 0);
    }

    [Fact]
    public void The_day_with_treated_water_still_gives_what_the_recipe_wants()
    {
        var plan = Demo.Plan(choices: Treated);
        Assert.Equal(Demo.Amber.BatchL, plan.Totals.FermenterL, 3);
        Assert.Equal(Demo.Amber.OriginalGravitySg!.Value, plan.Totals.OriginalGravitySg, 5);
    }

    private static void Same(WaterDose dose, StepSpec spec)
    {
        Assert.Equal(dose.Salts.Select(s => (s.Salt.ToString(), s.MassG)), spec.Charges.Where(c => c.Kind == ChargeKind.Salt).Select(c => (c.Name, c.Amount)));
        Assert.Equal(dose.Acid?.VolumeMl, spec.Charges.SingleOrDefault(c => c.Kind == ChargeKind.Acid)?.Amount);
    }

    private static PlanStep Step(Plan plan, string id) => plan.Steps.Single(s => s.Spec.Id == id);
}
