using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>Wort out of the grain bed into the kettle, which heats as soon as its elements are covered.</summary>
internal static class Lautering
{
    private const double PieceS = 60;

    private const double CoveredByL = 0.001;

    /// <summary>Kept below the boil while the kettle fills, so that nothing boils over unwatched; K.</summary>
    private const double BelowBoilK = 2;

    /// <summary>Liquid that the tun keeps: what the grain holds and the dead space, litres at 20 °C.</summary>
    private static double KeptL(Workbench bench, int tun) =>
        bench.Setting.Habits.AbsorptionLPerKg * bench.Vessels[tun].GrainKg + bench.Setting.Brewhouse.Vessels[tun].DeadSpaceL;

    /// <summary>
    /// Run-off, with sparge liquor following while there is any. Ends when the kettle holds the wanted litres at 20 °C, or when the
    /// tun gives no more.
    /// </summary>
    public static Progress Run(Workbench bench, StepSpec spec, double limitS)
    {
        var tun = bench.Setting.IndexOf(spec.Vessel);
        var tank = bench.Setting.IndexOf(bench.Setting.Brewhouse.HotLiquorTank.Id);
        var kettle = bench.Kettle;
        double spargeKg = Contents.WaterKg(spec.SpargeL ?? 0), elapsed = 0;
        while (elapsed < Math.Min(limitS, Heating.HopelessS))
        {
            var liquorL = Math.Min(spargeKg, OutOfTankKg(bench, tank)) / KgPerL(bench, tank);
            // what is still to run decides: a cut may come a hair's breadth after a piece, and is no end
            var running = Running(bench, tun, kettle, spec, liquorL);
            if (running <= 1e-9)
                return Ended(bench, tun, tank, kettle, spec, elapsed);
            var seconds = Math.Min(PieceS, limitS - elapsed);
            var flow = HotPerCool(bench.Vessels[tun]) * (spec.FlowLPerMin ?? bench.Setting.Habits.RunoffLPerMin) / 60;
            var litres = Math.Min(Math.Min(running, flow * seconds), ToCoverL(bench, kettle));
            seconds = litres / flow;
            spargeKg -= Piece(bench, tun, tank, kettle, litres, Math.Min(litres, liquorL));
            HeatKettle(bench, kettle, seconds);
            bench.Pass(tun, seconds, bench.Vessels[tun].HoldC);
            if (spec.SpargeL > 0)
                bench.Pass(tank, seconds, bench.Vessels[tank].HoldC);
            elapsed += seconds;
        }
        return new(elapsed, spec with { SpargeL = Math.Max(0, spargeKg / Contents.WaterKg(1)) }, null, spec.VolumeL);
    }

    private static double KgPerL(Workbench bench, int tank) => Water.DensityKgPerM3(bench.Vessels[tank].TempC) / 1000;

    /// <summary>What the tank gives down to its outlet.</summary>
    private static double OutOfTankKg(Workbench bench, int tank) =>
        Math.Max(0, bench.Vessels[tank].LiquidKg - Contents.WaterKg(bench.Setting.Brewhouse.Vessels[tank].DeadSpaceL));

    /// <summary>Sparge liquor stirred into the drained bed, then left to settle.</summary>
    public static Progress BatchSparge(Workbench bench, StepSpec spec, double limitS)
    {
        var tun = bench.Setting.IndexOf(spec.Vessel);
        var tank = bench.Setting.IndexOf(bench.Setting.Brewhouse.HotLiquorTank.Id);
        if (spec.SpargeL is > 0)
        {
            Transfers.Move(bench, tank, tun, Contents.WaterKg(spec.SpargeL.Value));
            bench.Vessels[tun] = bench.Vessels[tun] with { Washed = 0 };
        }
        var progress = Progress.ByClock(spec with { SpargeL = 0 }, limitS);
        bench.Pass(tun, progress.ElapsedS, bench.Vessels[tun].HoldC);
        bench.Pass(tank, progress.ElapsedS, bench.Vessels[tank].HoldC);
        return progress with { VolumeL = spec.SpargeL };
    }

    /// <summary>Liquor from under the bed, if any, at the start of its minutes; what it does to the flow is said by the run-off that goes on.</summary>
    public static Progress FreeBed(Workbench bench, StepSpec spec, double limitS)
    {
        var tun = bench.Setting.IndexOf(spec.Vessel);
        if (spec.VolumeL is > 0)
            Transfers.Move(bench, bench.Setting.IndexOf(bench.Setting.Brewhouse.HotLiquorTank.Id), tun, Contents.WaterKg(spec.VolumeL.Value));
        var progress = Progress.ByClock(spec with { VolumeL = null }, limitS);
        bench.Pass(tun, progress.ElapsedS, bench.Vessels[tun].HoldC);
        return progress;
    }

