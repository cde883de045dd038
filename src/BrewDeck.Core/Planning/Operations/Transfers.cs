namespace BrewDeck.Core.Planning.Operations;

/// <summary>Water and wort from the tap and from vessel to vessel.</summary>
internal static class Transfers
{
    /// <summary>Source water into a vessel.</summary>
    public static Progress Fill(Workbench bench, StepSpec spec, double limitS)
    {
        var i = bench.Setting.IndexOf(spec.Vessel);
        var (litres, seconds, left) = Share(spec, bench.Setting.Habits.FillLPerMin, limitS);
        var v = bench.Vessels[i];
        v = Contents.Add(v, bench.Wall(i), Contents.WaterKg(litres), 0, bench.Setting.SourceWaterC);
        bench.Vessels[i] = v with { AtS = v.AtS + seconds };
        return new(seconds, left, null, spec.VolumeL);
    }

    /// <summary>Strike liquor from the tank into the tun: it meets a cold wall, and stands until the rest has come.</summary>
    public static Progress Strike(Workbench bench, StepSpec spec, double limitS)
    {
        int from = bench.Setting.IndexOf(spec.Vessel), to = bench.Setting.IndexOf(spec.To);
        // by the level that the rest of the transfer sees on its mean: one cut in two goes on at what is left
        var flow = LPerMin(bench, from, to, Contents.LiquidL(bench.Vessels[from]) - 0.5 * (spec.VolumeL ?? 0));
        var (litres, seconds, left) = Share(spec, flow, limitS);
        var kg = Math.Min(Contents.WaterKg(litres), bench.Vessels[from].WaterKg);
        Move(bench, from, to, kg);
        bench.Pass(from, seconds, double.NaN);
        bench.Pass(to, 0.5 * seconds, double.NaN);
        bench.Vessels[to] = bench.Vessels[to] with { AtS = bench.Vessels[from].AtS };
        return new(seconds, left, null, spec.VolumeL);
    }

    /// <summary>Mash with all its grain; the vessel that it leaves is rinsed empty.</summary>
    public static Progress Mash(Workbench bench, StepSpec spec, double limitS)
    {
        int from = bench.Setting.IndexOf(spec.Vessel), to = bench.Setting.IndexOf(spec.To);
        var whole = 60 * Contents.StandsL(bench.Vessels[from]) / LPerMin(bench, from, to, 0.5 * Contents.StandsL(bench.Vessels[from]));
        var seconds = Math.Min(whole, limitS);
        var share = whole > 0 ? seconds / whole : 1;
        bench.Pass(from, seconds, double.NaN);
        bench.Pass(to, seconds, double.NaN);
        Pour(bench, from, to, share);
        return new(seconds, share < 1 ? spec : null, null, Contents.CoolL(bench.Vessels[to]));
    }

    /// <summary>A share of all that stands in a vessel, grain included.</summary>
    public static void Pour(Workbench bench, int from, int to, double share)
    {
        var v = bench.Vessels[from];
        bench.Vessels[from] = v with
        {
            WaterKg = (1 - share) * v.WaterKg,
            ExtractKg = (1 - share) * v.ExtractKg,
            GrainKg = (1 - share) * v.GrainKg,
            GrainDryKg = (1 - share) * v.GrainDryKg,
            UndissolvedKg = (1 - share) * v.UndissolvedKg,
        };
        var mash = v with
        {
            WaterKg = share * v.WaterKg,
            ExtractKg = share * v.ExtractKg,
            GrainKg = share * v.GrainKg,
            GrainDryKg = share * v.GrainDryKg,
            UndissolvedKg = share * v.UndissolvedKg,
        };
        var there = bench.Vessels[to];
        var heat = Contents.HeatJ(there, bench.Wall(to)) + Contents.HeatJ(mash, 0);
        bench.Vessels[to] = Contents.AtHeat(there with
        {
            WaterKg = there.WaterKg + mash.WaterKg,
            ExtractKg = there.ExtractKg + mash.ExtractKg,
            GrainKg = there.GrainKg + mash.GrainKg,
            GrainDryKg = there.GrainDryKg + mash.GrainDryKg,
            UndissolvedKg = there.UndissolvedKg + mash.UndissolvedKg,
            Washed = 0,
        }, bench.Wall(to), heat);
    }

    /// <summary>Flow between two vessels; see <see cref="Plumbing.LPerMin"/>.</summary>
    /// <param name="sourceL">What stands in the first on the mean of the transfer, litres.</param>
    public static double LPerMin(Workbench bench, int from, int to, double sourceL) =>
        Plumbing.LPerMin(bench.Setting, from, to, Math.Max(0, sourceL), bench.Vessels[from].TempC);

    /// <summary>Moves liquid as it is, mixed into what stands there; no time passes.</summary>
    public static void Move(Workbench bench, int from, int to, double liquidKg)
    {
        var source = bench.Vessels[from];
        var share = source.LiquidKg > 0 ? Math.Min(1, liquidKg / source.LiquidKg) : 0;
        double water = share * source.WaterKg, extract = share * source.ExtractKg;
        bench.Vessels[to] = Contents.Add(bench.Vessels[to], bench.Wall(to), water, extract, source.TempC);
        bench.Vessels[from] = source with { WaterKg = source.WaterKg - water, ExtractKg = source.ExtractKg - extract };
    }

    /// <summary>Water of a given temperature into a vessel, at once.</summary>
    public static Progress AddWater(Workbench bench, StepSpec spec)
    {
        var i = bench.Setting.IndexOf(spec.Vessel);
        var kg = Contents.WaterKg(spec.VolumeL ?? 0);
        bench.Vessels[i] = Contents.Add(bench.Vessels[i], bench.Wall(i), kg, 0, spec.TargetC ?? bench.Setting.SourceWaterC);
        return new(0, null, spec.TargetC, spec.VolumeL);
    }

    /// <summary>At once, as far as the outlet lets it; the minutes are the hands'.</summary>
    public static Progress Drain(Workbench bench, StepSpec spec, double limitS)
    {
        var i = bench.Setting.IndexOf(spec.Vessel);
        var v = bench.Vessels[i];
        var stays = Math.Min(1, bench.Setting.Brewhouse.Vessels[i].DeadSpaceL / Math.Max(1e-9, Contents.CoolL(v)));
        bench.Vessels[i] = v with { WaterKg = stays * v.WaterKg, ExtractKg = stays * v.ExtractKg, HoldC = double.NaN };
        var progress = Progress.ByClock(spec, limitS);
        bench.Pass(i, progress.ElapsedS, double.NaN);
        return progress;
    }

    private static (double Litres, double Seconds, StepSpec? Left) Share(StepSpec spec, double litresPerMin, double limitS)
    {
        var all = spec.VolumeL ?? 0;
        var litres = Math.Min(all, limitS / 60 * litresPerMin);
        var left = all - litres;
        return (litres, 60 * litres / litresPerMin, left <= 1e-9 ? null : spec with { VolumeL = left });
    }
}
