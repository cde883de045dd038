using System.Collections.Immutable;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.RecipeMaking.RecipeReaders;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>A recipe as rows that can be changed.</summary>
internal static class RecipeRows
{
    public static ImmutableArray<RecipeRow> Of(Recipe recipe, Notation notation) =>
    [
        .. Head(recipe, notation),
        .. recipe.Grist.Select((g, i) => Grist(g, i, recipe, notation)),
        new("+ malt or sugar", "", "") { Adds = RecipeAdds.Grist },
        .. recipe.Rests.Select((r, i) => Rest(r, i, notation)),
        new("+ rest", "", "") { Adds = RecipeAdds.Rest },
        .. recipe.Hops.Select((h, i) => Hop(h, i, notation)),
        new("+ hop", "", "") { Adds = RecipeAdds.Hop },
        .. recipe.Others.Select((o, i) => Other(o, i, notation)),
        new("+ finings, spice or salt", "", "") { Adds = RecipeAdds.Other },
        Yeast(recipe.Yeast, notation),
    ];

    private static IEnumerable<RecipeRow> Head(Recipe r, Notation notation) =>
    [
        new("name", r.Name, "", new RecipeField.Line("name", "Name", "shown on the deck and in the batch list", Text(200, true, (x, t) => x with { Name = t }))),
        new("style", r.Style, "", new RecipeField.Line("style", "Style", "in your own words, or nothing", Text(200, false, (x, t) => x with { Style = t }))),
        new("into the fermenter", notation.Volume(r.BatchL), "", new RecipeField.Line("litres", "Into the fermenter?", "cold wort, such as 40 L; the amounts stay as they are",
            Quantity(Dimension.Volume, "L", 1, 2000, (x, v) => x with { BatchL = v }, "40 L"))),
        new("wanted gravity", r.OriginalGravitySg is { } sg ? notation.Gravity(sg) : "as the grist gives", "",
            new RecipeField.Line("gravity", "Wanted gravity?", "such as 1.048: a plan fits the grist to it; nothing: as the grist gives",
                Wish(Dimension.Gravity, "SG", 1.005, 1.2, (x, v) => x with { OriginalGravitySg = v }, "1.048"))),
        new("wanted bitterness", r.BitternessIbu is { } ibu ? Notation.Number(ibu, "0") + " IBU" : "as the hops give", "",
            new RecipeField.Line("bitterness", "Wanted bitterness?", "such as 30 IBU: a plan fits the hops to it; nothing: as the hops give",
                Wish(Dimension.Bitterness, "IBU", 0, 300, (x, v) => x with { BitternessIbu = v }, "30 IBU"))),
        new("boil", Durations.Short(60 * r.BoilMin), "", new RecipeField.Line("boil", "How long is the boil?", "such as 60 min",
            Quantity(Dimension.Time, "min", 1, 480, (x, v) => x with { BoilMin = v, Hops = [.. x.Hops.Select(h => h.Use == HopUse.FirstWort ? h with { Minutes = v } : h)] }, "60 min"))),
        new("stand", Durations.Short(60 * r.StandMin), "", new RecipeField.Line("stand", "How long is the stand after the whirlpool?", "such as 15 min",
            Quantity(Dimension.Time, "min", 0, 240, (x, v) => x with { StandMin = v }, "15 min"))),
    ];

