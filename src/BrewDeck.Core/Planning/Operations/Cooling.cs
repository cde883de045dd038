using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

internal static class Cooling
{
    private const double PieceS = 60;

    /// <summary>Wort this near the cooling water hardly changes any more: the rest of the time is one piece; K.</summary>
    private const double NearSourceK = 0.05;

    /// <summary>Warm air and radiation of an open surface: 150 W at 94 °C from a kettle of 45 cm; common practice, no source.</summary>
    private const double OpenWPerM2K = 12;

    /// <summary>Heat off, lid off: whirlpool and stand. The hops see the temperature they really stand at.</summary>
    public static Progress Stand(Workbench bench, StepSpec spec, double limitS)
    {
        var kettle = bench.Setting.IndexOf(spec.Vessel);
        var progress = Progress.ByClock(spec, limitS);
        StandOpen(bench, kettle, progress.ElapsedS);
        return progress;
    }

    /// <summary>However long it is left so.</summary>
    public static void StandOpen(Workbench bench, int vessel, double seconds)
    {
        for (var left = seconds; left > 0; left -= PieceS)
            Piece(bench, vessel, Math.Min(PieceS, left));
    }

    /// <summary>
    /// Steam by the pressure of the vapour, so that wort near the boil cools fastest at first. Classical Runge-Kutta: by the middle of the
    /// piece alone, a stand that is cut into pieces ended 0.03 K off one that is not.
    /// </summary>
    private static void Piece(Workbench bench, int kettle, double seconds)
    {
        var v = bench.Vessels[kettle];
        var (setting, capacity) = (bench.Setting, Contents.CapacityJPerK(v, bench.Wall(kettle), v.TempC));
        var openM2 = setting.OpenShare * setting.Brewhouse.Vessels[kettle].SurfaceM2;
        (double KgPerS, double KPerS) At(double celsius)
        {
            var steam = openM2 * Boil.StillSurfaceKgPerM2S(celsius, setting.AmbientC);
            var lossW = (setting.LossWPerK(kettle) + openM2 * OpenWPerM2K) * (celsius - setting.AmbientC) + steam * Water.LatentHeatJPerKg(celsius);
            return (steam, -lossW / capacity);
        }
        var first = At(v.TempC);
        var middleC = v.TempC + 0.5 * seconds * first.KPerS;
        var second = At(middleC);
        var third = At(v.TempC + 0.5 * seconds * second.KPerS);
        var fourth = At(v.TempC + seconds * third.KPerS);
        bench.Expose(v, seconds, middleC);
        var kgPerS = (first.KgPerS + 2 * second.KgPerS + 2 * third.KgPerS + fourth.KgPerS) / 6;
        var kPerS = (first.KPerS + 2 * second.KPerS + 2 * third.KPerS + fourth.KPerS) / 6;
        bench.Vessels[kettle] = v with
        {
            WaterKg = v.WaterKg - Math.Min(v.WaterKg, kgPerS * seconds),
            TempC = Math.Max(Math.Min(v.TempC, setting.AmbientC), v.TempC + kPerS * seconds),
            AtS = v.AtS + seconds,
            HoldC = double.NaN,
            Open = true,
        };
    }

    /// <summary>A coil in the kettle, stirred, water on full.</summary>
    public static Progress InKettle(Workbench bench, StepSpec spec, double limitS)
    {
        var kettle = bench.Setting.IndexOf(spec.Vessel);
        var target = spec.TargetC!.Value;
        double elapsed = 0;
        while (bench.Vessels[kettle].TempC > target + 1e-6 && elapsed < Math.Min(limitS, Heating.HopelessS))
        {
            var end = Math.Min(limitS, Heating.HopelessS);
            var near = bench.Vessels[kettle].TempC - bench.Setting.SourceWaterC < NearSourceK;
            var seconds = near && double.IsFinite(end) ? end - elapsed : Math.Min(20, limitS - elapsed);
            CoilPiece(bench, kettle, target, ref seconds);
            elapsed += seconds;
        }
        return new(elapsed, bench.Vessels[kettle].TempC > target + 1e-6 ? spec : null, target);
    }

    private static void CoilPiece(Workbench bench, int kettle, double target, ref double seconds)
    {
        var v = bench.Vessels[kettle];
        var chiller = bench.Setting.Brewhouse.Chiller;
        var water = chiller.WaterLPerMin / 60 * Water.SpecificHeatJPerKgK(20);
        var capacity = Contents.CapacityJPerK(v, bench.Wall(kettle), v.TempC);
        var rate = water * (1 - Math.Exp(-chiller.UaWPerK / water)) / capacity;
        var source = bench.Setting.SourceWaterC;
        if (target > source)
            seconds = Math.Min(seconds, Math.Log((v.TempC - source) / (target - source)) / rate);
        var end = source + (v.TempC - source) * Math.Exp(-rate * seconds);
        bench.Expose(v, seconds, 0.5 * (v.TempC + end));
        bench.Vessels[kettle] = v with { TempC = end, AtS = v.AtS + seconds, HoldC = double.NaN };
    }

