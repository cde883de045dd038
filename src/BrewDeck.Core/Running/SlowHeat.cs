using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>A heat-up that lags clearly behind: temperatures in a tank are believed and teach nothing, but heat that is missing is missing until the end.</summary>
internal static class SlowHeat
{
    /// <summary>A vessel that gives less than this of its heat is slow, not merely spread: common practice, no source.</summary>
    public const double SlowFactor = 0.85;

    /// <summary>A lag smaller than this, or seen earlier, may be a probe, a stir or a late switch; K and s, common practice, no source.</summary>
    private const double LeastK = 3, LeastS = 300;

    /// <summary>Less is no longer slow: it is off, and would have no end.</summary>
    private const double LeastFactor = 0.1;

    /// <summary>The setting with the heat that a reading in a running heat-up shows.</summary>
    /// <param name="live">Cut at <paramref name="nowS"/>, before the reading.</param>
    public static PlantSetting Learned(RunState state, LivePlant live, Reading reading, double nowS)
    {
        var setting = live.Setting;
        var vessel = setting.IndexOf(reading.Vessel);
        if (reading.Kind != ReadingKind.Temperature || vessel < 0 || vessel >= setting.FermenterIndex || In(state, setting, vessel) is not { StartedMs: { } since })
            return setting;
        var v = live.Plant.Vessels[vessel];
        var (lagK, elapsedS) = (v.TempC - reading.Value, nowS - state.SecondsAt(since));
        var watts = setting.NetHeatW(vessel, Contents.StandsL(v), live.Plant.PlugAt);
        if (Math.Abs(lagK) < LeastK || elapsedS < LeastS || watts <= 0)
            return setting;
        var missing = lagK * Contents.CapacityJPerK(v, setting.HeatCapacityJPerK(vessel), v.TempC) / (watts * elapsedS);
        var factor = Math.Clamp(setting.HeatFactor[vessel] * (1 - missing), LeastFactor, 1);
        return factor < SlowFactor || setting.HeatFactor[vessel] < SlowFactor ? setting with { HeatFactor = setting.HeatFactor.SetItem(vessel, factor) } : setting;
    }

    /// <summary>A cause that has been found explains it.</summary>
    public static PlantSetting Explained(PlantSetting setting) =>
        setting with { HeatFactor = [.. setting.HeatFactor.Select(f => f < SlowFactor ? 1 : f)] };

    /// <summary>The running step that heats a vessel to a temperature; null: none.</summary>
    public static RunStep? In(RunState state, PlantSetting setting, int vessel) => state.Steps.FirstOrDefault(s =>
        s.Status == RunStatus.Running && s.Spec.Kind.EndsBy() == EndsBy.Temperature && PlantModel.HeatedVessel(setting, s.Spec) == vessel);
}
