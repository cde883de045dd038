using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;
using BrewDeck.Deck;
using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

public sealed class WaterFileTests
{
    private const string Water = """
        name = "Any tap"
        calcium = "92 mg/L"
        magnesium = "11 ppm"
        sodium = 24
        chloride = "0.04 g/L"
        sulphate = "55 mg/L"
        bicarbonate = "250 mg/L"
        """;

    private const string OnHand = """

        [on_hand]
        salts = ["gypsum", "Calcium chloride"]
        acid = "lactic"
        acid_strength = "80 %"
        soft_water = "yes"
        """;

    private const string Target = """
        name = "Any target"
        calcium = "70 to 130 mg/L"
        sulphate = "150 mg/L"
        chloride = 50
        residual_alkalinity = "-20 to 20"
        sulphate_to_chloride = "2"
        sparge_ph = "5.6"
        """;

    private static ProfileFolder Bundled => ProfileFolder.BesideProgram(Path.Combine(Path.GetTempPath(), "brewdeck-no-such-folder"));

    [Fact]
    public void A_water_reads_with_what_is_on_hand()
    {
        var supply = WaterFile.Read(Water + OnHand, "any.toml");
        Assert.Equal(new WaterIons(92, 11, 24, 40, 55, supply.Source.Ions.AlkalinityAsCaCO3), supply.Source.Ions);
        Assert.Equal(250, supply.Source.Ions.BicarbonateMgPerL, 9);
        Assert.Equal([BrewingSalt.Gypsum, BrewingSalt.CalciumChlorideDihydrate], supply.Salts);
        Assert.Equal((new AcidOnHand(AcidKind.Lactic, 0.8), SourceWater.Distilled, 0.1, 7.5), (supply.Acid, supply.Soft, supply.ScaleG, supply.Source.Ph));
    }

    [Fact]
    public void Without_a_shelf_nothing_is_on_hand()
    {
        var supply = WaterFile.Read(Water, "any.toml");
        Assert.True(supply.Salts.IsEmpty && supply.Acid is null && supply.Soft is null);
    }

    [Fact]
    public void A_target_reads_bands_and_points()
    {
        var target = WaterTargetFile.Read(Target, "any.toml");
        Assert.Equal(new Band(70, 130), target.CalciumMgPerL);
        Assert.Equal(new Band(150, 150), target.SulphateMgPerL);
        Assert.Equal(new Band(50, 50), target.ChlorideMgPerL);
        Assert.Equal(new Band(-20, 20), target.ResidualAlkalinityAsCaCO3);
        Assert.Null(target.SodiumMgPerL);
        Assert.Equal((2.0, null, 5.6), (target.SulphateToChloride, target.MashPh, target.SpargePh));
    }

