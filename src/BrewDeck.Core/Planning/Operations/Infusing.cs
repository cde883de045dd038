using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>Hot water into the mash: as much as its heat balance asks for, or as the tank can give.</summary>
internal static class Infusing
{
    /// <param name="spec">From the tank in <see cref="StepSpec.Vessel"/> into the tun in <see cref="StepSpec.To"/>.</param>
    public static Progress Run(Workbench bench, StepSpec spec, double limitS)
    {
        int from = bench.Setting.IndexOf(spec.Vessel), to = bench.Setting.IndexOf(spec.To);
        var kg = Math.Min(MissingKg(bench, from, to, spec.TargetC!.Value), FreeKg(bench, from));
        var litres = 1000 * kg / Water.DensityKgPerM3(20);
        var flow = Transfers.LPerMin(bench, from, to, Contents.LiquidL(bench.Vessels[from]) - 0.5 * litres) / 60;
        var seconds = Math.Min(limitS, litres / flow);
        var moved = litres > 0 ? kg * seconds * flow / litres : 0;
        Transfers.Move(bench, from, to, moved);
        bench.Pass(from, seconds, bench.Vessels[from].HoldC);
        bench.Pass(to, seconds, double.NaN);
        return new(seconds, kg - moved > 1e-6 ? spec : null, spec.TargetC, litres);
    }

    /// <summary>Hot water that brings the mash to a temperature, kg; infinite when the water is not hotter.</summary>
    private static double MissingKg(Workbench bench, int from, int to, double celsius)
    {
        var v = bench.Vessels[to];
        var missing = Contents.HeatAtJ(v, bench.Wall(to), celsius) - Contents.HeatJ(v, bench.Wall(to));
        var gives = Water.EnthalpyJPerKg(bench.Vessels[from].TempC) - Water.EnthalpyJPerKg(celsius);
        return missing <= 0 ? 0 : gives <= 0 ? double.PositiveInfinity : missing / gives;
    }

    private static double FreeKg(Workbench bench, int tank) => Math.Max(
        0, bench.Vessels[tank].WaterKg - Contents.WaterKg(bench.Setting.Brewhouse.Vessels[tank].DeadSpaceL));
}
