using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Waters that are mixed, vessels that empty.</summary>
internal static class LiquorSums
{
    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "mixing",
            "Two waters mixed",
            [
                Volume("volume", "first, measured cold", "30 L"), Temp("temp", "first at", 0, 100, "78 °C"),
                Volume("other", "second, measured cold", "5 L"), Temp("other-temp", "second at", 0, 100, "12 °C"),
            ],
            [new("mixed_c", "gives", "°C")],
            "enthalpies add",
            "IAPWS-IF97",
            "water, no losses to vessel and air",
            v => [Water.MixTempC(MashSums.Cold(v["volume"]), v["temp"], MashSums.Cold(v["other"]), v["other-temp"])],
            "Hot liquor scalds: pour the cold into the hot, low and slowly."),
        new(
            "emptying",
            "Time to empty a vessel",
            [
                new SumInput.Quantity("diameter", "diameter of the vessel", Dimension.Length, "cm", 5, 500, "40 cm"),
                new SumInput.Quantity("depth", "depth above the outlet", Dimension.Length, "cm", 1, 500, "35 cm"),
                new SumInput.Quantity("bore", "bore of the outlet", Dimension.Length, "mm", 2, 200, "12.5 mm"),
                Number("discharge", "discharge coefficient", "", 0.1, 1, "0.6", "0.6"),
            ],
            [new("emptying_min", "takes", "min"), new("first_l_per_min", "begins with", "L/min")],
            "Torricelli's law",
            "textbook hydraulics; 0.6 for a sharp-edged outlet",
            "an upright vessel that runs out freely; a hose or a bed takes longer",
            v => Emptying(v["diameter"] / 100, v["depth"] / 100, v["bore"] / 1000, v["discharge"]),
            "Hoses whip and hot liquor scalds: clamp the end before the valve opens."),
    ];

    private static double[] Emptying(double diameterM, double depthM, double boreM, double discharge) =>
        [Hydraulics.DrainTimeS(diameterM, boreM, depthM, discharge) / 60, 60_000 * discharge * Cylinder.AreaM2(boreM) * Hydraulics.JetMPerS(depthM)];
}