    /// <summary>All but the dead space of the kettle, trub and hops with it: into the whirlpool, or out of a kettle that has failed into the one that boils in its place.</summary>
    public static Progress PumpOver(Workbench bench, StepSpec spec, double limitS)
    {
        int kettle = bench.Setting.IndexOf(spec.Vessel), to = bench.Setting.IndexOf(spec.To);
        var boiled = kettle == bench.Kettle;
        if (boiled && bench.KnockedOutL == 0)
            bench.KnockedOutL = Contents.CoolL(bench.Vessels[kettle]);
        var v = bench.Vessels[kettle];
        var free = Math.Max(0, Contents.CoolL(v) - bench.Setting.Brewhouse.Vessels[kettle].DeadSpaceL);
        var flow = Transfers.LPerMin(bench, kettle, to, 0.5 * Contents.LiquidL(v)) / 60;
        var litres = Math.Min(free, flow * limitS);
        if (boiled)
            bench.Expose(v, litres / flow, v.TempC);
        Transfers.Move(bench, kettle, to, v.LiquidKg * litres / Math.Max(1e-9, Contents.CoolL(v)));
        Cover(bench, kettle);
        bench.Pass(kettle, litres / flow, double.NaN);
        bench.Pass(to, litres / flow, double.NaN);
        return new(litres / flow, free - litres > 1e-9 ? spec : null, null, Contents.CoolL(bench.Vessels[to]));
    }

    /// <summary>Wort that stays behind at cast-out: trub, dead space and what the hops soak up, litres at 20 °C.</summary>
    private static double KeptL(Workbench bench, int vessel)
    {
        var hops = bench.Hops.Sum(h => h.MassKg) * bench.Setting.Habits.HopAbsorptionLPerKg;
        return bench.Setting.Brewhouse.Vessels[vessel].DeadSpaceL + bench.Setting.Habits.TrubL + hops;
    }

    /// <summary>Into the fermenter, through a counterflow chiller or already cold; throttled until it leaves at the pitching temperature.</summary>
    public static Progress CastOut(Workbench bench, StepSpec spec, double limitS)
    {
        var kettle = bench.Setting.IndexOf(spec.Vessel);
        var fermenter = bench.Setting.FermenterIndex;
        if (bench.KnockedOutL == 0)
            bench.KnockedOutL = Contents.CoolL(bench.Vessels[kettle]);
        var free = Math.Max(0, Contents.CoolL(bench.Vessels[kettle]) - KeptL(bench, kettle));
        var (flow, outC) = ChillerFlow.For(bench.Setting, bench.Vessels[kettle], spec.TargetC!.Value);
        var litres = Math.Min(free, flow / 60 * limitS);
        var seconds = 60 * litres / flow;
        Deliver(bench, kettle, fermenter, litres, outC);
        Leave(bench, kettle, seconds, free - 0.5 * litres);
        bench.Vessels[fermenter] = bench.Vessels[fermenter] with { AtS = bench.Vessels[kettle].AtS };
        return new(seconds, free - litres > 1e-9 ? spec : null, outC, Contents.CoolL(bench.Vessels[fermenter]));
    }

    private static void Deliver(Workbench bench, int kettle, int fermenter, double litres, double outC)
    {
        var v = bench.Vessels[kettle];
        var fills = Math.Clamp(bench.Setting.Habits.LineLossL - bench.LineFilledL, 0, litres);
        bench.LineFilledL += fills;
        var arrives = litres - fills;
        double share = litres / Math.Max(1e-9, Contents.CoolL(v)), kept = arrives / Math.Max(1e-9, Contents.CoolL(v));
        bench.Vessels[fermenter] = Contents.Add(
            bench.Vessels[fermenter], bench.Wall(fermenter), kept * v.WaterKg, kept * v.ExtractKg, outC);
        bench.Vessels[kettle] = v with { WaterKg = (1 - share) * v.WaterKg, ExtractKg = (1 - share) * v.ExtractKg };
    }

    /// <summary>Wort leaves the hot kettle bit by bit: only what still waits goes on taking bitterness from the hops.</summary>
    /// <param name="waitsL">Wort that waits for the chiller, on the mean of these seconds, litres at 20 °C.</param>
    private static void Leave(Workbench bench, int kettle, double seconds, double waitsL)
    {
        var v = bench.Vessels[kettle];
        var all = bench.KnockedOutL - KeptL(bench, kettle);
        bench.Expose(v, all > 0 ? seconds * Math.Clamp(waitsL / all, 0, 1) : 0, v.TempC);
        bench.Vessels[kettle] = v with { AtS = v.AtS + seconds, HoldC = double.NaN };
        Cover(bench, kettle);
    }

    /// <summary>The wort has gone from it.</summary>
    private static void Cover(Workbench bench, int vessel) => bench.Vessels[vessel] = bench.Vessels[vessel] with { Open = false };
}
