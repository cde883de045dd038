using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static class ExtractRows
{
    // the row names one gravity; the other end of the boil is taken as an ordinary wort
    private const double OrdinaryWortSg = 1.050;

    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["SG points of sucrose"] = _ => Extract.SucrosePointsSixtyFahrenheit,
            ["SG points of sucrose, commonly quoted"] = _ => Extract.SucrosePointsGalPerLb,
            ["conversion points lb/gal to points kg/L"] = row =>
                Extract.PointsLPerKg(row.Number(0)) / row.Number(0),
            ["exact unit factor (US gal/lb to L/kg)"] = _ => UsUnits.LitresPerKgFromGallonsPerPound,
            ["qt/lb to L/kg"] = row => row.Number(0) * UsUnits.LitresPerKgFromQuartsPerPound,
            ["final volume for a target gravity"] = row =>
                Extract.VolumeForPoints(row["V1"], Extract.Points(row["SG1"]), Extract.Points(row["target"])),
            ["boil time for a target gravity"] = row => Extract.BoilHoursForPoints(
                row["V1"], Extract.Points(row["SG1"]), Extract.Points(row["target"]), row["evaporation"]),
            ["start volume to keep a 1.5 h boil"] = row => Liquor.TotalL(row["V2"], 0.0, 0.0, row["evaporated"], 0.0),
            ["extract yield of dry malt extract (as sucrose)"] = _ => 100.0 * Extract.DryMaltExtractYield,
            ["extract yield of dextrose (corn sugar, as sucrose)"] = _ => 100.0 * Extract.DextroseYield,
            ["validity of points x volume = constant"] = row =>
                100.0 * Extract.PointsErrorFraction(OrdinaryWortSg, row["SG"]),
            ["wort gravity from malt"] = row => Extract.SgFromPoints(Extract.WortPoints(
                row.Number(0), Extract.Points(row.Number(1)), row.Fraction("extract efficiency"), row.Number(2))),
            ["potential extract convention"] = row => Convention(row.Text("ingredient")),
            ["original gravity of an extract recipe"] = row =>
                Extract.WortPoints(row.Number(0), row.Number(1), 1.0, row["V"])
                + Extract.WortPoints(row.Number(2), row.Number(3), row.Number(4), row["V"]),
            ["base malt for a share of the gravity units"] = MaltForShareKg,
            ["crystal malt for a share of the gravity units"] = MaltForShareKg,
            ["base malt mass"] = row =>
                Extract.MassForPoints(Extract.Points(row["OG"]) * row["V"], row["realised yield"]),
            ["extract mass per US barrel"] = row => Pounds(Extract.MassKg(row.Si("V"), row["P"])),
            ["extract for a brew"] = row => Pounds(Extract.MassKg(row.Si("V"), row["P"])),
            ["2-row malt for a share of extract"] = row =>
                Extract.GrainKg(row.Number(0) * row.Number(1), row["malt yield"], row["brew efficiency"]),
            ["extract concentration"] = row => 1000.0 * SugarSolution.ExtractKgPerL(row["P"], 20.0),
            ["as-is extract from dry-basis extract"] = row =>
                100.0 * Extract.AsIs(row.Fraction("extract dry basis"), row.Fraction("moisture")),
            ["extract required"] = row =>
                1000.0 * Extract.CourseExtractKg(row["P"], row["V"], row.Fraction("efficiency")),
            ["malt for a brew (two malts): wheat malt"] = row => 1000.0 * Extract.GrainKg(
                row.Number(4) / 100.0 * Extract.CourseExtractKg(row.Number(1), row["V"], row.Fraction("efficiency")),
                row.Number(5) / 100.0, 1.0),
            ["potential from fine-grind as-is extract"] = row => Extract.PotentialPoints(
                Extract.AsIs(row.Fraction("fine grind dry basis"), row.Fraction("moisture")), row["sucrose constant"]),
            ["coarse-grind as-is extract"] = row => 100.0 * Extract.CoarseGrindAsIs(
                row.Fraction("fine grind dry basis"), row.Fraction("fine-coarse difference"), row.Fraction("moisture")),
            ["potential from dry-basis extract (short rule)"] = row =>
                Extract.PotentialPoints(row.Fraction("extract"), row["constant"]),
            ["mash (lauter) efficiency"] = row => 100.0 * Extract.PointsEfficiency(
                Extract.Points(row["SG"]), row["volume"], row["grain"], row["potential"]),
            ["brewhouse yield (mass balance)"] = row => 100.0 * Extract.BrewhouseYield(
                row["grain"], row.Fraction("as-is extract"), row["wort"], row["P"]),
            ["real extract"] = RealExtract,
            ["measured real extract (dataset mean)"] = RealExtract,
            ["alcohol by weight (Balling)"] = row => Fermentation.Abw(row["OE"], RealExtract(row)),
            ["measured alcohol (dataset mean)"] = row => Fermentation.Abw(row["OE"], RealExtract(row)),
            ["alcohol by volume"] = row => Fermentation.Abv(row["OE"], row["AE"]),
            ["apparent attenuation"] = row => row.Has("OG")
                ? Fermentation.ApparentAttenuationSg(row["OG"], row["FG"])
                : 100.0 * Fermentation.ApparentAttenuation(row["OE"], row["AE"]),
            ["final gravity from attenuation"] = row => Fermentation.FinalSg(row["OG"], row["attenuation"]),
            ["real attenuation"] = row => 100.0 * Fermentation.RealAttenuation(row["OE"], RealExtract(row)),
            ["real degree of fermentation (ASBC Beer-6B)"] = row =>
                100.0 * Fermentation.RealDegreeOfFermentation(row["OE"], row["RE"]),
            ["original extract from alcohol and real extract"] = row =>
                Fermentation.OriginalExtract(row["A"], row["RE"]),
            ["Balling carbon balance: CO2"] = row => Fermentation.Co2FromExtract(row["extract fermented"]),
            ["alcohol by weight (Cutaia regression)"] = row => Fermentation.CutaiaAbw(row["OE"], row["AE"]),
            ["ABV rule of thumb (136)"] = row => Fermentation.AbvRule136(row["OG"], row["FG"]),
            ["ABV (105 x 1.27)"] = row => Fermentation.AbvRule105(row["OG"], row["FG"]),
            ["ABV (divisor 7.46)"] = row => Fermentation.AbvRule746(row["OG"] / 1000.0, row["FG"] / 1000.0),
            ["ABV (131.25 rule)"] = row => Fermentation.AbvRule131(row["OG"], row["FG"]),
            ["ABV (Hall / Fix high-gravity form)"] = row => Fermentation.AbvHall(row["OG"], row["FG"]),
        };

    private static double RealExtract(ReferenceRow row) => Fermentation.RealExtract(row["OE"], row["AE"]);

    private static double Pounds(double kg) => kg / UsUnits.KgPerPound;

    private static double MaltForShareKg(ReferenceRow row) =>
        UsUnits.KgPerPound * Extract.MassForPoints(row["share"], row["potential"], row["efficiency"]);

    private static double Convention(string ingredient) => ingredient switch
    {
        "dried malt extract" => PotentialConvention.DriedMaltExtract,
        "Munich malt" => PotentialConvention.MunichMalt,
        "crystal malt" => PotentialConvention.CrystalMalt,
        "chocolate malt" => PotentialConvention.ChocolateMalt,
        "dark roasted grain" => PotentialConvention.RoastedGrain,
        "flaked maize or rice" => PotentialConvention.FlakedMaizeOrRice,
        _ => throw new KeyNotFoundException(ingredient),
    };
}
