using System.Globalization;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Physics;
using BrewDeck.Deck.Reckoning;
using BrewDeck.Deck.Wording;
using static BrewDeck.Deck.Reckoning.Sums;

namespace BrewDeck.Deck.SetUp;

/// <summary>Trials with water that find out what a new owner cannot read off anywhere.</summary>
internal static class SetUpTrials
{
    private static readonly Phrase Hot = "Hot water scalds and an element must stay covered; mains near water belongs behind a residual-current device.";

    public static SetUpTrial HeatUp(SetUpSheet sheet, SetUpVessel vessel)
    {
        double rated = sheet.Heat(vessel.Id).Count * sheet.Heat(vessel.Id).Watts, wall = sheet.HeatCapacityJPerK(vessel.Id);
        var usualLoss = sheet.Number(vessel.Id + ".loss", Dimension.HeatTransfer);
        return new(
            new Sum(
                "heat-up", $"A timed heat-up of the {vessel.Called}",
                [
                    Volume("volume", "cold water in it", "40 L"), Temp("from", "heat on at", 0, 90, "15 °C"), Temp("to", "heat off at", 5, 98, "70 °C"),
                    Minutes("time", "that took", "35 min"), Temp("room", "room at", -10, 45, "18 °C", "18 °C"),
                    Minutes("stand", "then stood, heat off, lid on, for (0: not timed)", "60 min", "0 min"), Temp("stood", "and fell to", 0, 98, "67 °C", "0 °C"),
                ],
                [new("net_share", "arrives", "%"), new("net_kw", "that is", "kW", "0.00"), new("loss_w_per_k", "heat loss", "W/K", "0.0")],
                "one lump with losses: C dT/dt = P - UA (T - Ta)", "Newton's law of cooling; water by IAPWS-IF97",
                "lid on, stirred or pumped round; the stand may be left out, then the loss is the usual one", v => Reckon(v, rated, wall, usualLoss), Hot),
            r => Result(vessel.Id, r));
    }

    public static SetUpTrial DeadSpace(SetUpVessel vessel) => new(
        new Sum(
            "dead-space", $"Dead space of the {vessel.Called}",
            [Mass("in", "water weighed into the empty vessel", "5 kg"), Mass("out", "water that came out again", "3.8 kg"), Temp("temp", "water at", 0, 60, "15 °C", "15 °C")],
            [new("dead_space_l", "stays behind", "L", "0.00")],
            "(in - out) / density", "water by IAPWS", "drained as on a brew day, through the same outlet",
            v => [WaterTrials.DeadSpaceL(v["in"], v["out"], v["temp"])]),
        r => r[0] >= 0 ? new([(vessel.Id + ".dead", LineReaders.Kept(r[0], "L"))]) : new([], "More came out than went in; weigh again."));

    public static SetUpTrial Boil(SetUpSheet sheet) => new(
        new Sum(
            "boil-off", "A timed boil",
            [
                Depth("before", "depth at a rolling boil", "30 cm"), Depth("after", "depth at the end, still boiling", "27.5 cm"), Minutes("time", "between them", "60 min"),
                new SumInput.Quantity("wide", "kettle inside", Dimension.Length, "cm", 5, 500, "45 cm", sheet["kettle.diameter"]),
                new SumInput.Quantity("altitude", "above the sea", Dimension.Length, "m", -400, 5000, "200 m", "0 m"),
            ],
            [new("evaporation_kg_per_h", "boils off", "kg/h")],
            "litres of an upright cylinder, at the density of boiling water", "ISO 2533:1975; water by IAPWS",
            "level read with the heat briefly off; an hour gives better than 5 %",
            v => [WaterTrials.EvaporationKgPerH(v["wide"] / 100, v["before"] / 100, v["after"] / 100, Atmosphere.BoilingPointC(v["altitude"]), 60 * v["time"])],
            "Boiling water and steam scald; measure from above with a long rule, heat off."),
        r => r[0] >= 0.1 ? new([("evaporation", LineReaders.Kept(Math.Round(r[0], 1), "kg/h"))]) : new([], "The level did not fall; boil longer."));

    private static double[] Reckon(SumValues v, double ratedW, double wallJPerK, double usualLossWPerK)
    {
        var kg = v["volume"] * Water.DensityKgPerM3(20) / 1000;
        double Capacity(double from, double to) => wallJPerK + kg * Math.Abs(HeatFlow.WaterHeatJ(1, from, to)) / Math.Max(0.01, Math.Abs(to - from));
        var loss = v["stand"] > 0
            ? WaterTrials.LossWPerK(Capacity(v["stood"], v["to"]), v["room"], v["to"], v["stood"], 60 * v["stand"]) : usualLossWPerK;
        var net = WaterTrials.NetWatts(Capacity(v["from"], v["to"]), loss, v["room"], v["from"], v["to"], 60 * v["time"]);
        return [100 * net / ratedW, net / 1000, loss];
    }

    private static TrialResult Result(string vesselId, double[] r)
    {
        if (!double.IsFinite(r[2]))
            return new([], "It did not cool towards the room; leave the stand out, or read again.");
        if (r[0] is < 30 or > 105)
            return new([], $"{r[0].ToString("0", CultureInfo.InvariantCulture)} % of the watts cannot be; look at litres, minutes and watts again.");
        // a little over a hundred is the rule and the clock
        return new([(vesselId + ".net", LineReaders.Kept(Math.Min(100, r[0]), "%")), (vesselId + ".loss", LineReaders.Kept(r[2], "W/K"))]);
    }

    private static SumInput.Quantity Minutes(string name, Phrase label, string example, string? preset = null) =>
        new(name, label, Dimension.Time, "min", preset is null ? 0.1 : 0, 1440, example, preset);

    private static SumInput.Quantity Mass(string name, Phrase label, string example) => new(name, label, Dimension.Mass, "kg", 0, 500, example);

    private static SumInput.Quantity Depth(string name, Phrase label, string example) => new(name, label, Dimension.Length, "cm", 0, 500, example);
}
