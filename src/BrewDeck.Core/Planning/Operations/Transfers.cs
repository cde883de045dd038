namespace BrewDeck.Core.Planning.Operations;

/// <summary>Water and wort from the tap and from vessel to vessel.</summary>
internal static class Transfers
{
    /// <summary>A garden hose, common practice, no source; L/min.</summary>
    public const double TapLPerMin = 10;

    /// <summary>Source water into a vessel.</summary>
    public static Progress Fill(Workbench bench, StepSpec spec, double limitS)
    {
        var i = bench.Setting.IndexOf(spec.Vessel);
        var (litres, seconds, left) = Share(spec, TapLPerMin, limitS);
        var v = bench.Vessels[i];
        v = Contents.Add(v, bench.Wall(i), Contents.WaterKg(litres), 0, bench.Setting.SourceWaterC);
        bench.Vessels[i] = v with { AtS = v.AtS + seconds };
        return new(seconds, left, null, spec.VolumeL);
    }

    /// <summary>Strike liquor from the tank into the tun: it meets a cold wall, and stands until the rest has come.</summary>
    public static Progress Strike(Workbench bench, StepSpec spec, double limitS)
    {
        int from = bench.Setting.IndexOf(spec.Vessel), to = bench.Setting.IndexOf(spec.To);
        var flow = bench.Setting.Brewhouse.Pumps.IsEmpty ? TapLPerMin : bench.Setting.Brewhouse.Pumps[0].FlowLPerMin;
        var (litres, seconds, left) = Share(spec, flow, limitS);
        var kg = Math.Min(Contents.WaterKg(litres), bench.Vessels[from].WaterKg);
        Move(bench, from, to, kg);
        bench.Pass(from, seconds, double.NaN);
        bench.Pass(to, 0.5 * seconds, double.NaN);
        bench.Vessels[to] = bench.Vessels[to] with { AtS = bench.Vessels[from].AtS };
        return new(seconds, left, null, spec.VolumeL);
    }

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

    private static (double Litres, double Seconds, StepSpec? Left) Share(StepSpec spec, double litresPerMin, double limitS)
    {
        var all = spec.VolumeL ?? 0;
        var litres = Math.Min(all, limitS / 60 * litresPerMin);
        var left = all - litres;
        return (litres, 60 * litres / litresPerMin, left <= 1e-9 ? null : spec with { VolumeL = left });
    }
}
