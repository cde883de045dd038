using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>
/// Part of the mash is boiled in the kettle and given back. How much is the brewers' cross (<see cref="MashHeat.DecoctionFraction"/>)
/// with what it leaves out: what the tun loses meanwhile, its wall, and what boils away. The boil and the return are run on
/// a copy of the plant until the mash comes out at its temperature.
/// </summary>
internal static class Decocting
{
    /// <summary>More than this is never pulled: what is left must carry the enzymes.</summary>
    private const double MostShare = 0.7;

    /// <summary>A decoction is boiled gently: share of what leaves a rolling boil (common practice, no source).</summary>
    private const double Gentle = 0.5;

    private const int Looks = 8;

    private const double NearK = 1e-4;

    /// <param name="spec">From the tun in <see cref="StepSpec.Vessel"/> into the kettle; the mash temperature to reach and the minutes to boil.</param>
    public static Progress Pull(Workbench bench, StepSpec spec, double limitS)
    {
        int from = bench.Setting.IndexOf(spec.Vessel), to = bench.Setting.IndexOf(spec.To);
        var share = Share(bench, from, to, spec);
        double litres = share * Contents.StandsL(bench.Vessels[from]), pulled = Contents.StandsL(bench.Vessels[to]) + litres;
        var whole = 60 * litres / Transfers.LPerMin(bench, from, to, Contents.StandsL(bench.Vessels[from]) - 0.5 * litres);
        var seconds = Math.Min(whole, limitS);
        var hold = bench.Vessels[from].HoldC;
        Transfers.Pour(bench, from, to, whole > 0 ? share * seconds / whole : share);
        bench.Pass(from, seconds, hold);
        bench.Pass(to, seconds, double.NaN);
        return new(seconds, seconds < whole - 1e-6 ? spec : null, spec.TargetC, pulled);
    }

    public static Progress Heat(Workbench bench, StepSpec spec, double limitS)
    {
        var kettle = bench.Setting.IndexOf(spec.Vessel);
        return Heating.To(bench, kettle, spec, Boiling.BoilingC(bench.Setting, bench.Vessels[kettle]), limitS, holdAfter: true);
    }

    public static Progress Boil(Workbench bench, StepSpec spec, double limitS)
    {
        var progress = Progress.ByClock(spec, limitS);
        Boil(bench, bench.Setting.IndexOf(spec.Vessel), progress.ElapsedS);
        return progress;
    }

    /// <summary>All of it goes back; the kettle is rinsed with it.</summary>
    public static Progress Return(Workbench bench, StepSpec spec, double limitS)
    {
        int from = bench.Setting.IndexOf(spec.Vessel), to = bench.Setting.IndexOf(spec.To);
        var litres = Contents.StandsL(bench.Vessels[from]);
        var whole = 60 * litres / Transfers.LPerMin(bench, from, to, 0.5 * litres);
        var seconds = Math.Min(whole, limitS);
        Transfers.Pour(bench, from, to, whole > 0 ? seconds / whole : 1);
        bench.Pass(from, seconds, double.NaN);
        bench.Pass(to, seconds, double.NaN);
        return new(seconds, seconds < whole - 1e-6 ? spec : null, spec.TargetC, litres);
    }

    private static void Boil(Workbench bench, int kettle, double seconds)
    {
        var v = bench.Vessels[kettle];
        var gone = Math.Min(0.5 * v.WaterKg, Gentle * Boiling.EvaporationKgPerS(bench.Setting, kettle, v, bench.PlugAt) * seconds);
        bench.Happen(kettle, seconds, v.TempC);
        v = bench.Vessels[kettle];
        bench.Vessels[kettle] = v with { WaterKg = v.WaterKg - gone, AtS = v.AtS + seconds };
    }

    /// <summary>Share of what stands in the tun that must be pulled still: by secants from the brewers' cross.</summary>
    private static double Share(Workbench bench, int tun, int kettle, StepSpec spec)
    {
        var boiling = Boiling.BoilingC(bench.Setting, bench.Vessels[tun]);
        // what has been pulled already counts: a pull cut in two goes on with what is missing
        double target = spec.TargetC!.Value, low = 0, atLow = Miss(bench, tun, kettle, spec, 0);
        if (atLow >= -NearK)
            return 0;
        var share = Math.Clamp(MashHeat.DecoctionFraction(bench.Vessels[tun].TempC, target, boiling), 0.01, MostShare);
        for (var i = 0; i < Looks; i++)
        {
            var at = Miss(bench, tun, kettle, spec, share);
            if (Math.Abs(at) < NearK || at == atLow)
                break;
            var next = Math.Clamp(share - at * (share - low) / (at - atLow), 0, MostShare);
            (low, atLow, share) = (share, at, next);
        }
        return share;
    }

    /// <summary>How much too warm the mash comes out when so much is pulled, K.</summary>
    private static double Miss(Workbench bench, int tun, int kettle, StepSpec spec, double share)
    {
        var trial = bench.Trial();
        var hold = trial.Vessels[tun].HoldC;
        Transfers.Pour(trial, tun, kettle, share);
        var v = trial.Vessels[kettle];
        if (v.LiquidKg <= 0)
            return trial.Vessels[tun].TempC - spec.TargetC!.Value;
        var boiling = Boiling.BoilingC(trial.Setting, v);
        // with all its heat on: whether that is covered is a limit, not a matter of how much is pulled
        var watts = trial.Setting.FullHeatW(kettle, double.PositiveInfinity) - 0.5 * trial.Setting.LossWPerK(kettle) * (boiling - trial.Setting.AmbientC);
        var joules = Contents.HeatAtJ(v, trial.Wall(kettle), boiling) - Contents.HeatJ(v, trial.Wall(kettle));
        var seconds = Math.Max(0, joules) / Math.Max(1, watts);
        trial.Vessels[kettle] = v with { TempC = boiling };
        Boil(trial, kettle, 60 * (spec.Minutes ?? 0));
        trial.Pass(tun, seconds + 60 * (spec.Minutes ?? 0), hold);
        Return(trial, spec with { Vessel = spec.To, To = spec.Vessel }, double.PositiveInfinity);
        return trial.Vessels[tun].TempC - spec.TargetC!.Value;
    }
}
