using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Profiles;

public sealed class ProfileSchemaTests
{
    private const string Begin = "<!-- keys: from ProfileSchema.Markdown() -->\n";

    /// <summary>On failure copy the expected text into profiles/README.md below the mark.</summary>
    [Fact]
    public void The_readme_of_the_profiles_lists_the_keys_that_are_read()
    {
        var readme = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "profiles", "README.md")).ReplaceLineEndings("\n");
        var at = readme.IndexOf(Begin, StringComparison.Ordinal);
        Assert.True(at > 0);
        Assert.Equal(ProfileSchema.Markdown().Trim(), readme[(at + Begin.Length)..].Trim());
    }

    /// <summary>Every example in the description is one that the reader takes.</summary>
    [Fact]
    public void Each_example_is_within_its_own_limits()
    {
        foreach (var key in All(BrewhouseSchema.Keys).Concat(All(RecipeSchema.Keys)).Concat(All(CatalogueFile.Keys)).Concat(All(WaterFile.Keys)).OfType<SchemaKey.Quantity>())
        {
            var read = Deck.QuantityReader.ReadIn(key.Example, key.Dimension, key.Unit);
            Assert.True(read.Ok, $"{key.Name}: {read.Why}");
            Assert.InRange(read.Value, key.Least, key.Most);
            Assert.InRange(key.Default ?? read.Value, key.Least, key.Most);
        }
    }

    private static IEnumerable<SchemaKey> All(SchemaKey[] keys) =>
        keys.SelectMany(k => k is SchemaKey.Section section ? All(section.Keys) : [k]);
}
