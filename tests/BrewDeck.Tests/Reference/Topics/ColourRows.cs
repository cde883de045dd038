using System.Globalization;
using System.Text.RegularExpressions;
using BrewDeck.Core.Physics;

namespace BrewDeck.Tests.Reference.Topics;

internal static partial class ColourRows
{
    public static readonly IReadOnlyDictionary<string, Func<ReferenceRow, double>> Kernels =
        new Dictionary<string, Func<ReferenceRow, double>>
        {
            ["beer colour (Morey)"] = row => Colour.MoreySrm(row["MCU"]),
            ["beer colour (Daniels linear)"] = row => Colour.DanielsSrm(row["MCU"]),
            ["beer colour (Mosher linear)"] = row => Colour.MosherSrm(row["MCU"]),
            ["beer colour (Druey fit to Daniels)"] = row => Colour.DrueyDanielsSrm(row["MCU"]),
            ["beer colour (Druey fit to Noonan)"] = row => Colour.DrueyNoonanSrm(row["MCU"]),
            ["beer colour (Morey rounded 2015 form)"] = row => Colour.MoreyRoundedSrm(row["MCU"]),
            ["MCU giving 40 SRM"] = row =>
                row.Text("model") == "Morey" ? Colour.MoreyRoundedMcu(40.0) : Colour.DrueyDanielsMcu(40.0),
            ["colour prediction uncertainty"] = _ => 100.0 * Colour.PredictionUncertaintyFraction,
            ["EBC from SRM"] = row => Colour.EbcFromSrm(row["SRM"]),
            ["EBC/SRM ratio from the definitions"] = _ => Colour.EbcPerSrm,
            ["EBC from absorbance"] = row => Colour.EbcFromAbsorbance(row["A430(1 cm cuvette)"], row["dilution"]),
            ["SRM from absorbance"] = row => Colour.SrmFromAbsorbance(row["A430(1 cm cuvette)"], row["dilution"]),
            ["EBC malt colour from Lovibond (older)"] = row => Colour.OlderEbcFromLovibond(row.Number(0)),
            ["SRM from Lovibond"] = row => Colour.SrmFromLovibond(row.Number(0)),
            ["malt colour units"] = GristMcu,
            ["beer colour (Morey) of a grist"] = row => Colour.MoreySrm(GristMcu(row)),
            ["beer colour (Morey, metric inputs)"] = row => Colour.EbcFromSrm(Colour.MoreySrm(MetricMcu(row))),
            ["absorbance vs path length (Beer-Lambert)"] = row => Colour.AbsorbanceAtPath(row["A(1 cm)"], row["path"]),
        };

    // "10 lb at 2 degL + 1 lb at 60 degL" or "9 lb 1.8 + 0.5 lb 40"
    private static double GristMcu(ReferenceRow row) => PoundsPattern().Matches(row.Inputs).Sum(malt =>
        Colour.Mcu(Number(malt, 1) * UsUnits.KgPerPound, Number(malt, 2), row.Si("V")));

    // "5 kg at 3.5 EBC + 0.25 kg at 120 EBC"
    private static double MetricMcu(ReferenceRow row) => KilogramsPattern().Matches(row.Inputs).Sum(malt =>
        Colour.Mcu(Number(malt, 1), Colour.SrmFromEbc(Number(malt, 2)), row.Si("V")));

    private static double Number(Match match, int group) =>
        double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"([\d.]+) lb (?:at )?([\d.]+)")]
    private static partial Regex PoundsPattern();

    [GeneratedRegex(@"([\d.]+) kg at ([\d.]+) EBC")]
    private static partial Regex KilogramsPattern();
}
