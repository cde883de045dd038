using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>
/// What a level tells of a fill, read before or while it runs: those litres are in the vessel, and only what is missing to the level
/// that the fill is for still comes. A fill by a faster tap, or one that was started late in the record, is not counted twice.
/// </summary>
public static class Filling
{
    /// <summary>A level this near to the end of a fill is that of its end: nobody shuts a tap to the tenth; litres, or a share of what it fills, common practice, no source.</summary>
    private const double NearEndL = 0.5, NearEnd = 0.04;

    /// <summary>The fill that runs, waits on hold or may start in a vessel; null: none.</summary>
    public static RunStep? In(RunState state, string vessel) => state.Steps.FirstOrDefault(s => s.Spec.Kind == StepKind.Fill
        && s.Spec.Vessel == vessel && (s.Status is RunStatus.Running or RunStatus.Held || StepOrder.CanStart(state, s)));

    /// <summary>What will stand in the vessel at the end of the fill, litres.</summary>
    /// <param name="live">Cut at now.</param>
    internal static double EndL(LivePlant live, RunStep fill) => Contents.StandsL(End(live, fill));

    private static VesselState End(LivePlant live, RunStep fill) => In(
        live, PlantModel.Run(live.Setting, Left(live, fill), live.Plant, 0, double.PositiveInfinity).State, fill.Spec.Vessel);

    /// <param name="before">Cut at now, without the reading.</param>
    /// <param name="state">With the reading in its plant.</param>
    internal static RunState Told(RunState state, LivePlant before, Reading reading)
    {
        if (reading.Kind != ReadingKind.Volume || In(state, reading.Vessel) is not { } fill)
            return state;
        // a fill counts its litres at 20 °C
        var missing = Math.Max(0, Contents.CoolL(End(before, fill)) - Contents.CoolL(In(state.Live!, state.Live!.Plant, reading.Vessel)));
        var all = Math.Max(Left(before, fill).VolumeL ?? 0, fill.Spec.VolumeL ?? 0);
        return With(state, fill, missing <= Math.Max(NearEndL, NearEnd * all) ? 0 : missing);
    }

    private static VesselState In(LivePlant live, PlantState plant, string vessel) => plant.Vessels[live.Setting.IndexOf(vessel)];

    private static StepSpec Left(LivePlant live, RunStep fill) =>
        live.Running.Concat(live.Held).FirstOrDefault(s => s.Left.Id == fill.Spec.Id)?.Left ?? fill.Spec;

    private static RunState With(RunState state, RunStep fill, double litres)
    {
        if (fill.Status == RunStatus.Idle)
            return state with { Steps = state.Steps.Replace(fill, fill with { Spec = fill.Spec with { VolumeL = litres } }) };
        // one that should have been over by the clock goes on
        Segment Changed(Segment s) => s with { Left = s.Left with { VolumeL = litres }, EndedS = litres > 0 ? null : s.EndedS };
        return state with { Live = state.Live!.Each(s => s.Left.Id == fill.Spec.Id ? Changed(s) : s) };
    }
}
