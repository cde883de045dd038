using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running.Ensemble;

namespace BrewDeck.Core.Learning;

/// <summary>
/// The one table of what is learned. How far a profile is usually off and how far days differ is common practice for a careful home
/// brewer, no source.
/// </summary>
public static class LessonParameters
{
    public const string ConversionYield = "conversion_yield";
    public const string SpargeStages = "sparge_stages";
    public const string Absorption = "grain_absorption";
    public const string Evaporation = "evaporation";
    public const string Runoff = "runoff";
    public const string PumpFlow = "pump_flow";
    public const string CastOutLoss = "cast_out_loss";
    public const string Chiller = "chiller";
    public const string FermenterLoss = "fermenter_loss";
    public const string Net = "net:";
    public const string HeatLoss = "heat_loss:";

    public static ImmutableArray<LessonParameter> For(Brewhouse house) =>
    [
        Habit(ConversionYield, "", UsualSpreads.ConversionYield.Sd, 0.005, 0.5, 1, h => h.ConversionYield, (h, v) => h with { ConversionYield = v }, new(o => o.ConversionYield, (o, v) => o with { ConversionYield = v })),
        Habit(SpargeStages, "", 0.25 * house.Habits.SpargeStages, 0.1 * house.Habits.SpargeStages, 1, 12, h => h.SpargeStages, (h, v) => h with { SpargeStages = v }, new(o => o.SpargeStages, (o, v) => o with { SpargeStages = v })),
        Habit(Absorption, "L/kg", 0.05 * house.Habits.AbsorptionLPerKg, 0.02 * house.Habits.AbsorptionLPerKg, 0.2, 3, h => h.AbsorptionLPerKg, (h, v) => h with { AbsorptionLPerKg = v }, new(o => o.Absorption, (o, v) => o with { Absorption = v })),
        // beside the boil that the brewer sets, the element and the loss of the kettle are in it
        Habit(Evaporation, "kg/h", 0.065 * house.Habits.EvaporationKgPerH, 0.03 * house.Habits.EvaporationKgPerH, 0.1, 500, h => h.EvaporationKgPerH, (h, v) => h with { EvaporationKgPerH = v }, new(o => o.Evaporation, (o, v) => o with { Evaporation = v })),
        Habit(Runoff, "L/min", 0.09 * house.Habits.RunoffLPerMin, 0.05 * house.Habits.RunoffLPerMin, 0.1, 100, h => h.RunoffLPerMin, (h, v) => h with { RunoffLPerMin = v }, new(o => o.Runoff, (o, v) => o with { Runoff = v })),
        Habit(CastOutLoss, "L", LossSd(house), 0.4 * LossSd(house), 0, 500, h => h.TrubL, (h, v) => h with { TrubL = v }),
        .. house.Vessels.Where(v => !v.Elements.IsEmpty).Select(NetOf),
        .. house.Vessels.Select(LossOf),
        .. PumpOf(house),
        ChillerOf(house),
        new(FermenterLoss, "L", 1, 0.5, 0, 500, _ => 0, null),
    ];

    public static LessonParameter? Find(Brewhouse house, string id) => For(house).FirstOrDefault(p => p.Id == id);

    private static LessonParameter Habit(
        string id, string unit, double prior, double day, double least, double most, Func<Habits, double> get, Func<Habits, double, Habits> with, SpreadPlace? spread = null) =>
        new(id, unit, prior, day, least, most, b => get(b.Habits), (b, v) => b with { Habits = with(b.Habits, v) }) { Spread = spread };

    /// <summary>Trub, dead space and hoses together: their sum is what can be seen.</summary>
    private static double LossSd(Brewhouse house) => InstrumentErrors.Root(
        0.15 * house.Habits.TrubL, 0.1 * house.Kettle.DeadSpaceL, 0.12 * house.Habits.LineLossL, 0.1);

    private static LessonParameter NetOf(Vessel vessel) => new(
        Net + vessel.Id, "", 0.025 * NetFraction(vessel), 0.014 * NetFraction(vessel), 0.3, 1, b => NetFraction(b[vessel.Id]), (b, v) => Changed(b, vessel.Id, w => WithNet(w, v)));

    private static LessonParameter LossOf(Vessel vessel) => new(
        HeatLoss + vessel.Id, "W/K", 0.15 * vessel.LossWPerK, 0.05 * vessel.LossWPerK, 0, 500, b => b[vessel.Id].LossWPerK, (b, v) => Changed(b, vessel.Id, w => w with { LossWPerK = v }));

    private static IEnumerable<LessonParameter> PumpOf(Brewhouse house) => house.Pumps.IsEmpty ? [] :
    [
        new(PumpFlow, "L/min", 0.08 * house.Pumps[0].FlowLPerMin, 0.03 * house.Pumps[0].FlowLPerMin, 0.5, 500, b => b.Pumps[0].FlowLPerMin,
            (b, v) => b with { Pumps = b.Pumps.SetItem(0, b.Pumps[0] with { FlowLPerMin = v }) }),
    ];

    /// <summary>The cooling water's flow is in it: the two cannot be told apart.</summary>
    private static LessonParameter ChillerOf(Brewhouse house) => new(
        Chiller, "W/K", 0.1 * house.Chiller.UaWPerK, 0.05 * house.Chiller.UaWPerK, 10, 50_000, b => b.Chiller.UaWPerK,
        (b, v) => b with { Chiller = b.Chiller with { UaWPerK = v } })
    {
        Spread = new(o => o.ChillerTransfer, (o, v) => o with { ChillerTransfer = v }),
    };

    /// <summary>Share of the whole rating that reaches the liquid.</summary>
    internal static double NetFraction(Vessel vessel) => vessel.Elements.Sum(e => e.PowerW * e.NetFraction) / vessel.RatedW;

    private static Vessel WithNet(Vessel vessel, double net)
    {
        var factor = net / NetFraction(vessel);
        return vessel with { Elements = [.. vessel.Elements.Select(e => e with { NetFraction = Math.Min(1, factor * e.NetFraction) })] };
    }

    private static Brewhouse Changed(Brewhouse house, string id, Func<Vessel, Vessel> change) =>
        house with { Vessels = [.. house.Vessels.Select(v => v.Id == id ? change(v) : v)] };
}
