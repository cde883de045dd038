using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>What a grist gives: first wort, yield, colour.</summary>
internal static class YieldSums
{
    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "first-wort",
            "First wort of a mash",
            [Grist(), GristExtract(), Volume("water", "strike liquor, measured cold", "27 L")],
            [new("gravity_sg", "gravity", "SG", "0.000"), new("extract_plato", "extract", "°P", "0.0")],
            "the grist's extract in its water",
            "mass balance; malt with 4 % moisture",
            "all converted; a reading below it: wait, stir, or the crush is coarse",
            v => GravitySums.Both(Grain.FirstWortPlato(v["grain"], v["extract"] / 100, MashSums.Cold(v["water"]), Grain.UsualMoistureFraction))),
        new(
            "yield",
            "Yield of a mash or a brewhouse",
            [Grist(), GristExtract(), Volume("volume", "wort, at 20 °C", "45 L"), Gravity("gravity", "gravity", "1.044")],
            [new("yield_percent", "yield", "%"), new("extract_kg", "extract in the wort", "kg", "0.00")],
            "extract in the wort over extract in the grist",
            "mass balance of water and extract; densities by Bubnik et al. 1995",
            "wort in the kettle: of the mash; cold wort: of the brewhouse",
            v => [100 * Extract.BrewhouseYield(v["grain"], v["extract"] / 100, v["volume"], Plato(v)), Extract.MassKg(v["volume"], Plato(v)), 100 * ByPoints(v)])
        { Beside = [new("points_yield_percent", "points times litres over those of the grist", "%")] },
        new(
            "colour",
            "Colour of a wort",
            [
                new SumInput.Quantity("malt", "malt", Dimension.Mass, "kg", 0.001, 5000, "9 kg"), new SumInput.Quantity("colour", "its colour", Dimension.Colour, "EBC", 1, 2000, "8 EBC"),
                Volume("volume", "cold wort", "40 L"), Number("others", "malt colour units of the other malts", "", 0, 1000, "0", "0"),
            ],
            [new("srm", "colour", "SRM"), new("ebc", "colour", "EBC"), new("mcu", "malt colour units", "")],
            "Morey: 1.4922 MCU^0.6859",
            "Morey, Brewing Techniques; malt colour by the maltsters' conversion",
            "up to 50 SRM; models differ from real beers by a fifth",
            v => Coloured(Mcu(v) + v["others"]))
        {
            Beside =
            [
                new("morey_rounded_srm", "Morey, rounded", "SRM"), new("daniels_srm", "Daniels (above 11 units)", "SRM"), new("mosher_srm", "Mosher (above 7 units)", "SRM"),
                new("druey_daniels_srm", "Druey's fit to Daniels", "SRM"), new("druey_noonan_srm", "Druey's fit to Noonan", "SRM"),
            ],
        },
    ];

    private static SumInput.Quantity GristExtract() => Share("extract", "extract of the grist, as is", 20, 100, "78 %", "78 %");

    private static double Plato(SumValues v) => SugarSolution.PlatoFromSg(v["gravity"]);

    private static double ByPoints(SumValues v) => Extract.PointsEfficiency(
        Extract.Points(v["gravity"]), v["volume"], v["grain"], Extract.PointsLPerKg(Extract.PotentialPoints(v["extract"] / 100)));

    private static double Mcu(SumValues v) => Colour.Mcu(v["malt"], Colour.LovibondFromSrm(Colour.SrmFromEbc(v["colour"])), v["volume"]);

    private static double[] Coloured(double mcu)
    {
        var srm = Colour.MoreySrm(mcu);
        return
        [
            srm, Colour.EbcFromSrm(srm), mcu,
            Colour.MoreyRoundedSrm(mcu), Colour.DanielsSrm(mcu), Colour.MosherSrm(mcu), Colour.DrueyDanielsSrm(mcu), Colour.DrueyNoonanSrm(mcu),
        ];
    }
}
