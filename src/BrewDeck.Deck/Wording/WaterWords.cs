using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Waters;

namespace BrewDeck.Deck.Wording;

/// <summary>What is said of the water.</summary>
public static class WaterWords
{
    public static string Salt(BrewingSalt salt) => salt switch
    {
        BrewingSalt.Gypsum => "gypsum",
        BrewingSalt.CalciumChlorideDihydrate => "calcium chloride dihydrate",
        BrewingSalt.CalciumChlorideAnhydrous => "anhydrous calcium chloride",
        BrewingSalt.EpsomSalt => "Epsom salt",
        BrewingSalt.MagnesiumChlorideHexahydrate => "magnesium chloride",
        BrewingSalt.TableSalt => "table salt",
        BrewingSalt.BakingSoda => "baking soda",
        BrewingSalt.Chalk => "chalk",
        BrewingSalt.SlakedLime => "slaked lime",
        BrewingSalt.PotassiumChloride => "potassium chloride",
        _ => Names.Plainly(salt.ToString()),
    };

    public static string Acid(AcidKind acid) => acid == AcidKind.Lactic ? "lactic acid" : "phosphoric acid";

    /// <summary>A limit of the water by name; null when it is another's.</summary>
    public static string? Limit(string name) => name switch
    {
        "water_analysis_imbalance" => "cations and anions of the analysis differ by",
        "water_mash_ph_low" or "water_mash_ph_high" => "predicted mash pH",
        "water_lactate" => "lactate in the wort",
        _ when name.StartsWith("water_", StringComparison.Ordinal) => Names.Plainly(name["water_".Length..]) + " in the treated water",
        _ => null,
    };

    /// <summary>Figures for the head of a plan; none without an analysis.</summary>
    public static IEnumerable<PlanTotal> Totals(Plan plan, Notation notation)
    {
        if (plan.Water is not { } water)
            yield break;
        if (water.SoftShare > 0)
            yield return new("soft water", Notation.Number(100 * water.SoftShare, "0") + " % of all");
        yield return new("strike liquor", Ions(water.Strike.Ions));
        if (water.Sparge is { } sparge)
            yield return new("sparge liquor", Ions(sparge.Ions));
        yield return new("residual alkalinity", string.Join(", ", water.Doses().Select(d => Notation.Number(d.Ions.ResidualAlkalinityAsCaCO3, "0"))
            .Zip(["strike", "sparge"], (value, of) => $"{of} {value}")) + " mg/L as CaCO3");
        yield return new("mash pH", $"{Notation.Number(water.MashPh, "0.00")} predicted, give or take {Notation.Number(MashAcidity.ErrorBandPh, "0.00")}");
    }

    public static ImmutableArray<string> Treat(PlanStep step, Notation notation)
    {
        var salts = step.Spec.Charges.RemoveAll(c => c.Kind != ChargeKind.Salt);
        var acid = step.Spec.Charges.RemoveAll(c => c.Kind != ChargeKind.Acid);
        return
        [
            .. salts.IsEmpty ? [] : (string[])[$"{Charges.All(salts, notation)}.", "Weigh each; stir until nothing is left to see."],
            .. acid.IsEmpty ? [] : (string[])[$"{Charges.All(acid, notation)}, a little at a time."],
            "Let chlorine go: stir, leave the lid off while it heats, or use your usual tablet.",
        ];
    }

    /// <summary>What of a filling is soft water; empty: nothing.</summary>
    public static ImmutableArray<string> Soft(PlanStep step, Notation notation) =>
        [.. step.Spec.Charges.Where(c => c.Kind == ChargeKind.SoftWater).Select(c => $"First {Charges.One(c, notation)}, the rest from the tap.")];

    private static string Ions(WaterIons ions)
    {
        static string Whole(double value) => Notation.Number(value, "0");
        return $"Ca {Whole(ions.CalciumMgPerL)}, Mg {Whole(ions.MagnesiumMgPerL)}, Na {Whole(ions.SodiumMgPerL)}, Cl {Whole(ions.ChlorideMgPerL)}, "
            + $"SO4 {Whole(ions.SulphateMgPerL)} mg/L";
    }
}
