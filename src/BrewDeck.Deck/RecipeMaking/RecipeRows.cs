using System.Collections.Immutable;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.RecipeMaking.RecipeReaders;

namespace BrewDeck.Deck.RecipeMaking;

/// <summary>A recipe as rows that can be changed.</summary>
internal static class RecipeRows
{
    /// <summary>Rows above the first line of the grist.</summary>
    public const int HeadRows = 7;

    public static ImmutableArray<RecipeRow> Of(Recipe recipe, Notation notation) =>
    [
        .. Head(recipe, notation),
        .. recipe.Grist.Select((g, i) => Grist(g, i, recipe, notation)),
        new(notation.Text("+ malt or sugar"), "", "") { Adds = RecipeAdds.Grist },
        .. recipe.Rests.Select((r, i) => Rest(r, i, notation)),
        new(notation.Text("+ rest"), "", "") { Adds = RecipeAdds.Rest },
        .. recipe.Hops.Select((h, i) => Hop(h, i, recipe, notation)),
        new(notation.Text("+ hop"), "", "") { Adds = RecipeAdds.Hop },
        .. recipe.Others.Select((o, i) => Other(o, i, notation)),
        new(notation.Text("+ finings, spice or salt"), "", "") { Adds = RecipeAdds.Other },
        Yeast(recipe.Yeast, notation),
    ];

    private static RecipeRow[] Head(Recipe r, Notation notation) =>
    [
        new(notation.Text("name"), r.Name, "", new RecipeField.Line(
            notation.Text("name"), notation.Text("Name"), notation.Text("shown on the deck and in the batch list"), Text(required: true, (x, t) => x with { Name = t })) { Initial = r.Name }),
        new(notation.Text("style"), r.Style, "", new RecipeField.Line(
            notation.Text("style"), notation.Text("Style"), notation.Text("in your own words, or nothing"), Text(required: false, (x, t) => x with { Style = t })) { Initial = r.Style }),
        new(notation.Text("into the fermenter"), notation.Volume(r.BatchL), "", new RecipeField.Line(
            notation.Text("litres"), notation.Text("Into the fermenter?"), notation.Text("cold wort, such as 40 L; the amounts stay as they are"),
            Quantity(Dimension.Volume, "L", 1, 2000, (x, v) => x with { BatchL = v }, "40 L"))),
        new(notation.Text("wanted gravity"), r.OriginalGravitySg is { } sg ? notation.Gravity(sg) : notation.Text("as the grist gives"), "", new RecipeField.Line(
            notation.Text("gravity"), notation.Text("Wanted gravity?"), notation.Text("such as 1.048: a plan fits the grist to it; nothing: as the grist gives"),
            Wish(Dimension.Gravity, "SG", 1.005, 1.2, (x, v) => x with { OriginalGravitySg = v }, "1.048"))),
        new(notation.Text("wanted bitterness"), r.BitternessIbu is { } ibu ? notation.Number(ibu, "0") + " IBU" : notation.Text("as the hops give"), "", new RecipeField.Line(
            notation.Text("bitterness"), notation.Text("Wanted bitterness?"), notation.Text("such as 30 IBU: a plan fits the hops to it; nothing: as the hops give"),
            Wish(Dimension.Bitterness, "IBU", 0, 300, (x, v) => x with { BitternessIbu = v }, "30 IBU"))),
        new(notation.Text("boil"), Durations.Short(60 * r.BoilMin), "", new RecipeField.Line(
            notation.Text("boil"), notation.Text("How long is the boil?"), notation.Text("such as 60 min"), Quantity(Dimension.Time, "min", 1, 480, Boiled, "60 min"))),
        new(notation.Text("whirlpool stand"), Durations.Short(60 * r.StandMin), LongerForHops(r, notation), new RecipeField.Line(
            notation.Text("stand"), notation.Text("How long is the stand after the whirlpool?"), notation.Text("such as 15 min"),
            Quantity(Dimension.Time, "min", 0, 240, (x, v) => x with { StandMin = v }, "15 min"))),
    ];

    /// <summary>The plan stands as long as the hop that stands longest, if that is longer than the recipe's own stand.</summary>
    private static string LongerForHops(Recipe recipe, Notation notation)
    {
        var longest = recipe.Hops.Where(h => h.Use == HopUse.Whirlpool).Select(h => h.Minutes).DefaultIfEmpty(0).Max();
        return longest > recipe.StandMin ? notation.Text($"{Durations.Short(60 * longest)} for hops") : "";
    }

    /// <summary>First-wort hops stay for the whole boil.</summary>
    private static Recipe Boiled(Recipe recipe, double minutes) => recipe with
    {
        BoilMin = minutes,
        Hops = [.. recipe.Hops.Select(h => h.Use == HopUse.FirstWort ? h with { Minutes = minutes } : h)],
    };

