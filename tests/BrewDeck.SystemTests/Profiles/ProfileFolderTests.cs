using BrewDeck.Core.Planning;
using BrewDeck.Deck;
using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

public sealed class ProfileFolderTests : IDisposable
{
    private readonly string _own = Directory.CreateTempSubdirectory("brewdeck-own-").FullName;

    public void Dispose() => Directory.Delete(_own, recursive: true);

    [Fact]
    public void Own_files_come_first_and_count_before_bundled_ones_of_the_same_name()
    {
        Own("recipes/zebra.toml", "# mine\nname = \"Zebra Stout\"\nand then nothing that could be parsed");
        Own("recipes/quayside-amber.toml", "name = \"My Amber\"");
        var names = Profiles.Recipes().Select(e => e.Name).ToArray();
        Assert.Equal(["My Amber", "Zebra Stout", "Breakwater Strong", "Harbour Lager", "Lantern Pale"], names);
    }

    [Fact]
    public void The_first_brewhouse_and_the_first_recipe_are_the_everyday_pair_and_can_be_brewed_together()
    {
        var (house, recipe) = (Profiles.Brewhouses()[0], Profiles.Recipes()[0]);

        Assert.Equal((Profiles.FindBrewhouse(ProfileFolder.EverydayBrewhouse), Profiles.FindRecipe(ProfileFolder.EverydayRecipe)), (house, recipe));
        Assert.IsType<PlanResult.Drawn>(Planner.Draw(Profiles.Brewhouse(house), Profiles.Recipe(recipe), new DayChoices()));
    }

    [Fact]
    public void A_file_without_a_name_is_listed_by_its_file_name()
    {
        Own("recipes/odd.toml", "[[grist]]\nname = \"malt\"");
        Assert.Contains("odd", Profiles.Recipes().Select(e => e.Name));
    }

    [Fact]
    public void A_broken_file_is_told_with_its_path_when_it_is_opened()
    {
        Own("recipes/broken.toml", "name = \"Broken\"\nbatch = 40 L\n");
        var entry = Profiles.FindRecipe("broken");
        var message = Assert.Throws<ProfileException>(() => Profiles.Recipe(entry)).Message;
        Assert.StartsWith(Path.Combine(_own, "recipes", "broken.toml") + ":2: not TOML", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("quayside-amber")]
    [InlineData("Quayside Amber")]
    [InlineData("QUAYSIDE AMBER")]
    public void Recipes_are_found_by_file_name_and_by_name(string asked) => Assert.Equal("Quayside Amber", Profiles.FindRecipe(asked).Name);

    [Fact]
    public void Recipes_are_found_by_path()
    {
        Own("elsewhere.toml", "name = \"Elsewhere\"");
        Assert.Equal("Elsewhere", Profiles.FindRecipe(Path.Combine(_own, "elsewhere.toml")).Name);
    }

    [Fact]
    public void What_is_not_there_is_told_with_the_nearest()
    {
        Assert.Equal("quaiside-amber: there is no such recipe file; did you mean quayside-amber?", Missing(() => Profiles.FindRecipe("quaiside-amber")));
        Assert.StartsWith("zzz: there is no such brewhouse file; there are quayside-65, quayside-65-coil, ", Missing(() => Profiles.FindBrewhouse("zzz")), StringComparison.Ordinal);
        Assert.Equal("/no/such.toml: there is no such file; check the name", Missing(() => Profiles.Recipe(new("x", "/no/such.toml"))));
        Assert.StartsWith(_own + ": may not be read", Missing(() => Profiles.Recipe(new("x", _own))), StringComparison.Ordinal);
    }

    [Fact]
    public void The_brewers_own_catalogue_counts_first()
    {
        Own("catalogue.toml", "[[hop]]\nname = \"Saaz\"\nalpha = \"4.2 %\"\n[[hop]]\nname = \"Garden hop\"\nalpha = \"3 %\"\n");
        Assert.Equal(0.042, Profiles.Catalogue.Hop("saaz")!.AlphaFraction);
        Assert.Equal(0.03, Profiles.Catalogue.Hop("garden hop")!.AlphaFraction);
        Assert.Equal(0.045, Profiles.Catalogue.Hop("Fuggle")!.AlphaFraction);
    }

    [Fact]
    public void The_catalogue_is_of_a_useful_size_and_plausible()
    {
        var catalogue = Profiles.Catalogue;
        Assert.True(catalogue.Fermentables.Length >= 40 && catalogue.Hops.Length >= 35 && catalogue.Yeasts.Length >= 12);
        Assert.All(catalogue.Hops, h => Assert.InRange(h.AlphaFraction, 0.02, 0.18));
        Assert.All(catalogue.Yeasts, y => Assert.InRange(y.AttenuationFraction, 0.65, 0.9));
        Assert.All(catalogue.Fermentables, f => Assert.InRange(f.ExtractFraction, 0.6, 1));
    }

    private ProfileFolder Profiles => ProfileFolder.BesideProgram(_own);

    private static string Missing(Action act) => Assert.Throws<ProfileException>(act).Message;

    private void Own(string name, string text)
    {
        var path = Path.Combine(_own, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}
