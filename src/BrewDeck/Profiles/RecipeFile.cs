using BrewDeck.Core.Recipes;

namespace BrewDeck.Profiles;

/// <summary>Reads and writes a recipe file.</summary>
public static class RecipeFile
{
    /// <param name="text">TOML.</param>
    /// <param name="file">Name for messages.</param>
    /// <param name="catalogue">Fills in what a line leaves out.</param>
    /// <exception cref="Deck.ProfileException">The first thing wrong.</exception>
    public static Recipe Read(string text, string file, Catalogue catalogue)
    {
        var entry = SchemaReader.Read(text, file, RecipeSchema.Keys);
        var lines = new RecipeLines(catalogue);
        var boilMin = entry.Number("boil");
        var recipe = new Recipe
        {
            Name = entry.Text("name"),
            Author = entry.Text("author"),
            Style = entry.Text("style"),
            Notes = entry.Text("notes"),
            BatchL = entry.Number("batch"),
            OriginalGravitySg = entry.MaybeNumber("original_gravity"),
            BitternessIbu = entry.MaybeNumber("bitterness"),
            MashThicknessLPerKg = entry.MaybeNumber("mash_thickness"),
            Grist = [.. entry.Many("grist").Select(lines.Grist)],
            Rests = [.. entry.Many("rest")
                .Select(r => new MashRest(r.Text("name"), r.Number("temperature"), r.Number("time")))],
            BoilMin = boilMin,
            Hops = [.. entry.Many("hop").Select(h => lines.Hop(h, boilMin))],
            Others = [.. entry.Many("addition").Select(RecipeLines.Other)],
            StandMin = entry.Number("stand"),
            Yeast = lines.Yeast(entry.One("yeast")!),
            Water = entry.One("water") is { } water ? WaterTargetFile.Of(water) : null,
        };
        Check(entry, recipe);
        return recipe;
    }

    /// <summary>Commented TOML that reads back to an equal recipe with any catalogue.</summary>
    public static string Write(Recipe recipe) => RecipeWriter.Write(recipe);

    private static void Check(SchemaEntry entry, Recipe recipe)
    {
        if (recipe.MashKg <= 0)
            throw entry.Error("grist", "grist has nothing for the mash; give at least one line use = \"mash\"");
        foreach (var (before, rest, line) in recipe.Rests.Zip(recipe.Rests.Skip(1), entry.Many("rest").Skip(1)))
            if (rest.TempC < before.TempC)
                throw line.Error("temperature",
                    $"rest '{ProfileError.OneLine(rest.Name)}' is cooler than the one before ({rest.TempC} after {before.TempC} °C); list the rests as the mash rises");
        foreach (var (hop, line) in recipe.Hops.Zip(entry.Many("hop")))
            if (hop.Use == HopUse.Boil && hop.Minutes > recipe.BoilMin)
                throw line.Error("time",
                    $"hop '{ProfileError.OneLine(hop.Name)}' is to boil {hop.Minutes} min, but the boil lasts {recipe.BoilMin} min; lengthen boil or shorten it");
        foreach (var (other, line) in recipe.Others.Zip(entry.Many("addition")))
            if (other.Use == AdditionUse.Boil && other.Minutes > recipe.BoilMin)
                throw line.Error("time",
                    $"addition '{ProfileError.OneLine(other.Name)}' is to boil {other.Minutes} min, but the boil lasts {recipe.BoilMin} min");
    }
}
