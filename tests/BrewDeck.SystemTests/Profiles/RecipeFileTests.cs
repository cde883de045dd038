using BrewDeck.Core.Recipes;
using BrewDeck.Profiles;
using CsCheck;

namespace BrewDeck.SystemTests.Profiles;

public sealed class RecipeFileTests
{
    private static readonly Catalogue Catalogue = ProfileFolder.BesideProgram("/nowhere").Catalogue;

    [Fact]
    public void Any_recipe_written_reads_back_equal() => AnyRecipe.Any.Sample(recipe =>
        RecipeEquality.AssertSame(recipe, RecipeFile.Read(RecipeFile.Write(recipe), "r.toml", Catalogue.Empty)));

    [Fact]
    public void Bundled_recipes_written_read_back_equal()
    {
        var profiles = ProfileFolder.BesideProgram("/nowhere");
        foreach (var recipe in profiles.Recipes().Select(profiles.Recipe))
            RecipeEquality.AssertSame(recipe, RecipeFile.Read(RecipeFile.Write(recipe), "r.toml", Catalogue.Empty));
    }

    [Fact]
    public void A_written_recipe_is_commented_once_a_kind_of_line()
    {
        var profiles = ProfileFolder.BesideProgram("/nowhere");
        var text = RecipeFile.Write(profiles.Recipe(profiles.FindRecipe("lantern-pale")));
        Assert.Contains("\nbatch = \"40 L\"  # Cold wort into the fermenter.\n", text, StringComparison.Ordinal);
        Assert.Contains("\nalpha = \"6 %\"  # Alpha acid; the bag says it.\n", text, StringComparison.Ordinal);
        Assert.Contains("\nalpha = \"12.5 %\"\n", text, StringComparison.Ordinal);
        Assert.Equal(1, text.Split("# The hop additions.").Length - 1);
    }

    [Fact]
    public void A_name_and_an_amount_are_enough()
    {
        var recipe = RecipeFile.Read(
            """
            name = "Short"
            batch = "5 gal"
            boil = "1 h"
            grist = [{ name = "Pale Malt", amount = "9 lb 8 oz" }, { name = "table sugar", amount = "1 lb" }]
            rest = [{ name = "rest", temperature = "152.6 °F", time = "1:00" }]
            hop = [{ name = "fuggles", amount = "1.5 oz", time = "60" }, { name = "Saaz", amount = "1 oz", use = "dry hop", time = "4 d" }]
            yeast.name = "Lager Yeast"
            """,
            "r.toml",
            Catalogue);
        Assert.Equal(new GristLine("Pale Malt", 4.30912751500, 0.805, 0.04, 6, GristUse.Mash), recipe.Grist[0]);
        Assert.Equal(GristUse.Kettle, recipe.Grist[1].Use);
        Assert.Equal(new MashRest("rest", 67, 60), recipe.Rests[0]);
        Assert.Equal(0.045, recipe.Hops[0].AlphaFraction);
        Assert.Equal(60, recipe.Hops[0].Minutes);
        Assert.Equal(4 * 24 * 60, recipe.Hops[1].Minutes);
        Assert.Equal(new Yeast("Lager Yeast", 0.77, 10, 1.5), recipe.Yeast);
        Assert.Equal(15, recipe.StandMin);
        Assert.Null(recipe.OriginalGravitySg);
    }

    /// <summary>The same recipe told in °F, pounds and gallons or in °C, kilograms and litres is the same recipe.</summary>
    [Fact]
    public void Units_do_not_change_a_recipe() => Gen.Select(Gen.Int[200, 840], Gen.Int[2, 400]).Sample((tenths, quarts) =>
    {
        var celsius = tenths / 10m;
        var litres = quarts * 0.946352946m;
        RecipeEquality.AssertSame(With($"{celsius} °C", $"{litres} L"), With($"{celsius * 9 / 5 + 32} °F", $"{quarts} qt"));
    });

    private static Recipe With(string temperature, string batch) => RecipeFile.Read(
        $$"""
        name = "x"
        batch = "{{batch}}"
        boil = "60 min"
        grist = [{ name = "pale malt", amount = "5 kg" }]
        rest = [{ name = "r", temperature = "{{temperature}}", time = "60 min" }]
        yeast.name = "lager yeast"
        """,
        "r.toml",
        Catalogue);
}
