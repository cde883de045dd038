using BrewDeck.Profiles;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>A small BeerJSON document of our own, made for 20 L on some other brewhouse.</summary>
internal static class ImportedRecipe
{
    public const string Name = "Ferry Landing Bitter";

    private const string BeerJson = """
        { "beerjson": { "version": 1.0, "recipes": [ {
          "name": "Ferry Landing Bitter", "type": "all grain", "author": "Quayside",
          "batch_size": { "value": 20, "unit": "l" },
          "efficiency": { "brewhouse": { "value": 72, "unit": "%" } },
          "original_gravity": { "value": 1.046, "unit": "sg" },
          "ibu_estimate": { "method": "Tinseth" },
          "boil": { "boil_time": { "value": 60, "unit": "min" } },
          "ingredients": {
            "fermentable_additions": [
              { "name": "pale ale malt", "type": "grain", "color": { "value": 6, "unit": "EBC" },
                "yield": { "fine_grind": { "value": 80, "unit": "%" } }, "amount": { "value": 3.6, "unit": "kg" },
                "timing": { "use": "add_to_mash" } },
              { "name": "crystal malt", "type": "grain", "color": { "value": 120, "unit": "EBC" },
                "yield": { "fine_grind": { "value": 74, "unit": "%" } }, "amount": { "value": 250, "unit": "g" },
                "timing": { "use": "add_to_mash" } } ],
            "hop_additions": [
              { "name": "Challenger", "form": "pellet", "alpha_acid": { "value": 7.5, "unit": "%" },
                "amount": { "value": 22, "unit": "g" },
                "timing": { "use": "add_to_boil", "time": { "value": 60, "unit": "min" } } },
              { "name": "East Kent Golding", "form": "pellet", "alpha_acid": { "value": 5, "unit": "%" },
                "amount": { "value": 20, "unit": "g" },
                "timing": { "use": "add_to_boil", "time": { "value": 10, "unit": "min" } } } ],
            "culture_additions": [
              { "name": "english ale yeast", "type": "ale", "form": "liquid", "amount": { "value": 1, "unit": "pkg" },
                "attenuation": { "value": 75, "unit": "%" } } ] },
          "mash": { "name": "single rest", "grain_temperature": { "value": 18, "unit": "C" },
            "mash_steps": [ { "name": "conversion", "type": "infusion",
              "step_temperature": { "value": 67, "unit": "C" }, "step_time": { "value": 60, "unit": "min" } } ] }
        } ] } }
        """;

    /// <summary>Into the brewer's own recipes, by the program's own import.</summary>
    public static void ImportInto(string folder)
    {
        var json = Path.Combine(folder, "ferry.json");
        File.WriteAllText(json, BeerJson);
        Directory.CreateDirectory(Path.Combine(folder, "recipes"));
        using var said = new StringWriter();
        var code = ConvertCommand.Run(
            json, Path.Combine(folder, "recipes", "ferry-landing.toml"), said, said, ProfileFolder.BesideProgram(folder).Catalogue);
        Assert.True(code == 0, said.ToString());
    }
}
