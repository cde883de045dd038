using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning.Operations;

internal static class Mashing
{
    /// <summary>The grist goes in over the minutes of the step; its heat, its moisture and the heat of wetting with it.</summary>
    public static Progress DoughIn(Workbench bench, StepSpec spec, double limitS)
    {
        var i = bench.Setting.IndexOf(spec.Vessel);
        foreach (var charge in spec.Charges)
            bench.Vessels[i] = WithGrist(bench, bench.Vessels[i], i, charge);
        foreach (var charge in spec.Charges)
            bench.Colour(charge);
        var progress = Progress.ByClock(spec with { Charges = [] }, limitS);
        bench.Pass(i, progress.ElapsedS, double.NaN);
        return progress with { TargetC = spec.TargetC };
    }

    private static VesselState WithGrist(Workbench bench, in VesselState v, int vessel, Charge charge)
    {
        double dry = charge.Amount - charge.WaterKg, extract = charge.ExtractKg * bench.Setting.Habits.ConversionYield;
        var moisture = charge.Amount > 0 ? charge.WaterKg / charge.Amount : 0;
        var brings = charge.WaterKg * Water.EnthalpyJPerKg(bench.Setting.GrainC)
            + dry * Contents.DryGrainJPerKgK * bench.Setting.GrainC
            + charge.Amount * MashHeat.SlakingHeatJPerKg(moisture);
        var filled = v with
        {
            WaterKg = v.WaterKg + charge.WaterKg,
            GrainKg = v.GrainKg + charge.Amount,
            GrainDryKg = v.GrainDryKg + dry,
            UndissolvedKg = v.UndissolvedKg + extract,
            Washed = 0,
        };
        return Contents.AtHeat(filled, bench.Wall(vessel), Contents.HeatJ(v, bench.Wall(vessel)) + brings);
    }

    /// <summary>A rest, a vorlauf: time passes. In a rest a directly heated tun is kept at temperature, or a coil keeps it; for a vorlauf the heat goes off.</summary>
    public static Progress Rest(Workbench bench, StepSpec spec, double limitS)
    {
        var i = bench.Setting.IndexOf(spec.Vessel);
        var progress = Progress.ByClock(spec, limitS);
        var kept = spec.Kind == StepKind.Rest ? spec.TargetC ?? double.NaN : double.NaN;
        if (bench.Setting.Habits.MashHeating == MashHeating.Coil && double.IsFinite(kept))
            CoilHeat.Keep(bench, i, kept, progress.ElapsedS);
        else
            bench.Pass(i, progress.ElapsedS, Holds(bench, i) ? kept : double.NaN);
        return progress with { TargetC = spec.TargetC };
    }

    public static Progress Ramp(Workbench bench, StepSpec spec, double limitS)
    {
        var i = bench.Setting.IndexOf(spec.Vessel);
        if (bench.Setting.Habits.MashHeating == MashHeating.Coil)
            return CoilHeat.To(bench, i, spec, limitS);
        return Heating.To(bench, i, spec, spec.TargetC!.Value, limitS, Holds(bench, i));
    }

    private static bool Holds(Workbench bench, int vessel) =>
        bench.Setting.Habits.MashHeating is MashHeating.Direct or MashHeating.Decoction && bench.NetHeatW(vessel) > 0;
}