    private static RecipeRow Grist(GristLine line, int at, Recipe recipe, Notation notation)
    {
        Recipe With(Recipe r, GristLine to) => r with { Grist = r.Grist.SetItem(at, to) };
        var share = line.MassKg / recipe.Grist.Sum(g => g.MassKg);
        var where = line.Use == GristUse.Kettle ? "kettle" : Notation.Number(100 * share, "0") + " %";
        return new(line.Name, notation.Mass(line.MassKg), where,
            new RecipeField.Line("amount", $"How much {line.Name}?", "such as 5.2 kg or 350 g", Quantity(Dimension.Mass, "kg", 0.001, 1000, (r, v) => With(r, r.Grist[at] with { MassKg = v }), "5.2 kg")),
            new RecipeField.Line($"extract {notation.Percent(line.ExtractFraction)}", "Extract, on dry basis?", "percent, from the maltster's sheet", Quantity(Dimension.Fraction, "%", 1, 100, (r, v) => With(r, r.Grist[at] with { ExtractFraction = v / 100 }), "80 %")),
            new RecipeField.Line($"moisture {notation.Percent(line.MoistureFraction)}", "Moisture?", "percent, from the maltster's sheet", Quantity(Dimension.Fraction, "%", 0, 95, (r, v) => With(r, r.Grist[at] with { MoistureFraction = v / 100 }), "4 %")),
            new RecipeField.Line($"colour {Notation.Number(line.ColourEbc, "0.#")} EBC", "Colour?", "such as 6 EBC or 3 SRM", Quantity(Dimension.Colour, "EBC", 0, 2000, (r, v) => With(r, r.Grist[at] with { ColourEbc = v }), "6 EBC")),
            new RecipeField.Turn(line.Use == GristUse.Mash ? "put it into the kettle" : "put it into the mash", r => With(r, r.Grist[at] with { Use = line.Use == GristUse.Mash ? GristUse.Kettle : GristUse.Mash })),
            new RecipeField.Turn("take it out", r => r with { Grist = r.Grist.RemoveAt(at) }));
    }

    private static RecipeRow Rest(MashRest rest, int at, Notation notation)
    {
        Recipe With(Recipe r, MashRest to) => r with { Rests = Rising(r.Rests.SetItem(at, to)) };
        return new("rest: " + rest.Name, notation.Target(rest.TempC), Durations.Short(60 * rest.Minutes),
            new RecipeField.Line("temperature", "At what temperature?", "of the mash, such as 66 °C", Quantity(Dimension.Temperature, "°C", 20, 85, (r, v) => With(r, r.Rests[at] with { TempC = v }), "66 °C")),
            new RecipeField.Line("minutes", "How long?", "such as 60 min", Quantity(Dimension.Time, "min", 1, 720, (r, v) => With(r, r.Rests[at] with { Minutes = v }), "60 min")),
            new RecipeField.Turn("take it out", r => r with { Rests = r.Rests.RemoveAt(at) }));
    }

    private static RecipeRow Hop(HopAddition hop, int at, Notation notation)
    {
        Recipe With(Recipe r, HopAddition to) => r with { Hops = r.Hops.SetItem(at, to) };
        return new(hop.Name, notation.Grams(hop.MassG), $"{RecipeWords.Briefly(hop)}, {Notation.Number(100 * hop.AlphaFraction, "0.0")} %",
            new RecipeField.Line("amount", $"How much {hop.Name}?", "such as 30 g", Quantity(Dimension.Mass, "g", 0.01, 50_000, (r, v) => With(r, r.Hops[at] with { MassG = v }), "30 g")),
            new RecipeField.Line("time", $"When does the {hop.Name} go in?", "minutes before knock-out such as 60, or first wort, whirlpool 20, dry hop", HopTime(at)),
            new RecipeField.Line($"alpha acid {Notation.Number(100 * hop.AlphaFraction, "0.0")} %", "Alpha acid?", "percent, as printed on the bag", Quantity(Dimension.Fraction, "%", 0, 30, (r, v) => With(r, r.Hops[at] with { AlphaFraction = v / 100 }), "5.5 %")),
            new RecipeField.Turn(hop.Form == HopForm.Pellet ? "cones instead of pellets" : "pellets instead of cones", r => With(r, r.Hops[at] with { Form = hop.Form == HopForm.Pellet ? HopForm.Cone : HopForm.Pellet })),
            new RecipeField.Turn("take it out", r => r with { Hops = r.Hops.RemoveAt(at) }));
    }

    private static RecipeRow Other(OtherAddition other, int at, Notation notation)
    {
        Recipe With(Recipe r, OtherAddition to) => r with { Others = r.Others.SetItem(at, to) };
        var when = other.Use == AdditionUse.Boil ? Durations.Short(60 * other.Minutes) : other.Use == AdditionUse.Mash ? "mash" : "fermenter";
        return new(other.Name, notation.Value(other.Amount, other.Unit), when,
            new RecipeField.Line("amount", $"How much {other.Name}?", $"in {other.Unit}", Quantity(Dimension.Number, other.Unit, 0.001, 100_000, (r, v) => With(r, r.Others[at] with { Amount = v }), "5")),
            new RecipeField.Line("time", "How long does it boil?", "minutes before knock-out", Quantity(Dimension.Time, "min", 0, 480, (r, v) => With(r, r.Others[at] with { Minutes = v, Use = AdditionUse.Boil }), "15 min")),
            new RecipeField.Turn("take it out", r => r with { Others = r.Others.RemoveAt(at) }));
    }

    private static RecipeRow Yeast(Yeast yeast, Notation notation) => new(
        yeast.Name, notation.Target(yeast.PitchC), Notation.Number(100 * yeast.AttenuationFraction, "0") + " % attenuation",
        new RecipeField.Line("pitched at", "At what temperature is it pitched?", "such as 19 °C", Quantity(Dimension.Temperature, "°C", 0, 45, (r, v) => r with { Yeast = r.Yeast with { PitchC = v } }, "19 °C")),
        new RecipeField.Line("attenuation", "Apparent attenuation?", "percent", Quantity(Dimension.Fraction, "%", 10, 100, (r, v) => r with { Yeast = r.Yeast with { AttenuationFraction = v / 100 } }, "76 %")))
    {
        Adds = RecipeAdds.Yeast,
    };

    /// <summary>A mash only rises.</summary>
    public static ImmutableArray<MashRest> Rising(ImmutableArray<MashRest> rests) => [.. rests.OrderBy(r => r.TempC)];
}
