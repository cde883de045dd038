using BrewDeck.Core.Recipes;
using static BrewDeck.Profiles.BeerJsonBoil;

namespace BrewDeck.Profiles;

/// <summary>Hops and other additions of a BeerJSON recipe with their timing.</summary>
internal sealed class BeerJsonAdditions(Importing import, BeerJsonValues values, BeerJsonBoil boil,
    SourceNode ingredients, double batchL)
{
    private static readonly string[] Uses = ["add_to_boil", "add_to_mash", "add_to_fermentation", "add_to_package"];
    private static readonly string[] Forms = ["extract", "leaf", "leaf (wet)", "pellet", "powder", "plug"];

    public IEnumerable<HopAddition> Hops() => ingredients.Items("hop_additions").Select(Hop).OfType<HopAddition>();

    public IEnumerable<OtherAddition> Others() => ingredients.Items("miscellaneous_additions").Select(Other);

    private HopAddition? Hop(SourceNode node)
    {
        var name = node.TakeText("name") ?? throw import.Error(node, "has no name; BeerJSON requires it");
        var amount = node["amount"] ?? throw import.Error(node, "has no amount; BeerJSON requires it");
        var (use, step) = When(node);
        var (number, unit) = values.Amount(amount);
        if (unit != "g" || use == "add_to_mash")
        {
            import.Note(node,
                $"{amount.Shown} of '{ProfileError.OneLine(name)}' not carried over: {(use == "add_to_mash" ? "no hops go into the mash here" : "hops are weighed here")}");
            node.Take();
            return null;
        }

        import.HeldToBatch(amount, amount.Shown, number / 1000, batchL, Importing.MostHopKgPerL);
        import.Held(amount, amount.Shown, number, RecipeSchema.HopAmount);
        var place = use == "add_to_boil" ? boil.PlaceOf(step) : (Place?)null;
        return new(name, number, Alpha(node, name), Form(node), Use(place), HopMinutes(node, place, step));
    }

    private static HopUse Use(Place? place) => place switch
    {
        Place.Before => HopUse.FirstWort,
        Place.Boil => HopUse.Boil,
        Place.After => HopUse.Whirlpool,
        _ => HopUse.DryHop,
    };

    private double Alpha(SourceNode node, string name) =>
        values.In(node, "alpha_acid", RecipeSchema.Alpha) ?? import.Catalogue.Hop(name)?.AlphaFraction
        ?? throw import.Error(node, "has no alpha_acid; BeerJSON requires it");

    private HopForm Form(SourceNode node)
    {
        if (node["form"] is not { } told)
            return HopForm.Pellet;
        var form = import.Word(told, Forms);
        var cone = form is "leaf" or "leaf (wet)" or "plug";
        if (form is "leaf (wet)" or "extract" or "powder")
            import.Note(told, $"'{form}' carried over as {(cone ? "dried cones" : "pellets")} of the same mass and alpha acid");
        return cone ? HopForm.Cone : HopForm.Pellet;
    }

    private OtherAddition Other(SourceNode node)
    {
        var name = node.TakeText("name") ?? throw import.Error(node, "has no name; BeerJSON requires it");
        var amount = node["amount"] ?? throw import.Error(node, "has no amount; BeerJSON requires it");
        var (number, unit) = values.Amount(amount);
        import.Held(amount, amount.Shown, number, RecipeSchema.OtherAmount);
        var (use, step) = When(node);
        return use switch
        {
            "add_to_mash" => new(name, number, unit, AdditionUse.Mash, 0),
            "add_to_boil" => new(name, number, unit, AdditionUse.Boil, OtherMinutes(node, step)),
            _ => new(name, number, unit, AdditionUse.Fermenter, Told(node) ?? 0),
        };
    }

    private double OtherMinutes(SourceNode node, int? step) => boil.PlaceOf(step) switch
    {
        Place.Before => boil.Minutes,
        Place.After => 0,
        _ => BoilMinutes(node),
    };

    private double HopMinutes(SourceNode node, Place? place, int? step) => place switch
    {
        Place.Before => values.In(node["timing"]!, "duration", RecipeSchema.HopTime) ?? boil.Minutes,
        Place.Boil => BoilMinutes(node),
        Place.After => Told(node) ?? boil.MinutesOf(step) ?? 0,
        _ => Told(node) ?? 0,
    };

    /// <summary>
    /// Minutes before knock-out. The standard's text has <c>time</c> run from the start of a step, its own examples
    /// count it back from the end (60, 20 and 2 min in this order); the examples are followed, and the brewer told.
    /// </summary>
    private double BoilMinutes(SourceNode node)
    {
        if (node["timing"]?["duration"] is null && node["timing"]?["time"] is { } time)
            import.Note(time, $"{time.Shown} is taken as before knock-out, as in the standard's examples");
        if (Told(node) is { } minutes)
            return minutes;
        import.Note(node, "gives no time: added at knock-out");
        return 0;
    }

    private double? Told(SourceNode node) => node["timing"] is { } timing
        ? values.In(timing, "duration", RecipeSchema.HopTime) ?? values.In(timing, "time", RecipeSchema.HopTime)
        : null;

    private (string Use, int? Step) When(SourceNode node)
    {
        if (node["timing"]?["use"] is { } told)
        {
            var use = import.Word(told, Uses);
            return (use, use == "add_to_boil" ? Step(node) : null);
        }

        import.Note(node, "does not say where it goes in: into the boil is assumed");
        return ("add_to_boil", Step(node));
    }

    private int? Step(SourceNode node)
    {
        if (node["timing"]?["step"] is not { } told)
            return null;
        var step = (int)Math.Clamp(import.Number(told), 0, 99);
        if (boil.PlaceOf(step) == Place.After && step != boil.StandStep)
            import.Note(told, $"{step} is past the stand: carried over into the whirlpool");
        return step;
    }
}
