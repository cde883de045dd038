using BrewDeck.Deck;
using static BrewDeck.Profiles.SchemaKey;

namespace BrewDeck.Profiles;

/// <summary>The keys of a recipe file. What the catalogue knows of an ingredient may be left out.</summary>
internal static class RecipeSchema
{
    public static readonly Quantity Batch = new("batch", Dimension.Volume, "L", 1, 2000, "40 L",
        "Cold wort into the fermenter.");

    public static readonly Quantity OriginalGravity = new("original_gravity", Dimension.Gravity, "SG", 1.005, 1.2,
        "1.048", "Wanted; left out: as the grist gives.", Required: false);

    public static readonly Quantity Bitterness = new("bitterness", Dimension.Bitterness, "IBU", 0, 300, "32 IBU",
        "Wanted: hops that boil for over 20 min are weighed anew for it; all are, where the late ones alone bring over three quarters of it. Left out: as the hops give.", Required: false);

    public static readonly Quantity Boil = new("boil", Dimension.Time, "min", 1, 480, "60 min",
        "From the first addition to knock-out.");

    public static readonly Quantity GristAmount = new("amount", Dimension.Mass, "kg", 0.001, 1000, "7.4 kg",
        "As weighed.");

    public static readonly Quantity RestTemperature = new("temperature", Dimension.Temperature, "°C", 20, 85, "66 °C",
        "Of the mash.");

    public static readonly Quantity RestTime = new("time", Dimension.Time, "min", 1, 720, "60 min",
        "How long it is kept.");

    public static readonly Quantity HopAmount = new("amount", Dimension.Mass, "g", 0.01, 50_000, "40 g", "As weighed.");

    public static readonly Quantity HopTime = new("time", Dimension.Time, "min", 0, 86_400, "60 min",
        "Boil: before knock-out. Whirlpool: contact before cast-out. Dry hop: contact.", Required: false);

    public static readonly Amount OtherAmount = new("amount", ["g", "mL", "each"], 100_000,
        "Weighed, measured or counted.");

    public static readonly Quantity OtherTime = new("time", Dimension.Time, "min", 0, 86_400, "15 min",
        "Boil: before knock-out.", Required: false, Default: 0);

    public static readonly Quantity Extract = new("extract", Dimension.Fraction, "", 0, 1, "80 %",
        "Laboratory extract on dry basis (sucrose 100 %).", Required: false);

    public static readonly Quantity Moisture = new("moisture", Dimension.Fraction, "", 0, 0.95, "4 %",
        "Water in it as weighed; malt usually 3 to 5 %.", Required: false);

    public static readonly Quantity GristColour = new("colour", Dimension.Colour, "EBC", 0, 2000, "6 EBC",
        "Colour of the malt.", Required: false);

    public static readonly Choice Use = new("use", ["mash", "kettle"], "Where it goes in.", Default: "");

    public static readonly Choice Kind = new(
        "kind", [.. Enum.GetNames<Core.Recipes.MaltKind>().Select(n => n.ToLowerInvariant())],
        "What it does to the pH of the mash (wheat: raw grain too); left out: told by its colour.", Default: "");

    public static readonly Quantity Alpha = new("alpha", Dimension.Fraction, "", 0, 0.3, "5.5 %",
        "Alpha acid; the bag says it.", Required: false);

    public static readonly Quantity Attenuation = new("attenuation", Dimension.Fraction, "", 0.1, 1, "76 %",
        "Apparent.", Required: false);

    public static readonly Quantity PitchTemperature = new("pitch_temperature", Dimension.Temperature, "°C", 0, 45,
        "18 °C",
        "Wort temperature at which it is pitched.", Required: false);

    public static readonly Quantity PitchRate = new("pitch_rate", Dimension.PitchRate, "M/mL/°P", 0.05, 5, "0.75",
        "Million cells per mL and degree Plato.", Required: false);

    public static readonly string[] HopUses = ["first wort", "boil", "whirlpool", "dry hop"];

    public static readonly string[] AdditionUses = ["mash", "boil", "fermenter"];

    public static readonly SchemaKey[] Keys =
    [
        new Text("name", "Quayside Amber", "Shown on the deck and in the batch list."),
        new Text("author", "Quayside", "Who wrote it.", Required: false),
        new Text("style", "amber ale", "In the brewer's own words.", Required: false),
        new Text("notes", "Brew it in spring.", "Anything worth knowing.", Required: false, Longest: 20_000),
        Batch,
        OriginalGravity,
        Bitterness,
        new Quantity("mash_thickness", Dimension.Thickness, "L/kg", 1.5, 20, "3 L/kg",
            "Strike liquor to grist; left out: as the brewhouse usually does.", Required: false),
        Boil,
        new Quantity("stand", Dimension.Time, "min", 0, 240, "15 min", "Hot stand after the whirlpool.",
            Required: false, Default: 15),
        new Section("grist", Grist(), "Malt, adjuncts, sugar and extract."),
        new Section("rest", Rest(), "The rests of the mash in order; the last one may be a mash-out."),
        new Section("hop", Hop(), "The hop additions.", Least: 0),
        new Section("addition", Addition(), "Finings, nutrient, spice, salt: what carries no extract.", Least: 0),
        new Section("yeast", Yeast(), "What ferments it.", Many: false),
        WaterTargetFile.OfRecipe,
    ];

    private static SchemaKey[] Grist() =>
    [
        new Text("name", "pale ale malt", "A name of the catalogue, or any other with its values."),
        GristAmount,
        Extract,
        Moisture,
        GristColour,
        Use,
        Kind,
    ];

    private static SchemaKey[] Rest() =>
    [
        new Text("name", "conversion", "Shown with the rest."),
        RestTemperature,
        RestTime,
    ];

    private static SchemaKey[] Hop() =>
    [
        new Text("name", "Cascade", "A cultivar of the catalogue, or any other with its alpha acid."),
        HopAmount,
        Alpha,
        new Choice("form", ["pellet", "cone"], "Pellets give more bitterness and soak up less.", "pellet"),
        new Choice("use", HopUses, "When it goes in.", "boil"),
        HopTime,
    ];

    private static SchemaKey[] Addition() =>
    [
        new Text("name", "carrageen finings", "Shown on the run sheet."),
        OtherAmount,
        new Choice("use", AdditionUses, "When it goes in.", "boil"),
        OtherTime,
    ];

    private static SchemaKey[] Yeast() =>
    [
        new Text("name", "clean ale yeast", "A type of the catalogue, or any other with its values."),
        Attenuation,
        PitchTemperature,
        PitchRate,
    ];
}
