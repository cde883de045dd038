using BrewDeck.Core.Recipes;

namespace BrewDeck.Profiles;

/// <summary>Carries one BeerJSON recipe over.</summary>
internal sealed class BeerJsonRecipe(Importing import, SourceNode node)
{
    private static readonly string[] Required = ["type", "author", "efficiency"];

    private readonly BeerJsonValues _values = new(import);

    private double? _batchL;

    /// <summary>Null when it has nothing to mash.</summary>
    public Recipe? Read()
    {
        var name = node.TakeText("name") ?? throw import.Error(node, "has no name; BeerJSON requires it");
        var ingredients = node["ingredients"] ?? throw import.Error(node, "has no ingredients; BeerJSON requires them");
        foreach (var missing in Required.Where(r => node[r] is null))
            import.Note(node, $"has no {missing}, which BeerJSON requires");
        _batchL = _values.In(node, "batch_size", RecipeSchema.Batch);
        var fermentables = new BeerJsonFermentables(import, _values, ingredients, _batchL);
        var grist = fermentables.Grist();
        if (!grist.Exists(g => g.Use == GristUse.Mash))
        {
            import.Note(node, "has nothing for the mash: not carried over, for a plan begins with one");
            return null;
        }

        if (node["type"]?.Text is "all grain" or "partial mash")
            node["type"]!.Take();
        return import.Checked(node, Recipe(name, ingredients, grist, fermentables.Late()));
    }

    private Recipe Recipe(string name, SourceNode ingredients, List<GristLine> grist, IEnumerable<OtherAddition> late)
    {
        var batchL = _batchL ?? throw import.Error(node, "has no batch_size; BeerJSON requires it");
        var boil = new BeerJsonBoil(import, _values, node);
        var additions = new BeerJsonAdditions(import, _values, boil, ingredients, batchL);
        return new()
        {
            Name = name,
            Author = string.Join(", ", new[] { node.TakeText("author"), node.TakeText("coauthor") }.OfType<string>()),
            Style = node["style"]?.TakeText("name") ?? "",
            Notes = node.TakeText("notes") ?? "",
            BatchL = batchL,
            OriginalGravitySg = _values.In(node, "original_gravity", RecipeSchema.OriginalGravity) ?? Implied(grist, batchL),
            BitternessIbu = node["ibu_estimate"] is { } ibu
                ? _values.In(ibu, "value", RecipeSchema.Bitterness) : null,
            Grist = [.. grist],
            Rests = [.. import.Rests(node, [.. Rests()])],
            BoilMin = boil.Minutes,
            StandMin = boil.StandMin ?? 15,
            Hops = [.. additions.Hops()],
            Others = [.. late, .. additions.Others()],
            Yeast = Yeast(ingredients),
        };
    }

    private double? Implied(List<GristLine> grist, double batchL)
    {
        if (node["efficiency"] is not { } efficiency)
            return null;
        var implied = Importing.ImpliedGravity(grist, batchL,
            _values.In(efficiency, "brewhouse", Importing.Efficiency));
        import.Note(efficiency, implied is { } sg
            ? $"carried over as the original gravity that it gives, {sg:F4}"
            : "gives no brewhouse efficiency, which BeerJSON requires: the gravity is left to the brewhouse");
        return implied;
    }

    private IEnumerable<MashRest> Rests()
    {
        foreach (var step in node["mash"]?.Items("mash_steps") ?? [])
        {
            var type = step["type"]?.Text;
            if (type is not ("infusion" or "temperature" or "decoction"))
                continue;
            if (type == "decoction")
                import.Note(step, "is a decoction: carried over as a rest, heated the way of the brewhouse");
            step["type"]!.Take();
            yield return new(
                step.TakeText("name") ?? "rest",
                _values.In(step, "step_temperature", RecipeSchema.RestTemperature)
                    ?? throw import.Error(step, "has no step_temperature; BeerJSON requires it"),
                _values.In(step, "step_time", RecipeSchema.RestTime)
                    ?? throw import.Error(step, "has no step_time; BeerJSON requires it"));
        }
    }

    private Yeast Yeast(SourceNode ingredients)
    {
        var culture = ingredients.Items("culture_additions").FirstOrDefault();
        if (culture?["type"] is { Text: "ale" or "lager" } type)
            type.Take();
        var first = node["fermentation"]?.Items("fermentation_steps").FirstOrDefault();
        var pitchC = first is null ? null : _values.In(first, "start_temperature", RecipeSchema.PitchTemperature);
        return import.Yeast(
            node,
            culture?.TakeText("name"),
            culture?["type"]?.Text == "lager",
            culture is null ? null : _values.In(culture, "attenuation", RecipeSchema.Attenuation),
            pitchC);
    }
}
