using BrewDeck.Core.Waters;

namespace BrewDeck.Profiles;

/// <summary>Writes a water as commented TOML, key by key from the schema.</summary>
internal static class WaterWriter
{
    public static string Write(WaterSupply water)
    {
        var toml = new TomlText(WaterFile.Keys);
        var ions = water.Source.Ions;
        toml.Put("name", water.Source.Name);
        toml.Put("calcium", ions.CalciumMgPerL);
        toml.Put("magnesium", ions.MagnesiumMgPerL);
        toml.Put("sodium", ions.SodiumMgPerL);
        toml.Put("chloride", ions.ChlorideMgPerL);
        toml.Put("sulphate", ions.SulphateMgPerL);
        toml.Put("alkalinity", ions.AlkalinityAsCaCO3);
        toml.Put("ph", water.Source.Ph);
        Shelf(toml.Section("on_hand"), water);
        return toml.ToString();
    }

    private static void Shelf(TomlText toml, WaterSupply water)
    {
        if (!water.Salts.IsEmpty)
            toml.Put("salts", water.Salts.Select(WaterFile.Word));
        toml.Put("acid", water.Acid is { } acid ? WaterFile.Word(acid.Kind) : "none");
        toml.Put("acid_strength", water.Acid?.MassFraction);
        toml.Put("soft_water", water.Soft is null ? "no" : "yes");
        toml.Put("scale", water.ScaleG);
    }
}
