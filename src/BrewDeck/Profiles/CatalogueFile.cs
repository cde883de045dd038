using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using static BrewDeck.Profiles.SchemaKey;

namespace BrewDeck.Profiles;

/// <summary>Reads a catalogue file.</summary>
public static class CatalogueFile
{
    private static readonly Texts Also = new("also", ["pale malt", "two-row"], "Other names for the same.");

    internal static readonly SchemaKey[] Keys =
    [
        new Section("fermentable",
        [
            new Text("name", "pale ale malt", "As written in recipes."), Also,
            RecipeSchema.Extract, RecipeSchema.Moisture, RecipeSchema.GristColour, RecipeSchema.Use, RecipeSchema.Kind,
        ], "Malts, adjuncts, sugars and extracts.", Least: 0),
        new Section("hop", [new Text("name", "Cascade", "As written in recipes."), Also, RecipeSchema.Alpha],
            "Hop cultivars.", Least: 0),
        new Section("yeast",
        [
            new Text("name", "clean ale yeast", "As written in recipes."), Also,
            RecipeSchema.Attenuation, RecipeSchema.PitchTemperature, RecipeSchema.PitchRate,
        ], "Types of yeast.", Least: 0),
    ];

    /// <exception cref="ProfileException">The first thing wrong.</exception>
    public static Catalogue Read(string text, string file)
    {
        var entry = SchemaReader.Read(text, file, Keys);
        foreach (var section in (string[])["fermentable", "hop", "yeast"])
            NoDoubles(entry.Many(section), section);
        return new Catalogue
        {
            Fermentables = [.. entry.Many("fermentable").Select(Fermentable)],
            Hops = [.. entry.Many("hop")
                .Select(h => new CatalogueHop(h.Text("name"), [.. h.Texts("also")], Needed(h, "alpha")))],
            Yeasts = [.. entry.Many("yeast").Select(Yeast)],
        };
    }

    private static CatalogueFermentable Fermentable(SchemaEntry entry) => new(
        entry.Text("name"),
        [.. entry.Texts("also")],
        Needed(entry, "extract"),
        Needed(entry, "moisture"),
        Needed(entry, "colour"),
        entry.MaybeText("use") == "kettle" ? GristUse.Kettle : GristUse.Mash)
    {
        Kind = RecipeLines.Kind(entry),
    };

    private static CatalogueYeast Yeast(SchemaEntry entry) => new(
        entry.Text("name"),
        [.. entry.Texts("also")],
        Needed(entry, "attenuation"),
        Needed(entry, "pitch_temperature"),
        Needed(entry, "pitch_rate"));

    /// <summary>Optional in a recipe because the catalogue knows it, so not optional here.</summary>
    private static double Needed(SchemaEntry entry, string key) =>
        entry.MaybeNumber(key)
            ?? throw entry.Error(key,
            $"'{ProfileError.OneLine(entry.Text("name"))}' has no {key}; the catalogue must know it");

    private static void NoDoubles(IReadOnlyList<SchemaEntry> entries, string section)
    {
        var seen = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var entry in entries)
            foreach (var name in entry.Texts("also").Prepend(entry.Text("name")))
                if (!seen.TryAdd(name, entry.Line))
                    throw entry.Error("name",
                        $"{section} '{ProfileError.OneLine(name)}' is on line {seen[name]} already; give each one name");
    }
}
