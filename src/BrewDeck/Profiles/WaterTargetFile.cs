using BrewDeck.Core.Waters;
using BrewDeck.Deck;
using static BrewDeck.Profiles.SchemaKey;

namespace BrewDeck.Profiles;

/// <summary>Reads a water target: a file of its own, or the table of a recipe.</summary>
public static class WaterTargetFile
{
    private static readonly SchemaKey[] Aims =
    [
        Ion("calcium", "70 to 120 mg/L"),
        Ion("magnesium", "0 to 20 mg/L"),
        Ion("sodium", "0 to 40 mg/L"),
        Ion("chloride", "50 to 70 mg/L"),
        Ion("sulphate", "140 to 180 mg/L"),
        Ion("bicarbonate", "0 to 60 mg/L"),
        new Span(new("residual_alkalinity", Dimension.Concentration, "mg/L", -500, 500, "-20 to 20 mg/L", "As CaCO3, of the strike liquor; or write mash_ph.", Required: false)),
        new Quantity("sulphate_to_chloride", Dimension.Number, "", 0.05, 20, "2", "Ratio by mass.", Required: false),
        new Quantity("mash_ph", Dimension.Acidity, "pH", 5, 6, "5.4", "At room temperature; salts and acid of the strike liquor are to reach it.", Required: false),
        new Quantity("sparge_ph", Dimension.Acidity, "pH", 5, 7, "5.6", "Acid takes the sparge liquor there.", Required: false),
        new Quantity("sparge_alkalinity", Dimension.Concentration, "mg/L", 0, 500, "25 mg/L", "As CaCO3, what acid leaves in the sparge liquor; or write sparge_ph.", Required: false),
    ];

    internal static readonly SchemaKey[] Keys = [new Text("name", "Pale and hoppy", "Shown when the day is chosen."), .. Aims];

    /// <summary>Of a recipe: the name may be left out.</summary>
    internal static readonly Section OfRecipe = new(
        "water", [new Text("name", "Pale and hoppy", "Shown with the plan.", Required: false), .. Aims],
        "What the water is to become, for days with an analysis of it.", Least: 0, Many: false);

    /// <exception cref="ProfileException">The first thing wrong.</exception>
    public static WaterTarget Read(string text, string file) => Of(SchemaReader.Read(text, file, Keys));

    internal static WaterTarget Of(SchemaEntry entry)
    {
        OnlyOne(entry, "residual_alkalinity", "mash_ph");
        OnlyOne(entry, "sparge_ph", "sparge_alkalinity");
        return new()
        {
            Name = entry.Text("name"),
            CalciumMgPerL = entry.MaybeBand("calcium"),
            MagnesiumMgPerL = entry.MaybeBand("magnesium"),
            SodiumMgPerL = entry.MaybeBand("sodium"),
            ChlorideMgPerL = entry.MaybeBand("chloride"),
            SulphateMgPerL = entry.MaybeBand("sulphate"),
            BicarbonateMgPerL = entry.MaybeBand("bicarbonate"),
            ResidualAlkalinityAsCaCO3 = entry.MaybeBand("residual_alkalinity"),
            SulphateToChloride = entry.MaybeNumber("sulphate_to_chloride"),
            MashPh = entry.MaybeNumber("mash_ph"),
            SpargePh = entry.MaybeNumber("sparge_ph"),
            SpargeAlkalinityAsCaCO3 = entry.MaybeNumber("sparge_alkalinity"),
        };
    }

    internal static void Write(TomlText toml, WaterTarget target)
    {
        toml.PutUnlessEmpty("name", target.Name);
        toml.Put("calcium", target.CalciumMgPerL);
        toml.Put("magnesium", target.MagnesiumMgPerL);
        toml.Put("sodium", target.SodiumMgPerL);
        toml.Put("chloride", target.ChlorideMgPerL);
        toml.Put("sulphate", target.SulphateMgPerL);
        toml.Put("bicarbonate", target.BicarbonateMgPerL);
        toml.Put("residual_alkalinity", target.ResidualAlkalinityAsCaCO3);
        toml.Put("sulphate_to_chloride", target.SulphateToChloride);
        toml.Put("mash_ph", target.MashPh);
        toml.Put("sparge_ph", target.SpargePh);
        toml.Put("sparge_alkalinity", target.SpargeAlkalinityAsCaCO3);
    }

    private static void OnlyOne(SchemaEntry entry, string one, string other)
    {
        if (entry.Has(one) && entry.Has(other))
            throw entry.Error(other, $"both {one} and {other} are given, and they ask for different acid; leave one out");
    }

    private static Span Ion(string name, string example) =>
        new(new(name, Dimension.Concentration, "mg/L", 0, 1000, example, $"Wanted {name}; left out: as it comes.", Required: false));
}
