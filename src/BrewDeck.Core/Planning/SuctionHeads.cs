using System.Collections.Immutable;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Planning;

/// <summary>
/// Net positive suction head of the pump while hot liquor or wort is moved: near the boil, and the more so high above the sea, it turns to
/// steam in the inlet and the pump cavitates.
/// </summary>
public static class SuctionHeads
{
    /// <summary>Half of the hose hangs before the pump; a valve and a bend or two, handbook values added up.</summary>
    private const double Before = 0.5, Coefficients = 2;

    /// <summary>Outlet above the inlet of the pump where heights are not told, m: common practice, no source.</summary>
    private const double UsualOutletM = 0.4;

    /// <summary>What the pump has at the worst moment of a step, when the level is lowest, m; null: the step moves nothing hot by pump.</summary>
    private static double? AvailableM(PlantSetting setting, PlanStep step)
    {
        if (setting.Brewhouse.Pumps.IsEmpty || Drawn(setting, step.Spec) is not (>= 0 and var vessel) || vessel >= setting.Brewhouse.Vessels.Length)
            return null;
        var house = setting.Brewhouse;
        var (pump, from, v) = (house.Pumps[0], house.Vessels[vessel], step.After.Vessels[vessel]);
        var hose = Plumbing.HoseOf(house);
        var above = (from.OutletM is { } outlet ? outlet - pump.HeightM : UsualOutletM) + Plumbing.LevelM(from, Contents.StandsL(v));
        var lost = Plumbing.LossM(hose with { LengthM = Before * hose.LengthM }, pump.FlowLPerMin, v.TempC, Coefficients);
        return Hydraulics.SuctionHeadM(Water.SaturationPressurePa(setting.BoilingC), v.TempC, above, lost);
    }

    /// <summary>The pump would cavitate in this step.</summary>
    public static bool Cavitates(PlantSetting setting, PlanStep step) =>
        AvailableM(setting, step) is { } head && head < setting.Brewhouse.Pumps[0].NeedsSuctionM;

    /// <summary>The worst of a day; empty where nothing hot is pumped.</summary>
    internal static IEnumerable<Limit> Limit(PlantSetting setting, ImmutableArray<PlanStep> steps)
    {
        var heads = steps.Select(s => AvailableM(setting, s)).OfType<double>().ToArray();
        if (heads.Length > 0)
            yield return new(LimitName.SuctionHead, heads.Min(), setting.Brewhouse.Pumps[0].NeedsSuctionM, "m", AtMost: false);
    }

    private static int Drawn(PlantSetting setting, StepSpec spec) => spec.Kind switch
    {
        StepKind.TransferStrike or StepKind.Infuse or StepKind.TransferWort => setting.IndexOf(spec.Vessel),
        StepKind.Lauter or StepKind.BatchSparge when spec.SpargeL > 0 => setting.IndexOf(setting.Brewhouse.HotLiquorTank.Id),
        // cold by then where a coil hangs in the kettle
        StepKind.CastOut => setting.IndexOf(spec.Vessel),
        _ => -1,
    };
}
