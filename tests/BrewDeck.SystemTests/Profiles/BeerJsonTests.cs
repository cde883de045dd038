using System.Text.Json;
using System.Text.Json.Nodes;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using BrewDeck.Profiles;
using CsCheck;

namespace BrewDeck.SystemTests.Profiles;

public sealed class BeerJsonTests
{
    public static TheoryData<string> Documents => [.. BeerJsonFiles.Documents];

    /// <summary>Each either gives recipes that our own files can hold, or one clear line.</summary>
    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_example_document_is_read_or_refused_with_a_reason(string name)
    {
        var json = BeerJsonFiles.Document(name);
        using var document = JsonDocument.Parse(json);
        var holdsRecipe = document.RootElement.GetProperty("beerjson").TryGetProperty("recipes", out var recipes) && recipes.GetArrayLength() > 0 && name != "real-IrishMoss.json";
        if (!holdsRecipe)
        {
            var message = Assert.Throws<ProfileException>(() => BeerJsonReader.Read(json, name)).Message;
            Assert.StartsWith(name == "real-IrishMoss.json" ? $"{name}:4: /beerjson/recipes/0 has no name" : $"{name}:1: no recipe in it", message, StringComparison.Ordinal);
            return;
        }

        var converted = BeerJsonReader.Read(json, name, ProfileFolder.BesideProgram("/nowhere").Catalogue);
        var recipe = Assert.Single(converted.Recipes);
        RecipeEquality.AssertSame(recipe, RecipeFile.Read(RecipeFile.Write(recipe), "r.toml", Catalogue.Empty));
        Assert.All(converted.Notes, n => Assert.StartsWith("/beerjson/recipes/0", n, StringComparison.Ordinal));
    }

    /// <summary>Every leaf of a document was carried over or stands in a note, itself or as part of something larger.</summary>
    [Theory]
    [MemberData(nameof(Documents))]
    public void Nothing_is_lost_in_silence(string name)
    {
        var root = JsonSource.Read(BeerJsonFiles.Document(name), name);
        var all = Leaves(root).Where(l => !string.IsNullOrWhiteSpace(l.Text)).ToArray();
        Assert.Equal(all, root.Left().SelectMany(Leaves).Where(l => !string.IsNullOrWhiteSpace(l.Text)));
        all[0].Take();
        Assert.Equal(all.Skip(1), root.Left().SelectMany(Leaves).Where(l => !string.IsNullOrWhiteSpace(l.Text)));
    }

    [Fact]
    public void What_was_not_carried_over_is_told_line_by_line() => Assert.Equal(
    [
        "/beerjson/recipes/0/efficiency: carried over as the original gravity that it gives, 1.0518",
        "/beerjson/recipes/0: does not give all about its yeast: ale yeast, attenuation 75 %, pitching at 18 °C assumed",
        "/beerjson/recipes/0/mash/name: 'M' not carried over",
        "/beerjson/recipes/0/mash/grain_temperature: 20 C not carried over: it is chosen on the day",
    ],
    BeerJsonReader.Read(BeerJsonFiles.Document("minimal-minimal_recipe.json")).Notes);

    /// <summary>5 kg of 80 % at 4 % moisture and 70 %: 2.69 kg in 20 L, 12.8 °P, 1.052 SG.</summary>
    [Fact]
    public void An_efficiency_becomes_the_gravity_that_it_gives() =>
        Assert.Equal(1.0518, Assert.Single(BeerJsonReader.Read(BeerJsonFiles.Document("minimal-minimal_recipe.json")).Recipes).OriginalGravitySg!.Value, 0.0002);

    [Fact]
    public void Steps_of_the_boil_tell_first_wort_and_whirlpool_hops()
    {
        var firstWort = Assert.Single(BeerJsonReader.Read(BeerJsonFiles.Document("real-FirstWortHopAddition.json")).Recipes);
        Assert.All(firstWort.Hops, h => Assert.Equal((HopUse.FirstWort, 105), (h.Use, h.Minutes)));
        var whirlpool = Assert.Single(BeerJsonReader.Read(BeerJsonFiles.Document("real-CheaterHops.json")).Recipes);
        Assert.Equal(
            [HopUse.Boil, HopUse.Whirlpool, HopUse.Whirlpool, HopUse.Whirlpool, HopUse.DryHop, HopUse.DryHop, HopUse.DryHop, HopUse.DryHop],
            whirlpool.Hops.Select(h => h.Use));
        Assert.Equal([15, 30, 30, 30, 4320, 4320, 0, 0], whirlpool.Hops.Select(h => h.Minutes));
        Assert.Equal(30, whirlpool.StandMin);
    }

