using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class YeastRows
{
    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["yeast cells to pitch"] = row => Pitching.CellsBillion(row["rate"], row.Si("V"), row["P"]),
            ["pitch rate, ale"] = _ => Pitching.AleMillionPerMlPlato,
            ["pitch rate, lager"] = _ => Pitching.LagerMillionPerMlPlato,
            ["pitch rate, textbook"] = _ => Pitching.TextbookMillionPerMlPlato,
            ["cells for a 1.050 ale"] = row => Pitching.CellsBillion(
                Pitching.AleMillionPerMlPlato, row.Number(0) * UsUnits.LitresPerGallon,
                SugarSolution.PlatoFromSg(row.Number(1))),
            ["residual CO2 after fermentation at 1 atm CO2"] = row => Carbonation.ResidualCo2Volumes(row.Celsius("t")),
            ["residual CO2 (quadratic in degF)"] = row => Carbonation.ResidualCo2Volumes(row.Celsius("t")),
            ["glucose per volume of CO2 (Draper)"] = _ => Carbonation.DraperGlucoseGPerLVolume,
            ["CO2 from glucose by stoichiometry"] = _ => Carbonation.GlucoseYield,
            ["solids in glucose monohydrate"] = _ => Carbonation.MonohydrateSolids,
            ["CO2 per volume"] = _ => Carbonation.GramsPerVolumeL,
            ["CO2 per volume (real gas)"] = _ => Carbonation.RealGasGramsPerVolumeL,
            ["glucose to give 1 g CO2"] = _ => 1.0 / Carbonation.GlucoseYield,
            ["priming sugar mass"] = row => Carbonation.PrimingSugarG(
                row["target"], row["residual"], row["beer"],
                row.Text("sugar") == "sucrose" ? Carbonation.SucroseYield : Carbonation.MonohydrateYield),
            ["CO2 solubility in pure water at 1 atm total pressure"] = row =>
                Carbonation.SolubilityVolumes(row.Celsius("t")),
        };
}
