using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

public sealed class BundledProfilesTests
{
    private static readonly string Nowhere = Path.Combine(Path.GetTempPath(), "brewdeck-no-such-folder");

    /// <summary>From the folder beside the program, and from inside the program as the single file has them.</summary>
    public static TheoryData<string> Folders => [Path.Combine(AppContext.BaseDirectory, "profiles"), Nowhere];

    [Theory]
    [MemberData(nameof(Folders))]
    public void Every_bundled_profile_reads(string folder)
    {
        var profiles = new ProfileFolder(folder, Nowhere);
        Assert.Equal(11, profiles.Brewhouses().Count());
        Assert.Contains("Quayside 65", profiles.Brewhouses().Select(e => e.Name));
        Assert.Equal(["Quayside Amber", "Breakwater Strong", "Harbour Lager", "Lantern Pale"], profiles.Recipes().Select(e => e.Name));
        foreach (var entry in profiles.Brewhouses())
            Assert.Equal(entry.Name, profiles.Brewhouse(entry).Name);
        foreach (var entry in profiles.Recipes())
            Assert.Equal(entry.Name, profiles.Recipe(entry).Name);
    }

    [Fact]
    public void The_folder_and_the_program_hold_the_same()
    {
        var beside = new ProfileFolder(Path.Combine(AppContext.BaseDirectory, "profiles"), Nowhere);
        var inside = new ProfileFolder(Nowhere, Nowhere);
        foreach (var (a, b) in beside.Recipes().Zip(inside.Recipes()))
            Assert.Equal(RecipeFile.Write(beside.Recipe(a)), RecipeFile.Write(inside.Recipe(b)));
    }

    /// <summary>Common practice, no source: 80 % of a 30 A circuit at 240 V carries an element of 5.5 kW, of a 20 A circuit 3.5 kW.</summary>
    [Fact]
    public void Each_element_fits_its_circuit()
    {
        var brewhouse = Profiles.Brewhouse(Profiles.FindBrewhouse("quayside-65"));
        Assert.Equal([5760, 3840, 5760], brewhouse.Circuits.Select(c => Math.Round(c.ContinuousW)));
        foreach (var element in brewhouse.Vessels.SelectMany(v => v.Elements))
            Assert.True(element.PowerW <= brewhouse.Circuits.Single(c => c.Id == element.CircuitId).ContinuousW);
    }

    /// <summary>Brewable as written: the planner fits grist and hops to the wanted figures by no more than a tenth.</summary>
    [Fact]
    public void Each_recipe_can_be_brewed_on_the_brewhouse_much_as_written()
    {
        var brewhouse = Profiles.Brewhouse(Profiles.FindBrewhouse("quayside-65"));
        foreach (var recipe in Profiles.Recipes().Select(Profiles.Recipe))
        {
            var plan = Assert.IsType<PlanResult.Drawn>(Planner.Draw(brewhouse, recipe, new DayChoices())).Plan;
            Assert.InRange(plan.Recipe.MashKg / recipe.MashKg, 0.9, 1.1);
            foreach (var (planned, written) in plan.Recipe.Hops.Zip(recipe.Hops))
                Assert.InRange(planned.MassG / written.MassG, 0.9, 1.1);
        }
    }

    [Fact]
    public void The_recipes_are_what_they_are_called()
    {
        Assert.Single(Recipe("quayside-amber").Rests);
        Assert.Equal(4, Recipe("harbour-lager").Rests.Length);
        Assert.Equal(
            [HopUse.FirstWort, HopUse.Boil, HopUse.Whirlpool, HopUse.DryHop],
            Recipe("lantern-pale").Hops.Select(h => h.Use).Distinct());
        Assert.Equal(60, Recipe("lantern-pale").Hops[0].Minutes);

        // room taken by grain: 0.67 L/kg, common practice
        var tun = Profiles.Brewhouse(Profiles.FindBrewhouse("Quayside 65")).MashTun;
        var mashL = Recipe("breakwater-strong").MashKg * (3 + 0.67);
        Assert.InRange(mashL, 0.9 * tun.WorkingL, tun.WorkingL - tun.DeadSpaceL);
    }

    private static ProfileFolder Profiles => ProfileFolder.BesideProgram(Nowhere);

    private static Recipe Recipe(string name) => Profiles.Recipe(Profiles.FindRecipe(name));
}
