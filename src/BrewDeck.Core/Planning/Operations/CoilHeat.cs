using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>
/// Wort pumped round through a coil in the hot liquor tank: it gains a share of the difference between liquor and wort (the
/// effectiveness of a coil in a stirred vessel), and the liquor loses what the wort gains.
/// </summary>
public static class CoilHeat
{
    private const double PieceS = 30;

    /// <summary>The liquor is kept no more than this above the mash to come, so that no wort is scorched; K.</summary>
    private const double AboveK = 8;

    /// <summary>
    /// The same liquor goes over the grain a quarter of an hour later, and hotter than this it takes tannin out of the husks (common practice, no source);
    /// °C. So much above the mash it is all the same, or the raise would have no end; K.
    /// </summary>
    private const double HuskC = 78, LeastAboveK = 2;

    /// <summary>What the tank's heat is set to while the mash is brought to a temperature through the coil, °C.</summary>
    public static double TankC(double targetC) => Math.Min(targetC + AboveK, Math.Max(targetC + LeastAboveK, HuskC));

    /// <summary>The mash is brought to a temperature while the tank's own heat follows.</summary>
    internal static Progress To(Workbench bench, int tun, StepSpec spec, double limitS)
    {
        int tank = Tank(bench);
        double target = spec.TargetC!.Value, elapsed = 0, most = Math.Min(limitS, Heating.HopelessS);
        while (bench.Vessels[tun].TempC < target - 1e-6 && elapsed < most)
        {
            var seconds = Math.Min(PieceS, most - elapsed);
            var watts = Watts(bench, tun, tank);
            var reaches = SecondsTo(bench, tun, target, watts);
            seconds = Math.Min(seconds, Math.Max(1e-3, reaches));
            Piece(bench, tun, tank, seconds, watts, TankC(target));
            elapsed += seconds;
        }
        var done = bench.Vessels[tun].TempC >= target - 1e-6;
        var hold = bench.NetHeatW(tank) > 0 ? Math.Max(target + 1, bench.Setting.Habits.SpargeC) : double.NaN;
        bench.Vessels[tank] = bench.Vessels[tank] with { HoldC = done ? hold : double.NaN };
        return new(elapsed, done ? null : spec, target);
    }

    /// <summary>A rest: what the tun loses comes out of the liquor, as long as that is hotter.</summary>
    internal static void Keep(Workbench bench, int tun, double target, double seconds)
    {
        int tank = Tank(bench);
        var v = bench.Vessels[tun];
        var loss = bench.Setting.LossWPerK(tun) * (v.TempC - bench.Setting.AmbientC);
        if (v.TempC > target || loss <= 0 || loss > Watts(bench, tun, tank))
        {
            bench.Pass(tun, seconds, double.NaN);
            return;
        }
        var liquor = bench.Vessels[tank];
        bench.Happen(tun, seconds, v.TempC);
        bench.Vessels[tun] = bench.Vessels[tun] with { AtS = v.AtS + seconds };
        bench.Vessels[tank] = Contents.AtHeat(liquor, bench.Wall(tank), Contents.HeatJ(liquor, bench.Wall(tank)) - loss * seconds);
    }

    /// <summary>Heat that the coil can give now, W; 0 while it is bare or the liquor is colder.</summary>
    private static double Watts(Workbench bench, int tun, int tank)
    {
        VesselState wort = bench.Vessels[tun], liquor = bench.Vessels[tank];
        if (bench.Setting.Brewhouse.Coil is not { } coil || Contents.LiquidL(liquor) < coil.CoverL)
            return 0;
        var flow = coil.FlowLPerMin / 60 * SugarSolution.DensityKgPerM3(wort.Plato, wort.TempC) / 1000;
        var perK = coil.Effectiveness * flow * SugarSolution.SpecificHeatJPerKgK(wort.Plato, wort.TempC);
        return Math.Max(0, perK * (liquor.TempC - wort.TempC));
    }

    private static double SecondsTo(Workbench bench, int tun, double target, double watts)
    {
        var v = bench.Vessels[tun];
        var net = watts - bench.Setting.LossWPerK(tun) * (v.TempC - bench.Setting.AmbientC);
        return net <= 0 ? double.PositiveInfinity : (target - v.TempC) * Contents.CapacityJPerK(v, bench.Wall(tun), v.TempC) / net;
    }

    private static void Piece(Workbench bench, int tun, int tank, double seconds, double watts, double tankC)
    {
        var v = bench.Vessels[tun];
        var heat = Contents.HeatJ(v, bench.Wall(tun))
            + seconds * (watts - bench.Setting.LossWPerK(tun) * (v.TempC - bench.Setting.AmbientC));
        bench.Happen(tun, seconds, v.TempC);
        bench.Vessels[tun] = Contents.AtHeat(bench.Vessels[tun], bench.Wall(tun), heat) with { AtS = v.AtS + seconds, HoldC = double.NaN };
        var liquor = bench.Vessels[tank];
        var givesW = watts + bench.Setting.LossWPerK(tank) * (liquor.TempC - bench.Setting.AmbientC);
        // a thermostat gives no more than keeps it where it is set: full heat for a whole piece went half a degree past it
        var missingW = (tankC - liquor.TempC) * Contents.CapacityJPerK(liquor, bench.Wall(tank), liquor.TempC) / seconds;
        var own = Math.Clamp(missingW + givesW, 0, bench.NetHeatW(tank));
        var left = Contents.HeatJ(liquor, bench.Wall(tank)) + seconds * (own - givesW);
        bench.Vessels[tank] = Contents.AtHeat(liquor, bench.Wall(tank), left) with { AtS = liquor.AtS + seconds };
    }

    private static int Tank(Workbench bench) => bench.Setting.IndexOf(bench.Setting.Brewhouse.HotLiquorTank.Id);
}
