using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class BoilRows
{
    private const double OrdinaryPlato = 12.0;

    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["upper bound of evaporation rate"] = row =>
                3600.0 * Boil.EvaporationKgPerS(row.Si("net power"), row.Number(1)),
            ["evaporation rate with wall losses"] = row =>
                3600.0 * Boil.EvaporationKgPerS(row.Si("element") - row.Si("losses"), 100.0),
            ["volume of water boiled off per kg, cold volume"] = row =>
                SugarSolution.VolumeL(row.Number(0), 0.0, row.Number(1)),
            ["volume expansion of water 20 to 100 degC"] = _ => 100.0 * Water.ExpansionFraction(20.0, 100.0),
            ["volume expansion of water from 20 degC"] = row => 100.0 * Water.ExpansionFraction(20.0, row.Celsius("t")),
            ["cooling shrinkage, brewing rule"] = row =>
                100.0 * SugarSolution.ShrinkageFraction(OrdinaryPlato, row.Number(0), row.Number(1)),
            ["evaporation rate, usual atmospheric kettle"] = _ => 100.0 * Boil.UsualEvaporationFractionPerH,
            ["extract after boil (mass balance)"] = row => Boil.PlatoAfterL20(row["V1"], row["P1"], EvaporatedL20(row)),
            ["volume after boil (mass balance)"] = row => Boil.VolumeAfterL20(row["V1"], row["P1"], EvaporatedL20(row)),
            ["points method vs mass balance (post-boil gravity)"] = row =>
                Extract.PointsAfter(row["V1"], Extract.Points(row["SG1"]), row["V2"]),
            ["post-boil gravity"] = row => Concentrated(row.Number(0), row.Number(1), row.Number(2)),
            ["pre-boil to original gravity as printed"] = row =>
                Concentrated(row.Number(0), row.Number(1), row.Number(2)),
            ["volume in a cylindrical kettle"] = KettleL,
            ["cold volume of a kettle reading at boiling"] = row =>
                SugarSolution.VolumeL(SugarSolution.MassKg(KettleL(row), 0.0, row.Number(2)), 0.0, 20.0),
        };

    private static double EvaporatedL20(ReferenceRow row) => row["evaporation"] * row["time"];

    private static double Concentrated(double volume, double sg, double newVolume) =>
        Extract.SgFromPoints(Extract.PointsAfter(volume, Extract.Points(sg), newVolume));

    private static double KettleL(ReferenceRow row) => Cylinder.VolumeL(row.Si("diameter"), row.Si("liquid height"));
}
