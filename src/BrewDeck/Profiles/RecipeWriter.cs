using BrewDeck.Core.Recipes;

namespace BrewDeck.Profiles;

/// <summary>Writes a recipe as commented TOML, key by key from the schema.</summary>
internal static class RecipeWriter
{
    public static string Write(Recipe recipe)
    {
        var toml = new TomlText(RecipeSchema.Keys);
        toml.Put("name", recipe.Name);
        toml.PutUnlessEmpty("author", recipe.Author);
        toml.PutUnlessEmpty("style", recipe.Style);
        toml.PutUnlessEmpty("notes", recipe.Notes);
        toml.Put("batch", recipe.BatchL);
        toml.Put("original_gravity", recipe.OriginalGravitySg);
        toml.Put("bitterness", recipe.BitternessIbu);
        toml.Put("mash_thickness", recipe.MashThicknessLPerKg);
        toml.Put("boil", recipe.BoilMin);
        toml.Put("stand", recipe.StandMin);
        foreach (var line in recipe.Grist)
            Grist(toml.Section("grist"), line);
        foreach (var rest in recipe.Rests)
            Rest(toml.Section("rest"), rest);
        foreach (var hop in recipe.Hops)
            Hop(toml.Section("hop"), hop);
        foreach (var other in recipe.Others)
            Other(toml.Section("addition"), other);
        Yeast(toml.Section("yeast"), recipe.Yeast);
        if (recipe.Water is { } water)
            WaterTargetFile.Write(toml.Section("water"), water);
        return toml.ToString();
    }

    private static void Grist(TomlText toml, GristLine line)
    {
        toml.Put("name", line.Name);
        toml.Put("amount", line.MassKg);
        toml.Put("extract", line.ExtractFraction);
        toml.Put("moisture", line.MoistureFraction);
        toml.Put("colour", line.ColourEbc);
        toml.Put("use", line.Use == GristUse.Mash ? "mash" : "kettle");
        toml.PutUnlessEmpty("kind", line.Kind?.ToString().ToLowerInvariant() ?? "");
    }

    private static void Rest(TomlText toml, MashRest rest)
    {
        toml.Put("name", rest.Name);
        toml.Put("temperature", rest.TempC);
        toml.Put("time", rest.Minutes);
    }

    private static void Hop(TomlText toml, HopAddition hop)
    {
        toml.Put("name", hop.Name);
        toml.Put("amount", hop.MassG);
        toml.Put("alpha", hop.AlphaFraction);
        toml.Put("form", hop.Form == HopForm.Cone ? "cone" : "pellet");
        toml.Put("use", RecipeSchema.HopUses[(int)hop.Use]);
        toml.Put("time", hop.Minutes);
    }

    private static void Other(TomlText toml, OtherAddition other)
    {
        toml.Put("name", other.Name);
        toml.Put("amount", Deck.QuantityReader.Text(other.Amount, other.Unit));
        toml.Put("use", RecipeSchema.AdditionUses[(int)other.Use]);
        toml.Put("time", other.Minutes);
    }

    private static void Yeast(TomlText toml, Yeast yeast)
    {
        toml.Put("name", yeast.Name);
        toml.Put("attenuation", yeast.AttenuationFraction);
        toml.Put("pitch_temperature", yeast.PitchC);
        toml.Put("pitch_rate", yeast.PitchRateMillionPerMlPlato);
    }
}
