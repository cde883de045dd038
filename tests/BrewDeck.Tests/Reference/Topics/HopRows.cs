using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class HopRows
{
    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["Tinseth utilisation (printed table cell)"] = Tinseth,
            ["interpolated utilisation"] = Tinseth,
            ["IBU of an addition"] = row =>
                Bitterness.IbuFromAau(row["AAU"], row["utilisation"], row["V"], Bitterness.RoundedAauConstant),
            ["total IBU"] = row =>
                Bitterness.IbuFromAau(row.Number(0), row.Number(1), row["V"], Bitterness.RoundedAauConstant)
                + Bitterness.IbuFromAau(row.Number(2), row.Number(3), row["V"], Bitterness.RoundedAauConstant),
            ["IBU (Tinseth)"] = TinsethIbu,
            ["IBU (Tinseth, metric)"] = TinsethIbu,
            ["Rager utilisation (table)"] = row => 100.0 * InClass(row, HopTables.RagerUtilisation),
            ["Rager utilisation (tanh fit)"] = row => 100.0 * Bitterness.RagerUtilisation(row["t"]),
            ["gravity adjustment (Rager)"] = row => Bitterness.RagerGravityAdjustment(row["boil gravity"]),
            ["IBU (Rager)"] = row => Bitterness.RagerIbu(
                row["hops"], row.Fraction("alpha"), HopTables.RagerUtilisation(row["boil"]), row["V"], Adjustment(row)),
            ["hop mass for target IBU (Rager)"] = row => Bitterness.RagerOunces(
                row["target"], row.Fraction("alpha"), HopTables.RagerUtilisation(row["boil"]), row["V"],
                Adjustment(row)),
            ["Garetz utilisation (table)"] = row => InClass(row, HopTables.GaretzUtilisation),
            ["Daniels utilisation, whole hops (table)"] = row =>
                InClass(row, minutes => HopTables.DanielsUtilisation(minutes, pellets: false)),
            ["Daniels utilisation, pellets (table)"] = row =>
                InClass(row, minutes => HopTables.DanielsUtilisation(minutes, pellets: true)),
            ["ideal bitterness at 100 % utilisation"] = row =>
                Bitterness.Ibu(row["hops"], row.Fraction("alpha"), 1.0, row["V"]),
            // pure alpha acids in one litre: grams are then thousands of mg/L
            ["bitterness at 25 % utilisation"] = row =>
                Bitterness.Ibu(row["ideal"] / 1000.0, 1.0, row["utilisation"], 1.0),
            ["alpha acid units"] = row => Bitterness.AlphaAcidUnits(row.Number(0), row.Number(1) / 100.0),
            ["hop mass (simple method)"] = row => Bitterness.MassG(
                row.Number(1), row.Fraction("alpha"), row["utilisation"], row["V"]),
            ["hop substitution at equal alpha"] = row => Bitterness.SubstituteMassG(
                row.Number(0), row.Number(1) / 100.0, row.Number(2) / 100.0),
            ["IBU (HBU form)"] = row => Bitterness.PapazianIbu(
                row["W"], row.Fraction("alpha"), row.Fraction("utilisation"), row["V"]),
            ["IBU by the BYO convention"] = row =>
                Bitterness.IbuFromAau(row["AAU"], Bitterness.MagazineHourUtilisation, row["V"]),
            ["hop stand utilisation convention"] = _ => 100.0 * Bitterness.MagazineHopStandUtilisation,
            ["hop dose for whole cones vs pellets"] = _ => Bitterness.MagazineConeFactor,
            ["activation energy of isomerisation"] = _ => Isomerisation.K1ActivationJPerMol / 1e3,
            ["activation energy of degradation"] = _ => Isomerisation.K2ActivationJPerMol / 1e3,
            ["alpha-acid solubility limit"] = _ => Isomerisation.AlphaSolubilityMgPerL,
            ["isomerisation rate constant k1"] = row => Isomerisation.K1PerMin(row.Celsius("t")),
            ["degradation rate constant k2"] = row => Isomerisation.K2PerMin(row.Celsius("t")),
            ["iso-alpha acids formed (fraction of initial alpha)"] = row =>
                Isomerisation.IsoFraction(row.Celsius("t_wort"), row["time"]),
            ["isomerisation rate relative to 100 degC"] = row => Isomerisation.RelativeRate(row.Celsius("t")),
            ["isomerisation rate at altitude relative to sea level boil"] = row => Isomerisation.RelativeRate(
                Atmosphere.BoilingPointAtGeopotentialC(row["geopotential altitude"])),
            ["isomerisation rate constant k1 (refit for pellets)"] = row => PelletKinetics.K1PerMin(row.Celsius("t")),
            ["loss to trub"] = _ => PelletKinetics.TrubLossPerPlato,
            ["cones relative to pellets"] = _ => PelletKinetics.ConeFactor,
            ["IBU (kinetic pellet model, constant temperature)"] = row => PelletKinetics.Ibu(
                row["hops"], row.Fraction("alpha"), row.Number(2), row.Number(3), row["cold wort volume"], row["P"]),
        };

    private static double Tinseth(ReferenceRow row) => Bitterness.TinsethUtilisation(row["SG"], row["t"]);

    private static double TinsethIbu(ReferenceRow row) =>
        Bitterness.Ibu(1000.0 * row.Si("hops"), row.Fraction("alpha"), Tinseth(row), row.Si("V"));

    private static double Adjustment(ReferenceRow row) =>
        row.Has("GA") ? row["GA"] : Bitterness.RagerGravityAdjustment(row["OG"]);

    // "11-15 min", "less than 5 min", "75 and more (printed 70-...) min": the value must hold at both ends of the class
    private static double InClass(ReferenceRow row, Func<double, double> utilisation)
    {
        var text = row.Text("boil time class");
        var ends = ReferenceRow.NumbersIn(text.Split('(')[0]).ToArray();
        var (first, last) = (utilisation(ends[0]), utilisation(ends[^1]));
        return first == last ? first : double.NaN;
    }
}
