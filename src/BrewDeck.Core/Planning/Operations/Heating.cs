using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>Heating the contents of a vessel with its own elements, lid on.</summary>
internal static class Heating
{
    /// <summary>A heat-up that has not come to its end by then never will.</summary>
    public const double HopelessS = 24 * 3600;

    private const int Pieces = 6;

    public static Progress To(Workbench bench, int vessel, StepSpec spec, double targetC, double limitS, bool holdAfter)
    {
        var v = bench.Vessels[vessel];
        if (v.TempC >= targetC - 1e-9)
        {
            bench.Vessels[vessel] = v with { HoldC = holdAfter ? targetC : double.NaN };
            return new(0, null, targetC);
        }
        var needed = SecondsTo(bench, vessel, targetC);
        var seconds = Math.Min(Math.Min(needed, HopelessS), limitS);
        Pass(bench, vessel, targetC, seconds, seconds >= needed);
        var hold = holdAfter && seconds >= needed ? targetC : double.NaN;
        bench.Vessels[vessel] = bench.Vessels[vessel] with { HoldC = hold };
        return new(seconds, seconds >= needed ? null : spec, targetC);
    }

    private static double SecondsTo(Workbench bench, int vessel, double targetC)
    {
        var v = bench.Vessels[vessel];
        var capacity = MeanCapacity(v, bench.Wall(vessel), targetC);
        return HeatFlow.HeatingTimeS(
            capacity, bench.Setting.LossWPerK(vessel), bench.Setting.AmbientC, v.TempC, targetC, bench.NetHeatW(vessel));
    }

    private static void Pass(Workbench bench, int vessel, double targetC, double seconds, bool reached)
    {
        var start = bench.Vessels[vessel];
        var capacity = MeanCapacity(start, bench.Wall(vessel), targetC);
        var watts = bench.NetHeatW(vessel);
        double At(double s) => HeatFlow.TempAfterC(
            capacity, bench.Setting.LossWPerK(vessel), bench.Setting.AmbientC, start.TempC, watts, s);
        var end = reached ? targetC : At(seconds);
        bench.Vessels[vessel] = start with { TempC = end };
        for (var i = 0; i < Pieces; i++)
            bench.Happen(vessel, seconds / Pieces, Math.Min(targetC, At((i + 0.5) * seconds / Pieces)));
        bench.Vessels[vessel] = bench.Vessels[vessel] with { TempC = end, AtS = start.AtS + seconds };
    }

    private static double MeanCapacity(in VesselState v, double wall, double targetC) =>
        (Contents.HeatAtJ(v, wall, targetC) - Contents.HeatJ(v, wall)) / (targetC - v.TempC);
}
