using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.Reckoning;

/// <summary>Boiling point, heating time and pump flow.</summary>
internal static class PlantSums
{
    public static ImmutableArray<Sum> All { get; } =
    [
        new(
            "boiling-point",
            "Boiling point at a height",
            [
                new SumInput.Quantity("altitude", "above the sea", Dimension.Length, "m", DayBounds.AltitudeM.Least, DayBounds.AltitudeM.Most, "600 m"),
                Gravity("gravity", "gravity", "1.050", "1.000"),
            ],
            [new("water_c", "water boils at", "°C"), new("wort_c", "this wort at", "°C"), new("hop_speed", "hops isomerise, times sea level", "", "0.00")],
            "standard atmosphere, saturation line, ebullioscopic law",
            "ISO 2533:1975; IAPWS-IF97; CRC Handbook",
            "-400 to 5000 m; weather moves it by up to 1 °C",
            v => BoilingPoint(v["altitude"], v["gravity"])),
        new(
            "heating-time",
            "Heating time",
            [
                Volume("volume", "water or wort, measured cold", "45 L"), Temp("from", "from", -5, 100, "12 °C"), Temp("to", "to", -5, 100, "76 °C"),
                new SumInput.Quantity("power", "power", Dimension.Power, "W", 50, 1e6, "5.5 kW"),
                new SumInput.Quantity("net", "share that reaches the liquid", Dimension.Fraction, "%", 30, 100, "97 %", "96 %"),
                new SumInput.Quantity("vessel", "heat capacity of the vessel", Dimension.HeatCapacity, "kJ/K", 0, 1000, "5.5 kJ/K", "5 kJ/K"),
                new SumInput.Quantity("loss", "heat loss", Dimension.HeatTransfer, "W/K", 0, 1000, "2.5 W/K", "3 W/K"),
                Temp("room", "room at", -20, 45, "18 °C", "18 °C"),
            ],
            [new("heating_min", "takes", "min"), new("energy_kwh", "uses", "kWh", "0.00")],
            "one lump with losses: C dT/dt = P - UA (T - Ta)",
            "Newton's law of cooling; water by IAPWS-IF97",
            "lid on, stirred or recirculating, below the boil",
            v => Heating(v),
            "An element is never on unless covered; mains near water belongs behind a residual-current device.")
        { Orders = [NotAbove("from", "to")] },
        new(
            "pump-flow",
            "Pump flow through a hose",
            [
                new SumInput.Quantity("shut-off", "head at which the flow stops", Dimension.Length, "m", 0.2, 50, "3.4 m"),
                new SumInput.Quantity("free-flow", "flow against nothing", Dimension.Flow, "L/min", 0.5, 500, "28 L/min"),
                new SumInput.Quantity("lift", "lift", Dimension.Length, "m", -5, 30, "0.8 m"),
                new SumInput.Quantity("hose", "length of hose", Dimension.Length, "m", 0.1, 100, "3 m"),
                new SumInput.Quantity("bore", "inside diameter", Dimension.Length, "mm", 3, 100, "12.5 mm"),
                Number("fittings", "sum of loss coefficients", "", 0, 100, "8", "8"), Temp("temp", "liquid at", 0, 100, "66 °C", "66 °C"),
            ],
            [new("flow_l_per_min", "flow", "L/min"), new("head_m", "against", "m", "0.00"), new("litre_s", "a litre takes", "s", "0.0")],
            "Darcy-Weisbach with Churchill's friction factor against a parabolic pump curve",
            "Churchill 1977; water by IAPWS; pump curve from shut-off head and free flow is common practice",
            "water or thin wort, smooth hose 0.0015 mm rough",
            v => Pump(v),
            "Check hose clamps before hot liquid runs."),
    ];

    private static double[] BoilingPoint(double altitudeM, double sg)
    {
        var water = Atmosphere.BoilingPointC(altitudeM);
        return [water, water + SugarSolution.BoilingPointRiseK(SugarSolution.PlatoFromSg(sg)), Isomerisation.RelativeRate(water)];
    }

    private static double[] Heating(SumValues v)
    {
        double kg = MashSums.Cold(v["volume"]), from = v["from"], to = v["to"];
        if (to <= from)
            return [0, 0];
        var capacity = HeatFlow.WaterHeatJ(kg, from, to) / (to - from) + 1000 * v["vessel"];
        var seconds = HeatFlow.HeatingTimeS(capacity, v["loss"], v["room"], from, to, v["power"] * v["net"] / 100);
        return [seconds / 60, v["power"] * seconds / 3.6e6];
    }

    private static double[] Pump(SumValues v)
    {
        double low = 0, high = v["free-flow"];
        for (var i = 0; i < 60; i++)
        {
            var flow = 0.5 * (low + high);
            if (Gives(v, flow) > Needs(v, flow))
                low = flow;
            else
                high = flow;
        }
        return [low, Needs(v, low), low > 1e-6 ? 60 / low : double.PositiveInfinity];
    }

    private static double Gives(SumValues v, double flow) => v["shut-off"] * (1 - Math.Pow(flow / v["free-flow"], 2));

    private static double Needs(SumValues v, double flow) => v["lift"] + Hydraulics.HoseLossM(
        flow / 60_000, v["bore"] / 1000, v["hose"], 1.5e-6, v["fittings"], Water.DensityKgPerM3(v["temp"]), Water.ViscosityPaS(v["temp"]));
}
