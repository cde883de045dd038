using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning;

/// <summary>
/// How fast liquid moves from vessel to vessel: the pump's curve against friction and lift, or the fall alone. A pump's curve is the
/// parabola through its shut-off head and its free flow; the loss coefficient of valves and fittings is what makes the usual flow,
/// which the brewer has measured, come out without lift (Darcy-Weisbach; see <see cref="Hydraulics.HoseLossM"/>).
/// </summary>
public static class Plumbing
{
    /// <summary>Without pump and heights: by gravity or with a jug, common practice, no source; L/min.</summary>
    private const double ByHandLPerMin = 10;

    /// <summary>Slower than this nothing is said to flow: the limit on lift or fall has been broken; L/min.</summary>
    private const double TrickleLPerMin = 0.1;

    /// <summary>Entrance, a full-bore valve, bends and the way out of a hose that hangs from a vessel; handbook values added up.</summary>
    private const double GravityCoefficients = 4;

    /// <summary>Water as brewers test a pump with it, °C.</summary>
    private const double TestC = 20;

    private const int Halvings = 40;

    /// <summary>Flow from one vessel into another, L/min.</summary>
    /// <param name="sourceL">What stands in the first on the mean of the transfer, litres.</param>
    /// <param name="celsius">Of the liquid, °C.</param>
    public static double LPerMin(PlantSetting setting, int from, int to, double sourceL, double celsius)
    {
        var house = setting.Brewhouse;
        var lift = LiftM(house, from, to, sourceL);
        if (house.Pumps.IsEmpty)
            return lift is { } rise ? Math.Max(TrickleLPerMin, ByGravityLPerMin(house, -rise, celsius)) : ByHandLPerMin;
        var pump = house.Pumps[0];
        return pump.FreeFlowLPerMin is null ? pump.FlowLPerMin : Math.Max(TrickleLPerMin, ByPumpLPerMin(house, pump, lift ?? 0, celsius));
    }

    /// <summary>Way up from the level in one vessel to the inlet of another, m; below nought: a fall. Null where a height is not told.</summary>
    public static double? LiftM(Brewhouse house, int from, int to, double sourceL) =>
        from < house.Vessels.Length && to < house.Vessels.Length
            && house.Vessels[from].OutletM is { } outlet && house.Vessels[to].InletM is { } inlet
            ? inlet - outlet - LevelM(house.Vessels[from], sourceL) : null;

    /// <summary>Of the liquid above the outlet, m; 0 for a vessel without a diameter.</summary>
    public static double LevelM(Vessel vessel, double litres) =>
        vessel.DiameterM is { } across ? Math.Max(0, litres - vessel.DeadSpaceL) / 1000 / Cylinder.AreaM2(across) : 0;

    /// <summary>Head that a pump gives at a flow, m of what it pumps.</summary>
    private static double PumpHeadM(Pump pump, double litresPerMin) =>
        pump.FreeFlowLPerMin is { } free ? pump.ShutOffHeadM * (1 - litresPerMin / free * (litresPerMin / free)) : pump.ShutOffHeadM;

    /// <summary>
    /// Loss coefficient of valves and fittings that makes the usual flow come out through the hose; below nought when the hose alone is
    /// too narrow for it.
    /// </summary>
    public static double Coefficients(Pump pump, Hose hose)
    {
        var velocity = Hydraulics.VelocityMPerS(pump.FlowLPerMin / 60_000, hose.BoreM);
        var left = PumpHeadM(pump, pump.FlowLPerMin) - LossM(hose, pump.FlowLPerMin, TestC, 0);
        return left * 2 * Hydraulics.GravityMPerS2 / (velocity * velocity);
    }

    /// <summary>Head lost at a flow, m.</summary>
    public static double LossM(Hose hose, double litresPerMin, double celsius, double coefficients) => Hydraulics.HoseLossM(
        litresPerMin / 60_000, hose.BoreM, hose.LengthM, Hose.RoughnessM, coefficients, Water.DensityKgPerM3(celsius), Water.ViscosityPaS(celsius));

    public static Hose HoseOf(Brewhouse house) =>
        house.Hose ?? Hose.Usual(house.Pumps.IsEmpty ? ByHandLPerMin : house.Pumps[0].FlowLPerMin);

    private static double ByPumpLPerMin(Brewhouse house, Pump pump, double liftM, double celsius)
    {
        var hose = HoseOf(house);
        var coefficients = Math.Max(0, Coefficients(pump, hose));
        // a vessel that stands high pushes beyond the free flow
        return Balance(
            2 * pump.FreeFlowLPerMin!.Value, flow => PumpHeadM(pump, flow) - liftM - LossM(hose, flow, celsius, coefficients));
    }

    private static double ByGravityLPerMin(Brewhouse house, double fallM, double celsius)
    {
        var hose = HoseOf(house);
        // faster than the jet of that fall nothing runs
        var jet = Hydraulics.JetMPerS(Math.Max(0, fallM)) * Cylinder.AreaM2(hose.BoreM) * 60_000;
        return Balance(jet, flow => fallM - LossM(hose, flow, celsius, GravityCoefficients));
    }

    /// <summary>Flow at which nothing of the head is left: it falls all the way.</summary>
    private static double Balance(double mostLPerMin, Func<double, double> headLeftM)
    {
        double low = 0, high = mostLPerMin;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = 0.5 * (low + high);
            if (headLeftM(middle) > 0)
                low = middle;
            else
                high = middle;
        }
        return low;
    }
}