    [Theory]
    [InlineData("bicarbonate = \"250 mg/L\"", "", "any.toml:1: bicarbonate is missing")]
    [InlineData("bicarbonate", "alkalinity = \"205\"\nbicarbonate", "any.toml:7: both bicarbonate and alkalinity are given")]
    [InlineData("salts = [\"gypsum\"", "salts = [\"gipsum\"", "any.toml:9: on_hand.salts is 'gipsum'; it must be gypsum,")]
    [InlineData("acid_strength = \"80 %\"", "", "any.toml:10: acid is lactic without a strength")]
    [InlineData("acid_strength = \"80 %\"", "acid_strength = \"98 %\"", "any.toml:11: on_hand.acid_strength is 0.98")]
    [InlineData("calcium = \"92 mg/L\"", "calcium = \"-4 mg/L\"", "any.toml:2: calcium is -4 mg/L; it must be 0 to 1000 mg/L")]
    [InlineData("calcium = \"92 mg/L\"", "calcium = \"92 °dH\"", "any.toml:2: calcium: '°dH' is no unit of concentration")]
    [InlineData("calcium", "calzium", "any.toml:2: unknown key calzium; did you mean calcium?")]
    public void What_is_wrong_with_a_water_is_one_line(string text, string instead, string says)
    {
        var bad = (Water + OnHand).Replace(text, instead, StringComparison.Ordinal);
        var e = Assert.Throws<ProfileException>(() => WaterFile.Read(bad, "any.toml"));
        Assert.StartsWith(says, e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', e.Message);
    }

    [Theory]
    [InlineData("70 to 130 mg/L", "130 to 70 mg/L", "any.toml:2: calcium goes from 130 mg/L down to 70 mg/L; write the smaller one first")]
    [InlineData("70 to 130 mg/L", "70 to 90 to 130", "any.toml:2: calcium is '70 to 90 to 130'; write calcium = \"70 to 120 mg/L\"")]
    [InlineData("70 to 130 mg/L", "some to 130", "any.toml:2: calcium: 'some' does not begin with a number")]
    [InlineData("sparge_ph", "mash_ph = \"5.4\"\nsparge_ph", "any.toml:7: both residual_alkalinity and mash_ph are given")]
    [InlineData("sparge_ph", "sparge_alkalinity = 30\nsparge_ph", "any.toml:7: both sparge_ph and sparge_alkalinity are given")]
    public void What_is_wrong_with_a_target_is_one_line(string text, string instead, string says)
    {
        var bad = Target.Replace(text, instead, StringComparison.Ordinal);
        var e = Assert.Throws<ProfileException>(() => WaterTargetFile.Read(bad, "any.toml"));
        Assert.StartsWith(says, e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', e.Message);
    }

    [Fact]
    public void A_recipe_keeps_its_target_and_the_kinds_of_its_malts()
    {
        var recipe = Bundled.Recipe(Bundled.FindRecipe("lantern-pale"));
        Assert.Equal(new Band(140, 200), recipe.Water!.SulphateMgPerL);
        Assert.Equal([null, MaltKind.Wheat, MaltKind.Wheat], recipe.Grist.Select(g => g.Kind));
        var again = RecipeFile.Read(RecipeFile.Write(recipe), "again.toml", Catalogue.Empty);
        Assert.Equal(recipe.Water, again.Water);
        Assert.Equal(recipe.Grist, again.Grist);
        Assert.Equal(RecipeFile.Write(recipe), RecipeFile.Write(again));
    }

    [Fact]
    public void A_target_comes_back_as_written()
    {
        var recipe = Bundled.Recipe(Bundled.FindRecipe("lantern-pale")) with { Water = WaterTargetFile.Read(Target, "any.toml") };
        Assert.Equal(recipe.Water, RecipeFile.Read(RecipeFile.Write(recipe), "again.toml", Catalogue.Empty).Water);
    }

    [Fact]
    public void The_description_names_the_files_and_their_keys()
    {
        var text = ProfileSchema.Markdown();
        Assert.Contains("### Water file (`waters/*.toml`)", text, StringComparison.Ordinal);
        Assert.Contains("### Water target file (`water-targets/*.toml`)", text, StringComparison.Ordinal);
        Assert.Contains("| `sulphate` | `\"140 to 180 mg/L\"` | 0 to 1000 mg/L; optional |", text, StringComparison.Ordinal);
        Assert.Contains("`[water]` (may be left out)", text, StringComparison.Ordinal);
    }

    public static TheoryData<string, string> Pairs => new(
        from water in Bundled.Waters()
        from target in Bundled.WaterTargets()
        select (water.Name, target.Name));

    /// <summary>Each bundled water can be brought to each bundled target, within what is safe, on the bundled brewhouse.</summary>
    [Theory]
    [MemberData(nameof(Pairs))]
    public void Every_bundled_water_reaches_every_bundled_target(string water, string target)
    {
        var choices = new DayChoices
        {
            Water = Bundled.Water(Bundled.FindWater(water)),
            WaterTarget = Bundled.WaterTarget(Bundled.FindWaterTarget(target)),
        };
        var recipe = Bundled.Recipe(Bundled.FindRecipe(target == "Dark and full" ? "breakwater-strong" : "quayside-amber"));
        var drawn = Assert.IsType<PlanResult.Drawn>(Planner.Draw(Bundled.Brewhouse(Bundled.FindBrewhouse("quayside-65")), recipe, choices));
        var treated = drawn.Plan.Water!;
        Near(treated.Target.CalciumMgPerL, treated.Strike.Ions.CalciumMgPerL);
        Near(treated.Target.SodiumMgPerL, treated.Strike.Ions.SodiumMgPerL);
        Near(treated.Target.ChlorideMgPerL, treated.Strike.Ions.ChlorideMgPerL);
        Near(treated.Target.SulphateMgPerL, treated.Strike.Ions.SulphateMgPerL);
        Near(treated.Target.ResidualAlkalinityAsCaCO3, treated.Strike.Ions.ResidualAlkalinityAsCaCO3);
        if (treated.Target.MashPh is { } ph)
            Assert.Equal(ph, treated.MashPh, 0.02);
        if (treated.Target.SulphateToChloride is { } ratio)
            Assert.Equal(ratio, treated.Strike.Ions.SulphateToChloride!.Value, 0.1);
        Assert.All(drawn.Plan.Limits.Where(l => l.Name.StartsWith("water_", StringComparison.Ordinal) && !l.Name.Contains("ph", StringComparison.Ordinal)), l => Assert.True(l.Ok, $"{l}"));
    }

    [Fact]
    public void There_are_two_waters_and_four_targets()
    {
        Assert.Equal(["Hillside spring", "Quayside tap"], Bundled.Waters().Select(e => e.Name));
        Assert.Equal(["Dark and full", "Pale and hoppy", "Round amber", "Soft lager"], Bundled.WaterTargets().Select(e => e.Name));
    }

    // five mg/L more or less is what a scale of a tenth of a gram and three ions at once leave open
    private static void Near(Band? wanted, double value)
    {
        if (wanted is { } band)
            Assert.InRange(value, band.Least - 5, band.Most + 5);
    }
}