    [Fact]
    public void Boil_steps_that_a_plan_draws_itself_are_told()
    {
        var notes = BeerJsonReader.Read(BeerJsonFiles.Document("real-CheaterHops.json")).Notes;
        Assert.Contains("/beerjson/recipes/0/boil/boil_steps/0: 'preboil', 10 min from 67.7778 to 100 °C: a plan draws its own", notes);
        Assert.Contains("/beerjson/recipes/0/boil/boil_steps/2: '30 min whirlpool' from 100 to 82.2222 °C: carried over as a stand that cools by itself", notes);
        Assert.Contains(
            "/beerjson/recipes/0/boil/boil_steps/0: 'boil' of 60 min not carried over: boil_time says 105 min",
            BeerJsonReader.Read(BeerJsonFiles.Document("real-KettleSour.json")).Notes);
    }

    /// <summary>What we wrote ourselves reads back without a word on boil, mash steps and hops.</summary>
    [Fact]
    public void Reading_our_own_document_tells_only_what_the_standard_asked_for_on_top()
    {
        var profiles = ProfileFolder.BesideProgram("/nowhere");
        var written = BeerJsonWriter.Write(profiles.Recipe(profiles.FindRecipe("lantern-pale"))).Text;
        Assert.DoesNotContain(BeerJsonReader.Read(written).Notes, n =>
            n.Contains("/boil", StringComparison.Ordinal) || n.Contains("mash_steps", StringComparison.Ordinal) || n.Contains("hop_additions", StringComparison.Ordinal));
    }

    [Fact]
    public void Pounds_and_Fahrenheit_are_rounded_to_what_can_be_read()
    {
        var recipe = Assert.Single(BeerJsonReader.Read(BeerJsonFiles.Document("real-BrettDosedKegsSaison.json")).Recipes);
        Assert.Equal(20.8198, recipe.BatchL);
        Assert.Equal([55, 62.7778, 67.7778], recipe.Rests.Select(r => r.TempC));
        Assert.Equal(32.602, recipe.Hops[0].MassG);
    }

    [Fact]
    public void Written_documents_are_valid_and_read_back_to_the_same_recipe()
    {
        var profiles = ProfileFolder.BesideProgram("/nowhere");
        foreach (var recipe in profiles.Recipes().Select(profiles.Recipe))
        {
            var written = BeerJsonWriter.Write(recipe).Text;
            Assert.True(BeerJsonFiles.IsValid(written));
            RecipeEquality.AssertSame(WithUsualRate(recipe), WithGravity(Assert.Single(BeerJsonReader.Read(written).Recipes), recipe));
        }
    }

    [Fact]
    public void Any_recipe_written_is_valid_and_reads_back_the_same() => AnyRecipe.Any.Select(Believable).Sample(
        recipe =>
        {
            var written = BeerJsonWriter.Write(recipe).Text;
            Assert.True(BeerJsonFiles.IsValid(written));
            Recipe read;
            try
            {
                read = Assert.Single(BeerJsonReader.Read(written).Recipes);
            }
            catch (ProfileException e) when (recipe.OriginalGravitySg is null)
            {
                // 75 % of an absurd grist in a small batch is a gravity past belief
                Assert.Contains("original_gravity", e.Message, StringComparison.Ordinal);
                return;
            }

            AssertNear(recipe, WithGravity(read, recipe));
        },
        iter: 60);

    [Fact]
    public void Several_recipes_go_into_one_document()
    {
        var profiles = ProfileFolder.BesideProgram("/nowhere");
        var recipes = profiles.Recipes().Select(profiles.Recipe).ToArray();
        var written = BeerJsonWriter.Write(recipes).Text;
        Assert.True(BeerJsonFiles.IsValid(written));
        Assert.Equal(recipes.Select(r => r.Name), BeerJsonReader.Read(written).Recipes.Select(r => r.Name));
    }

    [Theory]
    [InlineData("", "document:1: is empty; a BeerJSON document begins {\"beerjson\":")]
    [InlineData("[]", "document:1: has no member beerjson; a BeerJSON document begins {\"beerjson\":")]
    [InlineData("{\n\"beerjson\": {\n\"version\": \"1\"}}", "document:3: /beerjson/version is '1'; it must be a number such as 1.0")]
    [InlineData("{\"beerjson\": {}}", "document:1: /beerjson has no version; BeerJSON requires it")]
    [InlineData("{\"beerjson\": {\"version\": 1}}", "document:1: no recipe in it; a document with a list of recipes is wanted")]
    [InlineData("{\"beerjson\": {\"version\": 1,\n\"version\": 1}}", "document:2: /beerjson/version is given twice; keep one")]
    [InlineData("{\"beerjson\": {\"version\": 1, \"recipes\": [{}]}}", "document:1: /beerjson/recipes/0 has no name; BeerJSON requires it")]
    [InlineData("{\"beerjson\": {\"version\": 1}} trailing", "document:1: is not JSON ('t' is invalid after a single JSON value. Expected end of da…); check it with the program that wrote it")]
    [InlineData("{\"beerjson\": {\"version\": 1, \"x\": \"\\ud800\"}}", "document:1: has half a character in a text; save it as UTF-8")]
    public void Bad_documents_give_one_clear_line(string json, string line) =>
        Assert.Equal(line, Assert.Throws<ProfileException>(() => BeerJsonReader.Read(json)).Message);

