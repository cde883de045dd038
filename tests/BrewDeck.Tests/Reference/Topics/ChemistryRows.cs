using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class ChemistryRows
{
    // calcium carbonate as an "ion" of the equivalents table is answered by its own constant
    private static readonly Dictionary<string, Ion> IonNames = new()
    {
        ["Ca"] = Ion.Calcium,
        ["Mg"] = Ion.Magnesium,
        ["Na"] = Ion.Sodium,
        ["K"] = Ion.Potassium,
        ["Cl"] = Ion.Chloride,
        ["SO4"] = Ion.Sulphate,
        ["HCO3"] = Ion.Bicarbonate,
        ["CO3"] = Ion.Carbonate,
        ["OH"] = Ion.Hydroxide,
    };

    private static readonly (string Start, BrewingSalt Salt)[] SaltNames =
    [
        ("gypsum", BrewingSalt.Gypsum),
        ("calcium chloride anhydrous", BrewingSalt.CalciumChlorideAnhydrous),
        ("calcium chloride", BrewingSalt.CalciumChlorideDihydrate),
        ("epsom", BrewingSalt.EpsomSalt),
        ("magnesium chloride", BrewingSalt.MagnesiumChlorideHexahydrate),
        ("table salt", BrewingSalt.TableSalt),
        ("baking soda", BrewingSalt.BakingSoda),
        ("chalk", BrewingSalt.Chalk),
        ("slaked lime", BrewingSalt.SlakedLime),
        ("potassium chloride", BrewingSalt.PotassiumChloride),
    ];

    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["ion contribution of 1 g/L"] = row => BrewingSalts.IonMgPerL(SaltOf(row), IonOf(row), 1.0, 1.0),
            ["ion contribution of 1 g per US gal"] = IonPerGallon,
            ["ion contribution of 1 g per US gal (printed)"] = IonPerGallon,
            ["molar mass"] = row => BrewingSalts.GramsPerMol(SaltOf(row)),
            ["hardness from 1 g gypsum per US gal (printed)"] = row => WaterChemistry.HardnessAsCaCO3(
                BrewingSalts.IonMgPerL(SaltOf(row), Ion.Calcium, 1.0, UsUnits.LitresPerGallon), 0.0),
            ["equivalent mass"] = EquivalentMass,
            ["equivalent mass (printed)"] = EquivalentMass,
            ["alkalinity from bicarbonate"] = row => WaterChemistry.AlkalinityAsCaCO3(row["HCO3"]),
            ["alkalinity from bicarbonate, exact titration"] = row =>
                WaterChemistry.TitratedAlkalinityAsCaCO3(row["HCO3"], row["pH"]),
            ["residual alkalinity"] = row => row.Has("Ca hardness")
                ? WaterChemistry.ResidualAlkalinityAsCaCO3(row["alkalinity"], row["Ca hardness"], row["Mg hardness"])
                : ResidualFromIons(row),
            ["residual alkalinity, wrong-units trap"] = row =>
                WaterChemistry.ResidualAlkalinityFromIons(row["alkalinity"], row.Number(1), row.Number(2)),
            ["residual alkalinity in mEq/L"] = row => ResidualFromIons(row) / WaterChemistry.CaCO3MgPerMEq,
            ["knock-out wort pH change with residual alkalinity"] = row =>
                WaterChemistry.WortPhChange(row["RA change"] * WaterChemistry.GermanDegreeAsCaCO3),
            ["knock-out wort pH slope"] = _ => WaterChemistry.WortPhChange(WaterChemistry.CaCO3MgPerMEq),
            ["German degree of hardness"] = _ => WaterChemistry.GermanDegreeAsCaCO3,
            ["Clark (English) degree"] = _ => WaterChemistry.ClarkDegreeAsCaCO3,
            ["mash pH window"] = _ => (WaterChemistry.MashPhLow + WaterChemistry.MashPhHigh) / 2.0,
            ["distilled-water mash pH of pils malt"] = _ => WaterChemistry.PilsnerMaltDistilledPh,
            ["lactic acid strength (total)"] = LacticStrength,
            ["lactic acid delivered to pH 5.4"] = row => LacticStrength(row) * Acids.LacticProtons(5.4),
            ["alkalinity removed by lactic acid"] = AlkalinityRemoved,
            ["phosphoric acid strength (molar)"] = PhosphoricStrength,
            ["phosphoric acid protons delivered to pH 5.4"] = row =>
                PhosphoricStrength(row) * Acids.PhosphoricProtons(5.4),
            ["acid needed to bring water to pH 5.5"] = row =>
                WaterChemistry.AcidMEqPerL(row["alkalinity"], row["pH"], 5.5, row["pK1"], row["pK2"]),
            ["cation sum"] = CationSum,
            // "3 g gypsum CaSO4.2H2O in 20 L; ion=Ca"
            ["ion increase from a salt addition"] = row => BrewingSalts.IonMgPerL(
                Salt(After(row, "g ")), IonOf(row), row.Number(0), ReferenceRow.NumbersIn(After(row, " in ")).First()),
        };

    private static double IonPerGallon(ReferenceRow row) =>
        BrewingSalts.IonMgPerL(SaltOf(row), IonOf(row), 1.0, UsUnits.LitresPerGallon);

    private static double EquivalentMass(ReferenceRow row) => row.Text("ion") == "CaCO3"
        ? WaterChemistry.CaCO3MgPerMEq
        : Ions.EquivalentMass(IonOf(row));

    private static double ResidualFromIons(ReferenceRow row) =>
        WaterChemistry.ResidualAlkalinityFromIons(row["alkalinity"], row["Ca"], row["Mg"]);

    private static double LacticStrength(ReferenceRow row) =>
        Acids.MmolPerMl(row.Number(0) / 100.0, row["density"], Acids.LacticGPerMol);

    private static double PhosphoricStrength(ReferenceRow row) =>
        Acids.MmolPerMl(row.Number(0) / 100.0, row["density"], Acids.PhosphoricGPerMol);

    // "0.64 mL of 88 % lactic acid (SG 1.21) per US gal" or "per L"
    private static double AlkalinityRemoved(ReferenceRow row) => Acids.AlkalinityRemovedAsCaCO3(
        row.Number(0),
        Acids.MmolPerMl(row.Number(1) / 100.0, row.Number(2), Acids.LacticGPerMol),
        row.Inputs.EndsWith("per US gal", StringComparison.Ordinal) ? UsUnits.LitresPerGallon : 1.0);

    // "Ca 100, Mg 10, Na 20, Cl 90, SO4 150, HCO3 100 mg/L"
    private static double CationSum(ReferenceRow row) => row.Inputs
        .Split(',', StringSplitOptions.TrimEntries)
        .Select(part => part.Split(' '))
        .Select(words => (Ion: IonNames[words[0]], MgPerL: ReferenceRow.NumbersIn(" " + words[1]).Single()))
        .Where(each => Ions.Charge(each.Ion) > 0)
        .Sum(each => WaterChemistry.MEqPerL(each.Ion, each.MgPerL));

    private static string After(ReferenceRow row, string mark) =>
        row.Inputs[(row.Inputs.IndexOf(mark, StringComparison.Ordinal) + mark.Length)..];

    private static Ion IonOf(ReferenceRow row) => IonNames[row.Text("ion")];

    private static BrewingSalt SaltOf(ReferenceRow row) => Salt(row.Text("salt"));

    private static BrewingSalt Salt(string text) =>
        SaltNames.First(each => text.StartsWith(each.Start, StringComparison.Ordinal)).Salt;
}
