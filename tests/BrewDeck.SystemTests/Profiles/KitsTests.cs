using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Profiles;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>Every bundled brewhouse with every bundled recipe, on each number of its circuits.</summary>
public sealed class KitsTests
{
    private const long StartMs = 1_780_000_000_000;

    private static readonly ProfileFolder Profiles = ProfileFolder.BesideProgram(Path.Combine(Path.GetTempPath(), "brewdeck-no-such-folder"));

    public static TheoryData<string, string> Pairs
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            foreach (var kit in Profiles.Brewhouses())
            {
                foreach (var recipe in Profiles.Recipes())
                    pairs.Add(kit.Name, recipe.Name);
            }
            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Each_recipe_that_fits_is_planned_and_rehearsed(string kit, string recipe)
    {
        var house = House(kit);
        switch (Planner.Draw(house, Recipe(recipe), new DayChoices()))
        {
            case PlanResult.Drawn { Plan: var plan }:
                // left as it goes: litres to a thirtieth, gravity but for the day's hidden yield, the chiller's valve set by a thermometer
                var opened = new BatchOpened(StartMs, plan, "", Rehearsed: true);
                var truth = HiddenTruth.Draw(house, plan.Choices, 5);
                var day = RehearsalRun.Of(truth, new PaperBook(opened), StartMs, new Manner(Mends: false));
                Assert.Equal(RehearsalResult.Pitched, day.Ended);
                Assert.InRange(day.Truth.FermenterL / plan.Totals.FermenterL, 0.97, 1.03);
                var yields = truth.ConversionYield / house.Habits.ConversionYield;
                Assert.InRange((day.Truth.OriginalGravitySg - 1) / (plan.Totals.OriginalGravitySg - 1) / yields, 0.94, 1.04);
                Assert.InRange(day.Truth.PitchC - plan.Totals.PitchC, -1, 1.5);
                break;
            case PlanResult.Refused refused:
                Assert.All(refused.Refusals, r => Assert.NotEmpty(r.Mends));
                Assert.Equal(("Quayside 10 hL training brewhouse", "Breakwater Strong"), (kit, recipe));
                break;
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void No_circuit_carries_too_much_and_no_element_is_on_uncovered(string kit, string recipe)
    {
        var house = House(kit);
        for (var n = 1; n <= house.Circuits.Length; n++)
        {
            if (Planner.Draw(house, Recipe(recipe), new DayChoices { Circuits = n }) is not PlanResult.Drawn { Plan: var plan })
                continue;
            var setting = PlantSetting.Of(plan.Brewhouse, plan.Choices);
            for (var c = 0; c < n; c++)
                Assert.True(setting.Wiring.PeakW(c) <= setting.Circuits[c].ContinuousW + 1e-6);
            foreach (var step in plan.Steps)
                Follow(setting, plan, step);
        }
    }

    /// <summary>What a step heats with is plugged in when it starts, and covered at the latest when it ends.</summary>
    private static void Follow(PlantSetting setting, Plan plan, PlanStep step)
    {
        if (PlantModel.HeatedVessel(setting, step.Spec) is not (>= 0 and var vessel) || setting.Brewhouse.Vessels[vessel].Elements.IsEmpty)
            return;
        Assert.True(step.PowerW > 0, $"{plan.Recipe.Name} on {plan.Brewhouse.Name}: {step.Spec.Id} has no power");
        Assert.True(
            Contents.StandsL(step.After.Vessels[vessel]) >= setting.Brewhouse.Vessels[vessel].CoverL,
            $"{plan.Recipe.Name} on {plan.Brewhouse.Name}: {step.Spec.Id} is uncovered");
    }

    [Theory]
    [InlineData("Quayside 65", 3, 0)]
    [InlineData("Quayside 65", 2, 1)]
    [InlineData("Quayside 65", 1, 2)]
    [InlineData("Quayside 65 on one circuit", 1, 2)]
    [InlineData("Quayside 65 on two circuits", 2, 1)]
    [InlineData("Quayside 65 with a coil on one circuit", 1, 1)]
    [InlineData("Quayside one-vessel", 1, 0)]
    public void Plugs_are_moved_no_more_often_than_the_heating_asks(string kit, int circuits, int moves)
    {
        var plan = Drawn(kit, "Harbour Lager", new DayChoices { Circuits = circuits });
        Assert.Equal(moves, plan.Steps.Count(s => s.Spec.Kind == StepKind.MovePlug));
    }

    [Fact]
    public void On_one_circuit_all_water_is_heated_first()
    {
        var plan = Drawn("Quayside 65 on one circuit", "Harbour Lager", new DayChoices());
        var liquor = plan.Steps.Where(s => s.Spec.Kind is StepKind.HeatStrike or StepKind.HeatSparge).Max(s => s.EndS);
        var away = plan.Steps.First(s => s.Spec.Kind == StepKind.MovePlug);
        Assert.True(liquor <= away.StartS);
        Assert.Single(plan.Steps, s => s.Spec.Kind == StepKind.Fill);
        var rest = plan.Steps.First(s => s.Spec.Kind == StepKind.Rest);
        var ramp = plan.Steps.First(s => s.Spec.Kind == StepKind.Ramp);
        Assert.InRange(ramp.StartS - rest.EndS, 0, 120);
    }

    [Fact]
    public void Each_kind_of_brewhouse_has_its_run_sheet()
    {
        var one = Ids("Quayside one-vessel");
        Assert.Contains("lauter.lift", one);
        Assert.DoesNotContain("mash.transfer", one);
        Assert.DoesNotContain("lauter.run", one);
        var two = Ids("Quayside two-vessel");
        Assert.Contains("mash.transfer", two);
        Assert.DoesNotContain("liquor.fill-sparge", two);
        var large = Ids("Quayside 10 hL training brewhouse");
        Assert.Contains("mash.to-lauter", large);
        Assert.Contains("cool.to-whirlpool", large);
    }

    [Fact]
    public void A_kettle_gets_no_more_rings_than_its_wort_needs()
    {
        var kettle = Drawn("Quayside 65 with rings", "Quayside Amber", new DayChoices()).Brewhouse.Kettle;
        Assert.Equal(1, kettle.RingsOn);
        Assert.Equal(0, Drawn("Quayside 65 with rings", "Quayside Amber", new DayChoices { BatchL = 25 }).Brewhouse.Kettle.RingsOn);
    }

    /// <summary>An infusion mash on a tun without heat: each rest is met by hot water, and the tun's limit counts it.</summary>
    [Fact]
    public void Rests_are_met_by_infusions_where_there_is_room()
    {
        var small = new DayChoices { MashHeating = MashHeating.HotWater, BatchL = 25 };
        var plan = Drawn("Quayside 65", "Lantern Pale", small);
        Assert.Single(plan.Steps, s => s.Spec.Kind == StepKind.Infuse);
        foreach (var step in plan.Steps.Where(s => s.Spec.Kind == StepKind.Infuse))
            Assert.Equal(step.Spec.TargetC!.Value, step.After.Vessels[1].TempC, 0.3);
        Assert.Equal(RehearsalResult.Pitched, RehearsalRun.Of(plan, 2, StartMs).Ended);
        var full = Planner.Draw(House("Quayside 65"), Recipe("Harbour Lager"), small with { BatchL = 40 });
        Assert.Contains(Assert.IsType<PlanResult.Refused>(full).Refusals, r => r.Code == "mash_in_tun");
    }

    private static string[] Ids(string kit) =>
        [.. Drawn(kit, "Quayside Amber", new DayChoices()).Steps.Select(s => s.Spec.Id)];

    private static Plan Drawn(string kit, string recipe, DayChoices choices) =>
        Assert.IsType<PlanResult.Drawn>(Planner.Draw(House(kit), Recipe(recipe), choices)).Plan;

    private static Brewhouse House(string name) => Profiles.Brewhouse(Profiles.FindBrewhouse(name));

    private static Recipe Recipe(string name) => Profiles.Recipe(Profiles.FindRecipe(name));
}