    [Theory]
    [InlineData("batch_size", "{\"unit\": \"l\", \"value\": -20}", "/beerjson/recipes/0/batch_size is -20 l; it must be 1 to 2000 L")]
    [InlineData("ingredients/hop_additions/0/amount", "{\"unit\": \"kg\", \"value\": 45}", "/beerjson/recipes/0/ingredients/hop_additions/0/amount is 45 kg in a batch of 40 L; it must be at most 4 kg")]
    [InlineData("ingredients/hop_additions/0/alpha_acid", "{\"unit\": \"%\", \"value\": 450}", "/beerjson/recipes/0/ingredients/hop_additions/0/alpha_acid is 450 %; it must be 0 to 30 %")]
    [InlineData("ingredients/fermentable_additions/0/amount", "{\"unit\": \"kg\", \"value\": -3.2}", "/beerjson/recipes/0/ingredients/fermentable_additions/0/amount is -3.2 kg; it must be 0.001 to 1000 kg")]
    [InlineData("ingredients/fermentable_additions/0/amount", "{\"unit\": \"kg\", \"value\": 700}", "/beerjson/recipes/0/ingredients/fermentable_additions/0/amount is 700 kg in a batch of 40 L; it must be at most 80 kg")]
    public void A_number_that_cannot_be_right_is_named_by_its_place(string place, string value, string line)
    {
        var profiles = ProfileFolder.BesideProgram("/nowhere");
        var document = JsonNode.Parse(BeerJsonWriter.Write(profiles.Recipe(profiles.Recipes()[0]) with { BatchL = 40 }).Text)!;
        var parts = place.Split('/');
        var at = parts[..^1].Aggregate(document["beerjson"]!["recipes"]![0]!, (n, p) => int.TryParse(p, out var i) ? n[i]! : n[p]!);
        at[parts[^1]] = JsonNode.Parse(value);
        var text = document.ToJsonString();
        var refused = Assert.Throws<ProfileException>(() => BeerJsonReader.Read(text, "d.json")).Message;
        Assert.Equal($"d.json:1: {line}", refused);
    }

    /// <summary>Any recipe, brewed large enough for its malt and hops to be believed of it.</summary>
    private static Recipe Believable(Recipe recipe) => recipe with
    {
        BatchL = Math.Max(recipe.BatchL, Math.Ceiling(Math.Max(
            recipe.Grist.Max(g => g.MassKg) / 2, recipe.Hops.Select(h => h.MassG / 100).DefaultIfEmpty(0).Max()))),
    };

    private static IEnumerable<SourceNode> Leaves(SourceNode node) => node.Parts.Count == 0 ? [node] : node.Parts.SelectMany(Leaves);

    /// <summary>BeerJSON has a type of yeast and no pitch rate.</summary>
    private static Recipe WithUsualRate(Recipe recipe) => recipe with
    {
        // no place in BeerJSON: the writer's notes say so
        Water = null,
        Grist = [.. recipe.Grist.Select(g => g with { Kind = null })],
        Yeast = recipe.Yeast with { PitchRateMillionPerMlPlato = recipe.Yeast.PitchRateMillionPerMlPlato > 1.2 ? 1.5 : 0.75 },
    };

    /// <summary>BeerJSON requires an efficiency, so a recipe without a wanted gravity comes back with one.</summary>
    private static Recipe WithGravity(Recipe read, Recipe original) =>
        original.OriginalGravitySg is null ? read with { OriginalGravitySg = null } : read;

    private static void AssertNear(Recipe expected, Recipe actual)
    {
        Assert.Equal(expected.Name, actual.Name);
        Assert.Equal(expected.Notes, actual.Notes);
        Assert.Equal(expected.OriginalGravitySg, actual.OriginalGravitySg);
        Assert.Equal(expected.BitternessIbu, actual.BitternessIbu);
        Assert.Equal(expected.StandMin, actual.StandMin);
        Assert.Equal(expected.Rests, actual.Rests);
        Assert.Equal(expected.Hops, actual.Hops);
        Assert.Equal(expected.Others, actual.Others);
        Assert.Equal(expected.Yeast, actual.Yeast);
        foreach (var (a, b) in expected.Grist.Zip(actual.Grist))
        {
            // kilograms go through grams: twelve digits stay
            Assert.Equal(a.MassKg, b.MassKg, 1e-11 * a.MassKg);
            Assert.Equal(a with { MassKg = 0 }, b with { MassKg = 0 });
        }
    }
}
