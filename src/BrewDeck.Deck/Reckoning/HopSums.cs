using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Bitterness and hops of another alpha.</summary>
internal static class HopSums
{
    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "bitterness",
            "Bitterness of one addition",
            [
                new SumInput.Quantity("hops", "hops", Dimension.Mass, "g", 0.1, 1e5, "30 g"),
                Alpha("alpha", "alpha acid", "5.5 %"),
                new SumInput.Quantity("boiled", "boiled for", Dimension.Time, "min", 0, 240, "60 min"),
                Gravity("gravity", "gravity of the boil", "1.048"),
                Volume("volume", "cold wort at knock-out", "42 L"),
            ],
            [new("bitterness_ibu", "bitterness", "IBU"), new("utilisation", "utilisation", "", "0.000")],
            "Tinseth's utilisation",
            "Tinseth 1997; pellets by rates of isomerisation: Novotny 2018; the tables as printed",
            "cones at sea level, 1.030 to 1.130, 0 to 120 min; real beers differ by a fifth",
            v => Bitter(v))
        {
            Beside =
            [
                new("rager_ibu", "Rager 1990, smoothed by Hall 1997", "IBU"), new("rager_table_ibu", "Rager's table", "IBU"), new("garetz_ibu", "Garetz 1994, his table", "IBU"),
                new("daniels_whole_ibu", "Daniels 1996, cones", "IBU"), new("daniels_pellets_ibu", "Daniels 1996, pellets", "IBU"), new("novotny_ibu", "Novotny 2018, pellets", "IBU"),
            ],
        },
        new(
            "other-alpha",
            "Hops of another alpha",
            [new SumInput.Quantity("hops", "hops in the recipe", Dimension.Mass, "g", 0.1, 1e5, "30 g"), Alpha("alpha", "alpha acid", "5.5 %"), Alpha("bag", "alpha acid of the hops there are", "4.8 %")],
            [new("hops_g", "hops to weigh", "g"), new("alpha_units", "alpha acid units (ounces times per cent)", "", "0.00")],
            "the same grams of alpha acids",
            "common practice",
            "bitterness alone; flavour goes with the grams of hops",
            v => [Bitterness.SubstituteMassG(v["hops"], v["alpha"], v["bag"]), Bitterness.AlphaAcidUnits(v["hops"] / UsUnits.GramsPerOunce, v["alpha"] / 100)]),
    ];

    private static SumInput.Quantity Alpha(string name, Phrase label, string example) => Share(name, label, 0.1, 25, example);

    private static double[] Bitter(SumValues v)
    {
        double minutes = v["boiled"], utilisation = Bitterness.TinsethUtilisation(v["gravity"], minutes);
        double Ibu(double share) => Bitterness.Ibu(v["hops"], v["alpha"] / 100, share, v["volume"]);
        var rager = 1 + Bitterness.RagerGravityAdjustment(v["gravity"]);
        return
        [
            Ibu(utilisation), utilisation,
            Ibu(Bitterness.RagerUtilisation(minutes)) / rager, Ibu(HopTables.RagerUtilisation(minutes)) / rager, Ibu(HopTables.GaretzUtilisation(minutes)),
            Ibu(HopTables.DanielsUtilisation(minutes, pellets: false)), Ibu(HopTables.DanielsUtilisation(minutes, pellets: true)),
            PelletKinetics.Ibu(v["hops"], v["alpha"] / 100, minutes, 100, v["volume"], SugarSolution.PlatoFromSg(v["gravity"])),
        ];
    }
}
