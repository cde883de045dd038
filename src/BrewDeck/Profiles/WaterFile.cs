using BrewDeck.Core.Physics;
using BrewDeck.Core.Waters;
using BrewDeck.Deck;
using static BrewDeck.Profiles.SchemaKey;

namespace BrewDeck.Profiles;

/// <summary>Reads a water file: an analysis, and what is on hand to treat that water.</summary>
public static class WaterFile
{
    /// <summary>Chalk hardly dissolves in plain water and potassium is not kept account of, so neither is offered.</summary>
    private static readonly (string Word, BrewingSalt Salt)[] Salts =
    [
        ("gypsum", BrewingSalt.Gypsum),
        ("calcium chloride", BrewingSalt.CalciumChlorideDihydrate),
        ("anhydrous calcium chloride", BrewingSalt.CalciumChlorideAnhydrous),
        ("epsom salt", BrewingSalt.EpsomSalt),
        ("magnesium chloride", BrewingSalt.MagnesiumChlorideHexahydrate),
        ("table salt", BrewingSalt.TableSalt),
        ("baking soda", BrewingSalt.BakingSoda),
        ("slaked lime", BrewingSalt.SlakedLime),
    ];

    internal static readonly SchemaKey[] Keys =
    [
        new Text("name", "Quayside tap", "Shown when the day is chosen."),
        Ion("calcium", "92 mg/L"),
        Ion("magnesium", "11 mg/L"),
        Ion("sodium", "24 mg/L"),
        Ion("chloride", "40 mg/L"),
        Ion("sulphate", "55 mg/L"),
        new Quantity("bicarbonate", Dimension.Concentration, "mg/L", 0, 1500, "250 mg/L", "HCO3; or write alkalinity.", Required: false),
        new Quantity("alkalinity", Dimension.Concentration, "mg/L", 0, 1200, "205 mg/L", "As CaCO3; or write bicarbonate. 1 mmol/L of acid capacity is 50 mg/L.", Required: false),
        new Quantity("ph", Dimension.Acidity, "pH", 5, 9, "7.5", "Of the water as it comes.", Required: false, Default: 7.5),
        new Section("on_hand", OnHand(), "What may be used to treat it.", Least: 0, Many: false),
    ];

    /// <exception cref="ProfileException">The first thing wrong.</exception>
    public static WaterSupply Read(string text, string file)
    {
        var entry = SchemaReader.Read(text, file, Keys);
        var shelf = entry.One("on_hand");
        return new()
        {
            Source = new(entry.Text("name"), Ions(entry), entry.Number("ph")),
            Soft = shelf?.Text("soft_water") == "yes" ? SourceWater.Distilled : null,
            Salts = [.. (shelf?.Texts("salts") ?? []).Where(w => w.Length > 0).Distinct().Select(w => Salts.First(s => s.Word == w).Salt)],
            Acid = shelf is null ? null : Acid(shelf),
            ScaleG = shelf?.Number("scale") ?? 0.1,
        };
    }

    /// <summary>How a file calls a salt or an acid.</summary>
    internal static string Word(BrewingSalt salt) => Salts.First(s => s.Salt == salt).Word;

    internal static string Word(AcidKind acid) => acid == AcidKind.Lactic ? "lactic" : "phosphoric";

    private static WaterIons Ions(SchemaEntry entry)
    {
        var (bicarbonate, alkalinity) = (entry.MaybeNumber("bicarbonate"), entry.MaybeNumber("alkalinity"));
        if (bicarbonate is null == alkalinity is null)
            throw entry.Error("alkalinity", bicarbonate is null
                ? "bicarbonate is missing; write bicarbonate = \"250 mg/L\", or alkalinity = \"205 mg/L\" as CaCO3"
                : "both bicarbonate and alkalinity are given, which tell the same; leave one out");
        return new(
            entry.Number("calcium"), entry.Number("magnesium"), entry.Number("sodium"), entry.Number("chloride"), entry.Number("sulphate"),
            alkalinity ?? bicarbonate!.Value / WaterIons.BicarbonatePerAlkalinity);
    }

    private static AcidOnHand? Acid(SchemaEntry shelf)
    {
        var (kind, strength) = (shelf.Text("acid"), shelf.MaybeNumber("acid_strength"));
        if (kind == "none")
            return null;
        return strength is { } fraction
            ? new(kind == "lactic" ? AcidKind.Lactic : AcidKind.Phosphoric, fraction)
            : throw shelf.Error("acid", $"acid is {kind} without a strength; write acid_strength = \"80 %\" as the label says");
    }

    private static SchemaKey[] OnHand() =>
    [
        new Choice("salts", [.. Salts.Select(s => s.Word)], "Salts on the shelf; none when left out.", Default: "", Many: true),
        new Choice("acid", ["lactic", "phosphoric", "none"], "Concentrated acid burns: add it to water.", Default: "none"),
        new Quantity("acid_strength", Dimension.Fraction, "", 0.01, 0.88, "80 %", "By mass, as the label says.", Required: false),
        new Choice("soft_water", ["yes", "no"], "From reverse osmosis or a still, for dilution.", Default: "no"),
        new Quantity("scale", Dimension.Mass, "g", 0.001, 10, "0.1 g", "Smallest step of the scale for salts.", Required: false, Default: 0.1),
    ];

    private static Quantity Ion(string name, string example) =>
        new(name, Dimension.Concentration, "mg/L", 0, 1000, example, $"Of the analysis; {name} as the ion.");
}
