using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Waters;

namespace BrewDeck.Deck.Wording;

/// <summary>What is said of the water.</summary>
public static class WaterWords
{
    public static string Salt(BrewingSalt salt, Notation notation) => salt switch
    {
        BrewingSalt.Gypsum => notation.Text("gypsum"),
        BrewingSalt.CalciumChlorideDihydrate => notation.Text("calcium chloride dihydrate"),
        BrewingSalt.CalciumChlorideAnhydrous => notation.Text("anhydrous calcium chloride"),
        BrewingSalt.EpsomSalt => notation.Text("Epsom salt"),
        BrewingSalt.MagnesiumChlorideHexahydrate => notation.Text("magnesium chloride"),
        BrewingSalt.TableSalt => notation.Text("table salt"),
        BrewingSalt.BakingSoda => notation.Text("baking soda"),
        BrewingSalt.Chalk => notation.Text("chalk"),
        BrewingSalt.SlakedLime => notation.Text("slaked lime"),
        BrewingSalt.PotassiumChloride => notation.Text("potassium chloride"),
        _ => Names.Plainly(salt.ToString()),
    };

    public static string Acid(AcidKind acid, Notation notation) => acid == AcidKind.Lactic ? notation.Text("lactic acid") : notation.Text("phosphoric acid");

    /// <summary>A limit of the water by name; null when it is another's.</summary>
    public static string? Limit(string name, Notation notation) => name switch
    {
        LimitName.AnalysisImbalance => notation.Text("cations and anions of the analysis differ by"),
        LimitName.MashPhLow or LimitName.MashPhHigh => notation.Text("predicted mash pH"),
        LimitName.Lactate => notation.Text("lactate in the wort"),
        _ when LimitName.InWater(name) is { } ion => Names.Plainly(ion) + notation.Text(" in the treated water"),
        _ => null,
    };

    /// <summary>Figures for the head of a plan; none without an analysis.</summary>
    public static IEnumerable<PlanTotal> Totals(Plan plan, Notation notation)
    {
        if (plan.Water is not { } water)
            yield break;
        if (water.SoftShare > 0)
            yield return new(notation.Text("soft water"), notation.Number(100 * water.SoftShare, "0") + notation.Text(" % of all"));
        yield return new(notation.Text("strike liquor"), Ions(water.Strike.Ions, notation));
        if (water.Sparge is { } sparge)
            yield return new(notation.Text("sparge liquor"), Ions(sparge.Ions, notation));
        yield return new(notation.Text("residual alkalinity"), string.Join(", ", water.Doses().Select(d => notation.Number(d.Ions.ResidualAlkalinityAsCaCO3, "0"))
            .Zip([notation.Text("strike"), notation.Text("sparge")], (value, of) => $"{of} {value}")) + notation.Text(" mg/L as CaCO3"));
        yield return new(notation.Text("mash pH"), UsualPh(water.MashPh, notation) is { Length: > 0 } usual
            ? notation.Text($"{notation.Number(water.MashPh, "0.00")} predicted, {usual}")
            : notation.Text($"{notation.Number(water.MashPh, "0.00")} predicted, give or take {notation.Number(MashAcidity.ErrorBandPh, "0.00")}"));
    }

    /// <summary>"5.20 to 5.60 is usual" of a mash pH beyond that; empty: it is within.</summary>
    public static string UsualPh(double ph, Notation notation) => ph is >= WaterChemistry.MashPhLow and <= WaterChemistry.MashPhHigh ? ""
        : notation.Text($"{notation.Number(WaterChemistry.MashPhLow, "0.00")} to {notation.Number(WaterChemistry.MashPhHigh, "0.00")} is usual");

    public static ImmutableArray<string> Treat(PlanStep step, Notation notation)
    {
        var salts = step.Spec.Charges.RemoveAll(c => c.Kind != ChargeKind.Salt);
        var acid = step.Spec.Charges.RemoveAll(c => c.Kind != ChargeKind.Acid);
        return
        [
            .. salts.IsEmpty ? [] : (string[])[$"{Charges.All(salts, notation)}.", notation.Text("Weigh each; stir until nothing is left to see.")],
            .. acid.IsEmpty ? [] : (string[])[notation.Text($"{Charges.All(acid, notation)}, a little at a time.")],
            notation.Text("Drive off chlorine: stir, leave the lid off while it heats, or use your usual tablet."),
        ];
    }

    /// <summary>What of a filling is soft water; empty: nothing.</summary>
    public static ImmutableArray<string> Soft(PlanStep step, Notation notation) =>
        [.. step.Spec.Charges.Where(c => c.Kind == ChargeKind.SoftWater).Select(c => notation.Text($"First {Charges.One(c, notation)}, the rest from the tap."))];

    private static string Ions(WaterIons ions, Notation notation)
    {
        string Whole(double value) => notation.Number(value, "0");
        return $"Ca {Whole(ions.CalciumMgPerL)}, Mg {Whole(ions.MagnesiumMgPerL)}, Na {Whole(ions.SodiumMgPerL)}, Cl {Whole(ions.ChlorideMgPerL)}, "
            + $"SO4 {Whole(ions.SulphateMgPerL)} mg/L";
    }
}