    /// <summary>
    /// The basket comes out with the grain and what that keeps after draining; what drains is as strong as what is kept, because all
    /// of it was pumped round. It is out from the start of its minutes: whoever reads the level reads it after the lift.
    /// </summary>
    public static Progress LiftBasket(Workbench bench, StepSpec spec, double limitS)
    {
        var i = bench.Setting.IndexOf(spec.Vessel);
        var progress = Progress.ByClock(spec, limitS);
        bench.Vessels[i] = WithoutGrain(bench, bench.Vessels[i]);
        bench.Pass(i, progress.ElapsedS, double.NaN);
        return progress with { VolumeL = Contents.CoolL(bench.Vessels[i]) };
    }

    private static VesselState WithoutGrain(Workbench bench, in VesselState v)
    {
        var kept = Math.Min(1, bench.Setting.Habits.AbsorptionLPerKg * v.GrainKg / Math.Max(1e-9, Contents.LiquidL(v)));
        return v with
        {
            WaterKg = (1 - kept) * v.WaterKg,
            ExtractKg = (1 - kept) * v.ExtractKg,
            GrainKg = 0,
            GrainDryKg = 0,
            UndissolvedKg = 0,
            Washed = 0,
        };
    }

    private static double Running(Workbench bench, int tun, int kettle, StepSpec spec, double spargeL)
    {
        var v = bench.Vessels[tun];
        var hotPerCool = HotPerCool(v);
        var room = hotPerCool * ((spec.VolumeL ?? double.PositiveInfinity) - Contents.CoolL(bench.Vessels[kettle]));
        var free = Contents.LiquidL(v) + spargeL - hotPerCool * KeptL(bench, tun);
        return Math.Max(0, Math.Min(room, free));
    }

    /// <summary>Litres as they stand for each litre at 20 °C.</summary>
    private static double HotPerCool(in VesselState v) =>
        SugarSolution.DensityKgPerM3(v.Plato, 20) / SugarSolution.DensityKgPerM3(v.Plato, v.TempC);

    /// <summary>The kettle's heat stays on: it is kept below the boil until the brewer goes on.</summary>
    private static Progress Ended(Workbench bench, int tun, int tank, int kettle, StepSpec spec, double elapsed)
    {
        bench.Vessels[tun] = bench.Vessels[tun] with { HoldC = double.NaN };
        if (spec.SpargeL > 0)
            bench.Vessels[tank] = bench.Vessels[tank] with { HoldC = double.NaN };
        return new(elapsed, null, null, Contents.CoolL(bench.Vessels[kettle]));
    }

    /// <summary>A few litres run off, as many or fewer of liquor follow; returns the kilograms that followed.</summary>
    private static double Piece(Workbench bench, int tun, int tank, int kettle, double litres, double liquorL)
    {
        var v = bench.Vessels[tun];
        // a tun that a reading has left all but dry still takes sparge liquor
        var held = Math.Max(Contents.LiquidL(v), liquorL);
        double stages = bench.Setting.Habits.SpargeStages, washed = v.Washed, after = washed + liquorL / held;
        var (before, left) = (Math.Max(1e-12, BedWashing.Left(stages, washed)), BedWashing.Left(stages, after));
        var keepsByWashing = left / before;
        var strength = bench.Setting.DrainStrength * BedWashing.Strength(stages, after) / Math.Max(1e-12, left);
        var keepsByDraining = Math.Pow((held - (litres - liquorL)) / held, strength);
        var extract = v.ExtractKg * (1 - keepsByWashing * keepsByDraining);
        RunOff(bench, tun, kettle, litres, extract);
        var liquorKg = liquorL * KgPerL(bench, tank);
        Transfers.Move(bench, tank, tun, liquorKg);
        bench.Vessels[tun] = bench.Vessels[tun] with { Washed = after };
        return liquorKg;
    }

    /// <summary>Litres with a given extract leave the tun for the kettle.</summary>
    private static void RunOff(Workbench bench, int tun, int kettle, double litres, double extractKg)
    {
        var v = bench.Vessels[tun];
        var kg = litres * SugarSolution.DensityKgPerM3(v.Plato, v.TempC) / 1000;
        var extract = Math.Min(extractKg, 0.6 * kg);
        bench.Vessels[kettle] = Contents.Add(bench.Vessels[kettle], bench.Wall(kettle), kg - extract, extract, v.TempC);
        bench.Vessels[tun] = v with { WaterKg = v.WaterKg - (kg - extract), ExtractKg = v.ExtractKg - extract };
    }

    /// <summary>Litres until the kettle's elements are covered: a piece ends there, so that they go on at that moment. Infinite once they are.</summary>
    private static double ToCoverL(Workbench bench, int kettle)
    {
        var missing = bench.Setting.Brewhouse.Vessels[kettle].CoverL - Contents.LiquidL(bench.Vessels[kettle]);
        return missing > 0 ? missing + CoveredByL : double.PositiveInfinity;
    }

    private static void HeatKettle(Workbench bench, int kettle, double seconds)
    {
        var covered = Contents.LiquidL(bench.Vessels[kettle]) >= bench.Setting.Brewhouse.Vessels[kettle].CoverL;
        var hold = covered && bench.NetHeatW(kettle) > 0 ? bench.Setting.BoilingC - BelowBoilK : double.NaN;
        bench.Pass(kettle, seconds, hold);
    }
}
