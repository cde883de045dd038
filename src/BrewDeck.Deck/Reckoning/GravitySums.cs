using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Hydrometer, refractometer and the scales of gravity.</summary>
internal static class GravitySums
{
    private static readonly Phrase Sucrose = "wort as sucrose solution: Bubnik, Kadlec, Urban, Bruhns 1995 (ICUMSA SPS-4)";

    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "hydrometer",
            "Hydrometer at a temperature",
            [
                Gravity("reading", "reading", "1.046"),
                Temp("sample", "temperature of the sample", 0, 80, "40 °C"),
                Temp("calibration", "hydrometer made for", 10, 25, "20 °C", "20 °C"),
            ],
            [new("gravity_sg", "gravity at 20 °C", "SG", "0.0000"), new("extract_plato", "extract", "°P", "0.00")],
            "density of the sample and the glass's expansion",
            $"{Sucrose}; soda-lime glass 25e-6 /K",
            "0 to 80 °C; above 40 °C the reading itself is poor",
            v => AtTemperature(v["reading"], v["sample"], v["calibration"]),
            "Hot wort scalds and cracks glass: let the sample cool.")
        { Beside = [new("lyons_sg", "Lyons 1992, of a glass made for 60 °F", "SG", "0.0000")] },
        new(
            "refractometer",
            "Refractometer in wort",
            [Brix("reading", "12.5"), Correction()],
            [new("gravity_sg", "gravity at 20 °C", "SG", "0.0000"), new("extract_plato", "extract", "°P", "0.00")],
            "°Bx over the wort correction factor",
            $"factor 1.02 to 1.06 in the literature; {Sucrose}",
            "unfermented wort, 0 to 32 °Bx",
            v => Both(Refractometer.WortPlato(v["reading"], v["factor"]))),
        new(
            "refractometer-beer",
            "Refractometer in beer",
            [Gravity("original", "original gravity", "1.050"), Brix("reads now", "6.5"), Correction()],
            [new("gravity_sg", "gravity now", "SG", "0.000")],
            "Terrill's cubic correlation",
            "Terrill 2011",
            "well attenuated beer, about 0.002 SG either way",
            v => Fermented(SugarSolution.PlatoFromSg(v["original"]), v["reading"] / v["factor"]))
        { Beside = [new("linear_sg", "Terrill's linear fit", "SG", "0.000")] },
        new(
            "gravity-scales",
            "Gravity, degrees Plato, degrees Brix",
            [Gravity("gravity", "gravity", "1.048")],
            [
                new("gravity_sg", "gravity", "SG", "0.0000"), new("extract_plato", "extract (°P; °Bx of a sugar solution)", "°P", "0.00"),
                new("refractometer_brix", "a refractometer shows in wort", "°Bx", "0.0"), new("extract_g_per_l", "extract in a litre", "g", "0.0"),
            ],
            "density of sucrose solutions at 20 °C",
            $"{Sucrose}; refractometer factor 1.04",
            "0 to 45 °P",
            v => [.. Scales(SugarSolution.PlatoFromSg(v["gravity"])), .. ByOtherFits(v["gravity"])])
        {
            Beside =
            [
                new("asbc_plato", "ASBC cubic", "°P", "0.00"), new("nbs_brix", "NBS circular C440", "°Bx", "0.00"), new("lincoln_plato", "Lincoln", "°P", "0.00"),
                new("manning_plato", "Manning 1993", "°P", "0.00"), new("rule_259_plato", "259 - 259/SG", "°P", "0.00"),
            ],
        },
    ];

    private static SumInput.Quantity Brix(Phrase label, string example) => Number("reading", label, "°Bx", 0, 32, example);

    private static SumInput.Quantity Correction() => Number("factor", "wort correction factor", "", 1, 1.1, "1.04", "1.04");

    /// <summary>SG and °P.</summary>
    internal static double[] Both(double plato) => [SugarSolution.SgFromPlato(plato), plato];

    private static double[] AtTemperature(double reading, double sampleC, double calibrationC) =>
        [Hydrometer.TrueSg20(reading, sampleC, calibrationC), Hydrometer.Plato(reading, sampleC, calibrationC), reading + Hydrometer.LyonsCorrectionSg(sampleC)];

    private static double[] ByOtherFits(double sg) =>
        [GravityScales.AsbcPlato(sg), GravityScales.NbsBrix(sg), GravityScales.LincolnPlato(sg), GravityScales.ManningPlato(sg), GravityScales.Rule259Plato(sg)];

    private static double[] Fermented(double original, double now) =>
        [Refractometer.FinalGravityCubicSg(original, now), Refractometer.FinalGravityLinearSg(original, now)];

    private static double[] Scales(double plato) =>
        [SugarSolution.SgFromPlato(plato), plato, plato * Refractometer.UsualWortCorrectionFactor, 1000 * SugarSolution.ExtractKgPerL(plato, 20)];
}
