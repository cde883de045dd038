using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Volumes and strengths of wort.</summary>
internal static class KettleSums
{
    private static readonly Phrase Balance = "mass balance of water and extract; densities by Bubnik et al. 1995";
    private static readonly Phrase PointsKept = "points times litres kept";

    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "dilution",
            "Dilution",
            [Volume("volume", "wort", "40 L"), Gravity("gravity", "gravity", "1.056"), Gravity("target", "gravity wanted", "1.048")],
            [new("add_l", "water to add", "L"), new("volume_l", "gives", "L")],
            "extract is kept",
            Balance,
            "volumes at 20 °C; gravity wanted below the one there is",
            v => [.. Dilution(v["volume"], Plato(v["gravity"]), Plato(v["target"])), ByPoints(v) - v["volume"]],
            "Water onto a rolling boil can make it surge: heat off first.")
        { Orders = [NotAbove("target", "gravity")], Beside = [new("points_add_l", PointsKept, "L")] },
        new(
            "blend",
            "Blending two worts or beers",
            [
                Volume("volume", "first", "20 L"), Gravity("gravity", "its gravity", "1.060"),
                Volume("other", "second", "10 L"), Gravity("other-gravity", "its gravity", "1.040"),
            ],
            [new("gravity_sg", "gravity", "SG", "0.0000"), new("volume_l", "gives", "L")],
            "water and extract add",
            Balance,
            "both at 20 °C, both unfermented (or both fermented out alike)",
            v => Blend(v["volume"], Plato(v["gravity"]), v["other"], Plato(v["other-gravity"]))),
        new(
            "boil-down",
            "Boil-down to a gravity",
            [
                Volume("volume", "wort, at 20 °C", "50 L"), Gravity("gravity", "gravity", "1.042"), Gravity("target", "gravity wanted", "1.050"),
                new SumInput.Quantity("evaporation", "evaporation", Dimension.Evaporation, "kg/h", 0.1, 1000, "4.8 kg/h"),
            ],
            [new("boil_min", "boil for", "min"), new("boil_off_kg", "water boiled off", "kg"), new("volume_l", "leaves", "L")],
            "extract is kept while water leaves",
            Balance,
            "gravity wanted beyond the one there is",
            v => [.. BoilDown(v["volume"], Plato(v["gravity"]), Plato(v["target"]), v["evaporation"]), ByPoints(v)],
            "Watch for boil-over; never let an element stand dry.")
        { Orders = [NotAbove("gravity", "target")], Beside = [new("points_volume_l", PointsKept, "L")] },
    ];

    private static double ByPoints(SumValues v) => Extract.VolumeForPoints(v["volume"], Extract.Points(v["gravity"]), Extract.Points(v["target"]));

    private static double Plato(double sg) => SugarSolution.PlatoFromSg(sg);

    private static double[] Dilution(double litres, double plato, double target)
    {
        var kg = SugarSolution.MassKg(litres, plato, 20);
        var added = -Boil.EvaporatedKgForPlato(kg, plato, target);
        return [added / MashSums.Cold(1), SugarSolution.VolumeL(kg + added, target, 20)];
    }

    private static double[] Blend(double firstL, double firstPlato, double secondL, double secondPlato)
    {
        double a = SugarSolution.MassKg(firstL, firstPlato, 20), b = SugarSolution.MassKg(secondL, secondPlato, 20);
        var plato = (a * firstPlato + b * secondPlato) / (a + b);
        return [SugarSolution.SgFromPlato(plato), SugarSolution.VolumeL(a + b, plato, 20)];
    }

    private static double[] BoilDown(double litres, double plato, double target, double kgPerH)
    {
        var kg = SugarSolution.MassKg(litres, plato, 20);
        var gone = Boil.EvaporatedKgForPlato(kg, plato, target);
        return [60 * gone / kgPerH, gone, SugarSolution.VolumeL(kg - gone, target, 20)];
    }
}
