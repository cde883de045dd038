using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Heat of the mash.</summary>
internal static class MashSums
{
    private static readonly Phrase Source = "malt: Murphy and Son's table of specific and slaking heat; water: IAPWS-IF97";

    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "strike",
            "Strike temperature",
            [
                Grist(),
                Volume("water", "strike liquor, measured cold", "27 L"),
                Temp("target", "mash wanted", 30, 80, "66 °C"),
                Temp("grain-temp", "grist at", DayBounds.GrainC.Least, DayBounds.GrainC.Most, "18 °C", "18 °C"),
                Tun(),
                Temp("tun-temp", "tun at", -10, 90, "18 °C", "18 °C"),
            ],
            [new("strike_c", "liquor", "°C"), new("thickness_l_per_kg", "thickness", "L/kg", "0.00"), new("mash_l", "mash fills the tun to", "L")],
            "enthalpies of water, malt and tun, slaking heat taken off",
            Source,
            "malt with 4 % moisture; losses while it is stirred not counted",
            v => [Strike(v), v["water"] / v["grain"], Grain.MashVolumeL(v["water"], v["grain"]), MashConventions.StrikeTemp(ShortConstant, v["water"] / v["grain"], v["grain-temp"], v["target"])],
            "Hot liquor scalds: pour low and slowly.")
        { Beside = [Short("short_strike_c", "°C")], Doubt = TooHot },
        new(
            "infusion",
            "Infusion to the next rest",
            [
                Grist(),
                Volume("water", "water in the mash, measured cold", "27 L"),
                Temp("mash", "mash at", 20, 85, "62 °C"),
                Temp("target", "mash wanted", 20, 85, "68 °C"),
                Temp("added", "added water at", 0, 100, "98 °C", "98 °C"),
                Tun(),
            ],
            [new("add_l", "add, measured cold", "L")],
            "heat given by the added water is heat taken up by mash and tun",
            Source,
            "added water beyond the temperature wanted: hotter to raise the mash, colder to cool it",
            v => [Infusion(v), MashConventions.Infusion(ShortConstant, v["grain"], v["water"], v["mash"], v["target"], v["added"])],
            "Near-boiling water scalds: add it low, stirring.")
        { Doubt = WrongWay, Beside = [Short("short_add_l", "L")] },
    ];

    /// <summary>Of water at sea level.</summary>
    private const double BoilC = 100;

    // printed for quarts and pounds
    private const double ShortConstant = MashConventions.PalmerQuartsPerPound * UsUnits.LitresPerKgFromQuartsPerPound;

    private static SumOutput Short(string name, string unit) => new(name, "Palmer's short form, without tun and slaking heat", unit);

    private static SumInput.Quantity Tun() =>
        new("tun", "heat capacity of the tun", Dimension.HeatCapacity, "kJ/K", 0, 1000, "6.5 kJ/K", "0 kJ/K");

    /// <summary>No liquor is hotter than the boil.</summary>
    private static SumDoubt? TooHot(SumValues v, Notation notation) => Strike(v) is var celsius && celsius <= BoilC ? null : new("target", Enough(v) is { } litres
        ? notation.Text($"the liquor would have to be {notation.Temp(celsius)}, and water boils at {notation.Target(BoilC)}; take {notation.Volume(litres)} liquor or more, or a cooler mash")
        : notation.Text($"the liquor would have to be {notation.Temp(celsius)}, and water boils at {notation.Target(BoilC)}; take a cooler mash, or warm the tun first"));

    /// <summary>The least liquor that will do, to the next 0.1 L; null: not ten times as much.</summary>
    private static double? Enough(SumValues v)
    {
        for (var litres = Math.Ceiling(10 * v["water"]) / 10; litres <= 10 * v["water"]; litres += Math.Max(0.1, v["water"] / 200))
        {
            if (Strike(v, litres) <= BoilC)
                return Math.Ceiling(10 * litres) / 10;
        }
        return null;
    }

    private static SumDoubt? WrongWay(SumValues v, Notation notation) => (v["target"] - v["mash"]) * (v["added"] - v["target"]) >= 0 ? null : new("added", v["target"] > v["mash"]
        ? notation.Text($"water of {notation.Temp(v["added"])} raises no mash to {notation.Temp(v["target"])}; take hotter water")
        : notation.Text($"water of {notation.Temp(v["added"])} cools no mash to {notation.Temp(v["target"])}; take cold water, such as {notation.Temp(12)}"));

    private static double Strike(SumValues v) => Strike(v, v["water"]);

    private static double Strike(SumValues v, double litres) => MashHeat.StrikeTempC(
        Cold(litres), v["grain"], v["grain-temp"], Grain.UsualMoistureFraction, v["target"], 1000 * v["tun"], v["tun-temp"]);

    private static double Infusion(SumValues v)
    {
        var capacity = MashHeat.MashHeatCapacityJPerK(
            Cold(v["water"]), v["grain"], Grain.UsualMoistureFraction, 0.5 * (v["mash"] + v["target"]), 1000 * v["tun"]);
        return MashHeat.InfusionKg(capacity, v["mash"], v["target"], v["added"]) / Cold(1);
    }

    internal static double Cold(double litres) => litres * Water.DensityKgPerM3(20) / 1000;
}
