using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Alcohol, yeast and carbonation.</summary>
internal static class BeerSums
{
    private static readonly ImmutableArray<(string Name, double Co2PerGram)> Sugars =
    [
        ("table-sugar", Carbonation.SucroseYield), ("dextrose", Carbonation.MonohydrateYield), ("glucose", Carbonation.GlucoseYield),
    ];

    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "alcohol",
            "Alcohol and attenuation",
            [Gravity("original", "original gravity", "1.050"), Gravity("final", "gravity now (by hydrometer)", "1.010")],
            [
                new("abv_percent", "alcohol by volume", "%", "0.00"), new("abw_percent", "alcohol by weight", "%", "0.00"),
                new("apparent_attenuation_percent", "apparent attenuation", "%"), new("real_extract_plato", "real extract", "°P", "0.00"),
                new("real_degree_percent", "real degree of fermentation", "%"),
            ],
            "Balling: 2.0665 g of extract give 1 g of alcohol",
            "Balling 1865; ASBC",
            "5 to 25 °P",
            v => Alcohol(v["original"], v["final"]))
        {
            Orders = [NotAbove("final", "original")],
            Beside =
            [
                ByVolume("abv_rule_percent", "131.25 (OG - FG)"), ByVolume("abv_rule_136_percent", "136 (OG - FG)"), ByVolume("abv_rule_746_percent", "points over 7.46"),
                ByVolume("abv_rule_105_percent", "105 (OG - FG) by weight, times 1.27"), ByVolume("abv_hall_percent", "Hall 1995"), ByVolume("abw_cutaia_percent", "Cutaia 2009, by weight"),
            ],
        },
        new(
            "final-gravity",
            "Final gravity and alcohol expected",
            [Gravity("original", "original gravity", "1.050"), Share("attenuation", "apparent attenuation of the yeast", 30, 100, "76 %")],
            [new("final_sg", "final gravity", "SG", "0.000"), new("abv_percent", "alcohol by volume", "%", "0.0")],
            "original gravity less its attenuated points; alcohol by Balling",
            "ASBC; Balling 1865",
            "a yeast's figure is of its maker's wort: a mash of 62 to 64 °C ferments further, one of 69 °C less",
            v => Expected(v["original"], v["attenuation"] / 100)),
        new(
            "pitch",
            "Yeast to pitch",
            [
                Volume("volume", "wort", "40 L"), Gravity("gravity", "gravity", "1.048"),
                new SumInput.Quantity("rate", "million cells per mL and °P", Dimension.PitchRate, "M/mL/°P", 0.1, 4, "0.75", "0.75"),
            ],
            [new("cells_billion", "cells", "billion", "0"), new("dry_yeast_g", "dried yeast at 10 billion a gram", "g")],
            "rate times volume times °P",
            "0.75 ale, 1.5 lager: Fix and Fix 1997; 10 billion a gram is common practice",
            "fresh yeast; old yeast has fewer living cells",
            v => Pitch(Pitching.CellsBillion(v["rate"], v["volume"], SugarSolution.PlatoFromSg(v["gravity"])))),
        new(
            "priming",
            "Priming sugar",
            [
                Volume("volume", "beer", "38 L"), Number("co2", "volumes of CO2 wanted", "", 0.8, 4.5, "2.4"),
                Temp("highest", "warmest after fermentation", 0, 30, "20 °C"), new SumInput.Choice("sugar", "sugar", [.. Sugars.Select(s => s.Name)]),
            ],
            [new("sugar_g", "sugar", "g", "0"), new("sugar_g_per_l", "a litre", "g", "0.0"), new("residual_volumes", "volumes there already", "", "0.00")],
            "CO2 wanted less what the beer holds, over the sugar's yield",
            "residual CO2: widely printed fit; yields by molar masses",
            "0 to 25 °C; final gravity steady",
            v => Priming(v["volume"], v["co2"], v["highest"], Sugars[v.Choice("sugar")].Co2PerGram),
            "Bottles burst when the beer has not fermented out: check the gravity twice, some days apart."),
        new(
            "keg-pressure",
            "Keg pressure",
            [Number("co2", "volumes of CO2 wanted", "", 0.8, 4.5, "2.4"), Temp("temp", "beer at", 0, 30, "5 °C")],
            [new("gauge_bar", "gauge", "bar", "0.00"), new("gauge_psi", "gauge", "psi", "0.0")],
            "Henry's law for CO2 in water",
            "IAPWS G7-04; beer dissolves a few per cent less, so a few per cent more pressure does no harm",
            "0 to 30 °C, at equilibrium (a week in the cold)",
            v => Keg(Carbonation.KegGaugePa(v["co2"], v["temp"])),
            "Never above the keg's rated pressure; use a regulator with a relief valve."),
    ];

    private static double[] Alcohol(double og, double fg)
    {
        double original = SugarSolution.PlatoFromSg(og), apparent = SugarSolution.PlatoFromSg(fg);
        var real = Fermentation.RealExtract(original, apparent);
        return
        [
            Fermentation.Abv(original, apparent), Fermentation.Abw(original, real), 100 * Fermentation.ApparentAttenuation(original, apparent),
            real, 100 * Fermentation.RealDegreeOfFermentation(original, real),
            Fermentation.AbvRule131(og, fg), Fermentation.AbvRule136(og, fg), Fermentation.AbvRule746(og, fg),
            Fermentation.AbvRule105(og, fg), Fermentation.AbvHall(og, fg), Fermentation.CutaiaAbw(original, apparent),
        ];
    }

    private static SumOutput ByVolume(string name, Phrase rule) => new(name, rule, "%", "0.00");

    private static double[] Expected(double og, double attenuation)
    {
        var fg = Fermentation.FinalSg(og, attenuation);
        return [fg, Fermentation.Abv(SugarSolution.PlatoFromSg(og), SugarSolution.PlatoFromSg(fg))];
    }

    private static double[] Pitch(double billion) => [billion, billion / Pitching.DriedBillionPerG];

    private static double[] Priming(double litres, double volumes, double highestC, double yield)
    {
        var residual = Carbonation.ResidualCo2Volumes(highestC);
        var grams = Carbonation.PrimingSugarG(volumes, residual, litres, yield);
        return [grams, grams / litres, residual];
    }

    private static double[] Keg(double pa) => [pa / 1e5, pa / 6894.757];
}