    private static RecipeRow Grist(GristLine line, int at, Recipe recipe, Notation notation)
    {
        RecipeField.Line Number(string label, string question, Asked asked, Func<GristLine, double, GristLine> with) =>
            asked.Line(label, question, notation, (r, v) => r with { Grist = r.Grist.SetItem(at, with(r.Grist[at], v)) });
        var share = line.MassKg / recipe.Grist.Sum(g => g.MassKg);
        var (other, to) = line.Use == GristUse.Mash ? (notation.Text("put it into the kettle"), GristUse.Kettle) : (notation.Text("put it into the mash"), GristUse.Mash);
        return new(
            line.Name, notation.Mass(line.MassKg), line.Use == GristUse.Kettle ? notation.Text("kettle") : notation.Number(100 * share, "0") + " %",
            Number(notation.Text("amount"), notation.Text($"How much {line.Name}?"), Asked.Kg, (g, v) => g with { MassKg = v }),
            Number(notation.Text($"extract {notation.Percent(line.ExtractFraction)}"), notation.Text("Extract, on dry basis?"), Asked.Extract, (g, v) => g with { ExtractFraction = v / 100 }),
            Number(notation.Text($"moisture {notation.Percent(line.MoistureFraction)}"), notation.Text("Moisture?"), Asked.Moisture, (g, v) => g with { MoistureFraction = v / 100 }),
            Number(notation.Text($"colour {notation.Number(line.ColourEbc, "0.#")} EBC"), notation.Text("Colour?"), Asked.Colour, (g, v) => g with { ColourEbc = v }),
            new RecipeField.Turn(other, r => r with { Grist = r.Grist.SetItem(at, r.Grist[at] with { Use = to }) }),
            new RecipeField.Turn(notation.Text("take it out"), r => r with { Grist = r.Grist.RemoveAt(at) }, TakesOut: true));
    }

    private static RecipeRow Rest(MashRest rest, int at, Notation notation)
    {
        RecipeField.Line Number(string label, string question, Asked asked, Func<MashRest, double, MashRest> with) =>
            asked.Line(label, question, notation, (r, v) => r with { Rests = Rising(r.Rests.SetItem(at, with(r.Rests[at], v))) });
        return new(
            notation.Text($"rest: {notation.Name(rest.Name)}"), notation.Target(rest.TempC), Durations.Short(60 * rest.Minutes),
            Number(notation.Text("temperature"), notation.Text("At what temperature?"), Asked.MashC, (x, v) => x with { TempC = v }),
            Number(notation.Text("minutes"), notation.Text("How long?"), Asked.RestMin, (x, v) => x with { Minutes = v }),
            new RecipeField.Turn(notation.Text("take it out"), r => r with { Rests = r.Rests.RemoveAt(at) }, TakesOut: true));
    }

    private static RecipeRow Hop(HopAddition hop, int at, Recipe recipe, Notation notation)
    {
        RecipeField.Line Number(string label, string question, Asked asked, Func<HopAddition, double, HopAddition> with) =>
            asked.Line(label, question, notation, (r, v) => r with { Hops = r.Hops.SetItem(at, with(r.Hops[at], v)) });
        var alpha = notation.Number(100 * hop.AlphaFraction, "0.0") + " %";
        var (other, to) = hop.Form == HopForm.Pellet ? (notation.Text("cones instead of pellets"), HopForm.Cone) : (notation.Text("pellets instead of cones"), HopForm.Pellet);
        return new(
            hop.Name, notation.Grams(hop.MassG), $"{RecipeWords.Briefly(hop.Use, hop.Minutes, notation)}, {alpha}",
            Number(notation.Text("amount"), notation.Text($"How much {hop.Name}?"), Asked.HopsFor(recipe.BatchL), (h, v) => h with { MassG = v }),
            new RecipeField.Line(
                notation.Text("time"), notation.Text($"When does the {hop.Name} go in?"), notation.Text("minutes before knock-out such as 60, or first wort, whirlpool 20, dry hop"), HopTime(at)),
            Number(notation.Text($"alpha acid {alpha}"), notation.Text("Alpha acid?"), Asked.Alpha, (h, v) => h with { AlphaFraction = v / 100 }),
            new RecipeField.Turn(other, r => r with { Hops = r.Hops.SetItem(at, r.Hops[at] with { Form = to }) }),
            new RecipeField.Turn(notation.Text("take it out"), r => r with { Hops = r.Hops.RemoveAt(at) }, TakesOut: true));
    }

    private static RecipeRow Other(OtherAddition other, int at, Notation notation)
    {
        RecipeField.Line Number(string label, string question, Asked asked, Func<OtherAddition, double, OtherAddition> with) =>
            asked.Line(label, question, notation, (r, v) => r with { Others = r.Others.SetItem(at, with(r.Others[at], v)) });
        var when = other.Use switch
        {
            AdditionUse.Boil => Durations.Short(60 * other.Minutes),
            AdditionUse.Mash => notation.Text("mash"),
            _ => notation.Text("fermenter"),
        };
        return new(
            other.Name, notation.Value(other.Amount, other.Unit), when,
            Number(notation.Text("amount"), notation.Text($"How much {other.Name}, in {notation.Name(other.Unit)}?"), Asked.Count(other.Unit, notation), (o, v) => o with { Amount = v }),
            new RecipeField.Line(
                notation.Text("time"), notation.Text($"When does the {other.Name} go in?"), notation.Text("minutes before knock-out such as 15, or mash, or fermenter"), OtherReader.Time(at)),
            new RecipeField.Turn(notation.Text("take it out"), r => r with { Others = r.Others.RemoveAt(at) }, TakesOut: true));
    }

    private static RecipeRow Yeast(Yeast yeast, Notation notation) => new(
        yeast.Name, notation.Target(yeast.PitchC), notation.Text($"{notation.Number(100 * yeast.AttenuationFraction, "0")} % attenuation"),
        Asked.PitchC.Line(notation.Text("pitched at"), notation.Text("At what temperature is it pitched?"), notation, (r, v) => r with { Yeast = r.Yeast with { PitchC = v } }),
        Asked.Attenuation.Line(notation.Text("attenuation"), notation.Text("Apparent attenuation?"), notation, (r, v) => r with { Yeast = r.Yeast with { AttenuationFraction = v / 100 } }))
    {
        Adds = RecipeAdds.Yeast,
    };

    /// <summary>A mash only rises.</summary>
    public static ImmutableArray<MashRest> Rising(ImmutableArray<MashRest> rests) => [.. rests.OrderBy(r => r.TempC)];
}
