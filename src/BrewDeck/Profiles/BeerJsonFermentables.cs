using BrewDeck.Core.Recipes;
using BrewDeck.Deck;
using Extracts = BrewDeck.Core.Physics.Extract;

namespace BrewDeck.Profiles;

/// <summary>The fermentable additions of a BeerJSON recipe.</summary>
internal sealed class BeerJsonFermentables(Importing import, BeerJsonValues values, SourceNode ingredients,
    double? batchL)
{
    private static readonly string[] Types = ["dry extract", "extract", "grain", "sugar", "fruit", "juice", "honey",
        "other"];
    private static readonly string[] Uses = ["add_to_mash", "add_to_boil", "add_to_fermentation", "add_to_package"];

    private readonly List<OtherAddition> _late = [];

    public List<GristLine> Grist() => [.. ingredients.Items("fermentable_additions").Select(Line).OfType<GristLine>()];

    /// <summary>What goes in after the brew day; known once <see cref="Grist"/> has run.</summary>
    public IReadOnlyList<OtherAddition> Late() => _late;

    private GristLine? Line(SourceNode node)
    {
        var name = node.TakeText("name") ?? throw import.Error(node, "has no name; BeerJSON requires it");
        var type = node["type"] is { } told ? import.Word(told, Types) : "grain";
        var massKg = MassKg(node, type);
        var use = node["timing"]?["use"] is { } told2
            ? import.Word(told2, Uses) : type == "grain" ? "add_to_mash" : "add_to_boil";
        if (use is "add_to_fermentation" or "add_to_package")
        {
            import.Note(node,
                $"'{ProfileError.OneLine(name)}' goes in after the brew day: carried over without its extract");
            _late.Add(new(name, 1000 * massKg, "g", AdditionUse.Fermenter, 0));
            return null;
        }

        var known = import.Catalogue.Fermentable(name);
        return new(
            name,
            massKg,
            Extract(node) ?? known?.ExtractFraction
                ?? Assumed(node, "yield", type == "grain" ? 0.8 : 1, "80 % for grain, 100 % for the rest"),
            values.In(node, "moisture", RecipeSchema.Moisture) ?? known?.MoistureFraction
                ?? (type == "grain" ? 0.04 : 0),
            values.In(node, "color", RecipeSchema.GristColour) ?? known?.ColourEbc ?? Assumed(node, "color", 0, "none"),
            use == "add_to_mash" ? GristUse.Mash : GristUse.Kettle)
        {
            Kind = known?.Kind,
        };
    }

    private double Assumed(SourceNode node, string what, double value, string told)
    {
        import.Note(node, $"gives no {what}: {told} is assumed");
        return value;
    }

    private double MassKg(SourceNode node, string type)
    {
        var amount = node["amount"] ?? throw import.Error(node, "has no amount; BeerJSON requires it");
        var (number, unit) = values.Amount(amount);
        if (unit == "each")
            throw import.Error(amount, $"is {amount.Shown}; a fermentable must be weighed or measured");
        if (unit == "g")
            return Held(amount, QuantityUnits.Convert(Dimension.Mass, number, "g", "kg"));
        var density = type is "extract" or "honey" or "sugar" ? Importing.SyrupKgPerL : 1.05;
        import.Note(amount, $"is a volume: weighed as {density} kg/L");
        return Held(amount, number / 1000 * density);
    }

    private double Held(SourceNode amount, double massKg)
    {
        import.HeldToBatch(amount, amount.Shown, massKg, batchL, Importing.MostMaltKgPerL);
        return import.Held(amount, amount.Shown, massKg, RecipeSchema.GristAmount);
    }

    /// <summary>Laboratory extract from whichever way the yield is told.</summary>
    private double? Extract(SourceNode node)
    {
        if (node["yield"] is not { } yield)
            return null;
        if (values.In(yield, "fine_grind", RecipeSchema.Extract) is { } fine)
            return fine;
        if (values.In(yield, "potential", Dimension.Gravity, "SG") is { } potential)
            return Math.Round(Extracts.Points(potential) / Extracts.SucrosePointsGalPerLb, 4);
        return values.In(yield, "coarse_grind", RecipeSchema.Extract) is { } coarse
            ? coarse + (values.In(yield, "fine_coarse_difference", Dimension.Fraction, "") ?? 0)
            : null;
    }
}
