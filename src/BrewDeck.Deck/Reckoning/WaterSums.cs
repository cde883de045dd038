using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Salts, acid and residual alkalinity.</summary>
internal static class WaterSums
{
    private static readonly ImmutableArray<(string Name, BrewingSalt Salt)> Salts =
    [
        ("gypsum", BrewingSalt.Gypsum), ("calcium-chloride", BrewingSalt.CalciumChlorideDihydrate), ("epsom-salt", BrewingSalt.EpsomSalt),
        ("table-salt", BrewingSalt.TableSalt), ("baking-soda", BrewingSalt.BakingSoda),
    ];

    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "salt",
            "A salt in water",
            [
                new SumInput.Choice("salt", "salt", [.. Salts.Select(s => s.Name)]),
                new SumInput.Quantity("mass", "salt", Dimension.Mass, "g", 0, 1e5, "5 g"), Volume("volume", "water", "40 L"),
            ],
            [
                Rise("calcium", "calcium"), Rise("magnesium", "magnesium"), Rise("sodium", "sodium"), Rise("sulphate", "sulphate"),
                Rise("chloride", "chloride"), Rise("bicarbonate", "bicarbonate"),
            ],
            "molar masses, water of crystallisation counted (calcium chloride as dihydrate)",
            "IUPAC 2021 atomic weights",
            "all dissolved; an opened bag of calcium chloride is weaker",
            v => Ions(Salts[v.Choice("salt")].Salt, v["mass"], v["volume"])),
        new(
            "residual-alkalinity",
            "Residual alkalinity",
            [
                Number("alkalinity", "alkalinity as CaCO3", "mg/L", 0, 1000, "150"), Number("calcium", "calcium", "mg/L", 0, 1000, "60"),
                Number("magnesium", "magnesium", "mg/L", 0, 500, "10", "0"),
            ],
            [new("residual_as_caco3", "residual alkalinity as CaCO3", "mg/L", "0"), new("ph_change", "moves the wort's pH by", "", "0.00")],
            "alkalinity - Ca/3.5 - Mg/7, all as CaCO3",
            "Kolbach 1953",
            "pale grists; dark malt brings acid of its own",
            v => Residual(WaterChemistry.ResidualAlkalinityFromIons(v["alkalinity"], v["calcium"], v["magnesium"]))),
        new(
            "acid",
            "Acid for alkaline water",
            [
                Volume("volume", "water", "60 L"), Number("alkalinity", "alkalinity as CaCO3", "mg/L", 0, 1000, "150"),
                Number("ph", "its pH", "", 6, 9, "7.5", "7.5"), Number("target", "pH wanted", "", 5, 7, "5.6", "5.6"),
                new SumInput.Choice("acid", "acid", ["lactic-80", "lactic-88", "phosphoric-10", "phosphoric-75"]),
            ],
            [new("acid_ml", "acid", "mL"), new("taken_as_caco3", "removes alkalinity as CaCO3", "mg/L", "0")],
            "carbonate equilibria in a closed vessel",
            "pK 6.35 and 10.33 near 25 °C; strengths and densities as labelled (1.19, 1.21, 1.05, 1.58 g/mL)",
            "water alone, pH 5 to 7 wanted",
            v => Acid(v),
            "Concentrated acid burns: acid into water, never the other way; eyes and hands covered."),
    ];

    private static SumOutput Rise(string ion, Phrase label) => new(ion + "_mg_per_l", $"{label} rises by", "mg/L", "0.0");

    private static double[] Ions(BrewingSalt salt, double grams, double litres) =>
        [.. new[] { Ion.Calcium, Ion.Magnesium, Ion.Sodium, Ion.Sulphate, Ion.Chloride, Ion.Bicarbonate }.Select(i => BrewingSalts.IonMgPerL(salt, i, grams, litres))];

    private static double[] Residual(double asCaCO3) => [asCaCO3, WaterChemistry.WortPhChange(asCaCO3)];

    private static double[] Acid(SumValues v)
    {
        var mEqPerL = Math.Max(0, WaterChemistry.AcidMEqPerL(v["alkalinity"], v["ph"], v["target"]));
        var strength = v.Choice("acid") switch
        {
            0 => Acids.MmolPerMl(0.80, 1.19, Acids.LacticGPerMol) * Acids.LacticProtons(v["target"]),
            1 => Acids.MmolPerMl(0.88, 1.21, Acids.LacticGPerMol) * Acids.LacticProtons(v["target"]),
            2 => Acids.MmolPerMl(0.10, 1.05, Acids.PhosphoricGPerMol) * Acids.PhosphoricProtons(v["target"]),
            _ => Acids.MmolPerMl(0.75, 1.58, Acids.PhosphoricGPerMol) * Acids.PhosphoricProtons(v["target"]),
        };
        return [mEqPerL * v["volume"] / strength, mEqPerL * WaterChemistry.CaCO3MgPerMEq];
    }
}
