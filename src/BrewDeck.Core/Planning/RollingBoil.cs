using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Core.Planning;

/// <summary>How much of its heat a kettle needs to boil off what its profile says, and no more.</summary>
public static class RollingBoil
{
    /// <summary>Share of all the heat of the vessel, 0..1; 1 where even that is not enough.</summary>
    public static double HeatShare(PlantSetting setting, string vesselId, in VesselState wort)
    {
        var vessel = setting.IndexOf(vesselId);
        var boiling = Boiling.BoilingC(setting, wort);
        var full = setting.FullHeatW(vessel, Contents.LiquidL(wort));
        var wants = setting.LossWPerK(vessel) * (boiling - setting.AmbientC) + Boil.NetWatts(setting.Habits.EvaporationKgPerH / 3600, boiling);
        return full > wants ? wants / full : 1;
    }
}
