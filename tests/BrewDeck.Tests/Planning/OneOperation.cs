using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Planning;

/// <summary>One operation on a plant of which one vessel was filled for it, with tight lids so that nothing leaves unseen.</summary>
internal static class OneOperation
{
    public const int Tank = 0, Tun = 1, Kettle = 2;

    public const double HourS = 3600;

    public static PlantSetting Setting => PlantSetting.Of(Demo.House, new DayChoices()) with { LidLeak = 0 };

    public static PlantState With(PlantSetting setting, int vessel, VesselState contents)
    {
        var empty = PlantModel.Empty(setting);
        return empty with { Vessels = empty.Vessels.SetItem(vessel, contents) };
    }

    /// <summary>All plugs at the kettle.</summary>
    public static PlantState Plugged(PlantSetting setting, VesselState wort) =>
        With(setting, Kettle, wort) with { PlugAt = [.. setting.Circuits.Select(_ => Kettle)] };

    public static StepSpec Step(StepKind kind, int vessel) => new() { Id = "step", Kind = kind, Unit = UnitProcedure.Mash, Vessel = Demo.House.Vessels[vessel].Id };

    public static StepOutcome Run(PlantSetting setting, StepSpec spec, PlantState state, double limitS = double.PositiveInfinity) =>
        PlantModel.Run(setting, spec, state, 0, limitS);
}
