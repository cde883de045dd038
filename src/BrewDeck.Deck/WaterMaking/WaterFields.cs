using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Waters;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.WaterMaking;

/// <summary>All that is asked of a water: the analysis as a waterworks prints it, then the shelf.</summary>
internal static class WaterFields
{
    private const int LongestName = 60;

    /// <summary>Of the strengths that the labels of acids carry.</summary>
    private const double StrongestPercent = 88;

    /// <summary>Strength that most bottles have, until the label is read.</summary>
    private static readonly Dictionary<AcidKind, double> _usualStrength = new() { [AcidKind.Lactic] = 0.8, [AcidKind.Phosphoric] = 0.1 };

    private static readonly Phrase _ofTheAnalysis = "of the analysis, such as 92 mg/L";

    /// <summary>Nothing is known of it yet.</summary>
    public static WaterSupply Blank { get; } = new() { Source = new("", default, 7.5) };

    public static WaterField.Typed Name { get; } = new(
        n => n.Text("name"), (w, _) => w.Source.Name, "shown when the day is chosen",
        (WaterSupply water, string text, Notation notation, out string fault) =>
        {
            var name = text.Trim();
            fault = name.Length is 0 or > LongestName || name.Any(char.IsControl) ? notation.Text($"Write a name of up to {LongestName} letters.") : "";
            return fault.Length == 0 ? water with { Source = water.Source with { Name = name } } : null;
        });

    /// <summary>Chalk hardly dissolves in plain water and potassium is not kept account of, so neither is offered.</summary>
    private static readonly ImmutableArray<BrewingSalt> _salts =
    [
        BrewingSalt.Gypsum, BrewingSalt.CalciumChlorideDihydrate, BrewingSalt.CalciumChlorideAnhydrous, BrewingSalt.EpsomSalt,
        BrewingSalt.MagnesiumChlorideHexahydrate, BrewingSalt.TableSalt, BrewingSalt.BakingSoda, BrewingSalt.SlakedLime,
    ];

    public static ImmutableArray<WaterField> All { get; } =
    [
        Name,
        Ion(n => n.Text("calcium"), i => i.CalciumMgPerL, (i, v) => i with { CalciumMgPerL = v }),
        Ion(n => n.Text("magnesium"), i => i.MagnesiumMgPerL, (i, v) => i with { MagnesiumMgPerL = v }),
        Ion(n => n.Text("sodium"), i => i.SodiumMgPerL, (i, v) => i with { SodiumMgPerL = v }),
        Ion(n => n.Text("chloride"), i => i.ChlorideMgPerL, (i, v) => i with { ChlorideMgPerL = v }),
        Ion(n => n.Text("sulphate"), i => i.SulphateMgPerL, (i, v) => i with { SulphateMgPerL = v }),
        Ion(n => n.Text("bicarbonate"), i => i.BicarbonateMgPerL, (i, v) => i with { AlkalinityAsCaCO3 = v / WaterIons.BicarbonatePerAlkalinity }) with
        {
            Hint = "of the analysis as HCO3; or type the alkalinity below",
        },
        Ion(n => n.Text("alkalinity as CaCO3"), i => i.AlkalinityAsCaCO3, (i, v) => i with { AlkalinityAsCaCO3 = v }) with
        {
            Hint = "as CaCO3; 1 mmol/L of acid capacity is 50 mg/L",
        },
        new WaterField.Typed(
            n => n.Text("pH as it comes"), (w, n) => n.Number(w.Source.Ph, "0.0#"), "of the analysis, such as 7.5",
            Number(Dimension.Acidity, "pH", 5, 9, "7.5", (w, v) => w with { Source = w.Source with { Ph = v } })),
        .. _salts.Select(Shelf),
        new WaterField.Turned(n => n.Text("acid on the shelf"), (w, n) => w.Acid is { } acid ? WaterWords.Acid(acid.Kind, n) : n.Text("none"), NextAcid),
        new WaterField.Typed(
            n => n.Text("its strength"), (w, n) => w.Acid is { } acid ? n.Percent(acid.MassFraction) : "", "by mass, as the label says, such as 80 %", Strength),
        new WaterField.Turned(
            n => n.Text("soft water for dilution"), (w, n) => OnHand(w.Soft is not null, n), w => w with { Soft = w.Soft is null ? SourceWater.Distilled : null }),
        new WaterField.Typed(
            n => n.Text("scale for salts shows"), (w, n) => n.Number(w.ScaleG, "0.###") + " g", "its smallest step, such as 0.1 g",
            Number(Dimension.Mass, "g", 0.001, 10, "0.1 g", (w, v) => w with { ScaleG = v })),
    ];

    private static WaterField.Typed Ion(Func<Notation, string> label, Func<WaterIons, double> of, Func<WaterIons, double, WaterIons> with) => new(
        label, (w, n) => n.Number(of(w.Source.Ions), "0.#") + " mg/L", _ofTheAnalysis,
        Number(Dimension.Concentration, "mg/L", 0, 1000, "92 mg/L", (w, v) => w with { Source = w.Source with { Ions = with(w.Source.Ions, v) } }));

    private static WaterField Shelf(BrewingSalt salt) => new WaterField.Turned(
        n => WaterWords.Salt(salt, n), (w, n) => OnHand(w.Salts.Contains(salt), n),
        w => w with { Salts = w.Salts.Contains(salt) ? w.Salts.Remove(salt) : [.. _salts.Where(s => s == salt || w.Salts.Contains(s))] });

    private static string OnHand(bool has, Notation notation) => has ? notation.Text("on the shelf") : notation.Text("none");

    private static WaterSupply NextAcid(WaterSupply water) => water with
    {
        Acid = water.Acid switch
        {
            null => new(AcidKind.Lactic, _usualStrength[AcidKind.Lactic]),
            { Kind: AcidKind.Lactic } => new(AcidKind.Phosphoric, _usualStrength[AcidKind.Phosphoric]),
            _ => null,
        },
    };

    private static WaterSupply? Strength(WaterSupply water, string text, Notation notation, out string fault)
    {
        if (water.Acid is not { } acid)
        {
            fault = notation.Text("Choose an acid first, one row up.");
            return null;
        }
        var read = Number(Dimension.Fraction, "%", 1, StrongestPercent, "80 %", (w, v) => w with { Acid = acid with { MassFraction = v / 100 } });
        return read(water, text, notation, out fault);
    }

    private static WaterReader Number(Dimension dimension, string unit, double least, double most, string example, Func<WaterSupply, double, WaterSupply> with) =>
        (WaterSupply water, string text, Notation notation, out string fault) =>
        {
            var value = SumReader.One(new SumInput.Quantity("", "", dimension, unit, least, most, example), text, notation, out var why);
            fault = value is null ? Names.Sentence(why) + "." : "";
            return value is { } read ? with(water, QuantityUnits.Tidy(read)) : null;
        };
}
