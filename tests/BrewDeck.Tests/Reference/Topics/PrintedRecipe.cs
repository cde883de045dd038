using System.Text.Json;

namespace BrewDeck.Tests.Reference.Topics;

/// <summary>A printed recipe of 13_recipes.json: ingredients, and the figures that its source prints.</summary>
internal sealed record PrintedRecipe(
    string Id,
    double VolumeL,
    double EfficiencyPercent,
    IReadOnlyList<PrintedRecipe.Malt> Grist,
    IReadOnlyList<PrintedRecipe.Hop> Hops,
    JsonElement PrintedFigures)
{
    private static readonly Lazy<IReadOnlyDictionary<string, PrintedRecipe>> All = new(Read);

    internal sealed record Malt(double MassKg, double PotentialPoints, double ColourLovibond, bool NeedsMash);

    internal sealed record Hop(double MassG, double AlphaPercent, double BoilMin);

    public static PrintedRecipe ById(string id) => All.Value[id];

    public double Printed(string figure) => PrintedFigures.GetProperty(figure).GetDouble();

    public double Printed(string figure, double otherwise) =>
        PrintedFigures.TryGetProperty(figure, out var value) ? value.GetDouble() : otherwise;

    private static Dictionary<string, PrintedRecipe> Read()
    {
        using var document = JsonDocument.Parse(ReferenceData.Text("13_recipes.json"));
        return document.RootElement.EnumerateArray().Select(From).ToDictionary(recipe => recipe.Id);
    }

    private static PrintedRecipe From(JsonElement recipe) => new(
        recipe.GetProperty("id").GetString()!,
        recipe.GetProperty("volume_L").GetDouble(),
        Number(recipe, "efficiency_percent"),
        [.. recipe.GetProperty("grist").EnumerateArray().Select(malt => new Malt(
            Number(malt, "mass_kg"), Number(malt, "potential_pts_lb_gal"), Number(malt, "colour_degL"),
            malt.GetProperty("needs_mash").GetBoolean()))],
        [.. recipe.GetProperty("hops").EnumerateArray().Select(hop => new Hop(
            Number(hop, "mass_g"), Number(hop, "alpha_percent"), Number(hop, "boil_min")))],
        recipe.GetProperty("printed").Clone());

    // a figure that the source does not print is null: NaN, so that no check can pass on it
    private static double Number(JsonElement owner, string name) =>
        owner.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number
            ? value.GetDouble()
            : double.NaN;
}
