using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>
/// A level read in the tun while strike liquor runs into it, far from what the clock says: a pump that lost its prime has left the rest in
/// its tank, and that still comes.
/// </summary>
internal static class StrikeLevel
{
    /// <summary>Nearer than this the flow is as reckoned and the scale is off; share of what is moved in all.</summary>
    private const double Near = 0.1;

    /// <param name="live">Cut at now.</param>
    /// <returns>Null: the reading is no such level.</returns>
    public static LivePlant? Learned(RunState state, LivePlant live, Reading reading)
    {
        var segment = live.Running.Concat(live.Held).FirstOrDefault(s => s.Left.Kind == StepKind.TransferStrike && s.Left.To == reading.Vessel);
        if (segment is null || reading.Kind != ReadingKind.Volume || state.Step(segment.Left.Id)?.Spec.VolumeL is not (> 0 and { } all))
            return null;
        int from = live.Setting.IndexOf(segment.Left.Vessel), to = live.Setting.IndexOf(reading.Vessel);
        var (tank, tun) = (live.Plant.Vessels[from], live.Plant.Vessels[to]);
        var read = Assimilate.Volume(tun, reading, waterOnly: false);
        // no more can come than stands in the tank
        var missingKg = Math.Max(tun.WaterKg - read.WaterKg, -tank.WaterKg);
        if (Math.Abs(missingKg) <= Near * Contents.WaterKg(all))
            return null;
        var vessels = live.Plant.Vessels.SetItem(to, read).SetItem(from, tank with { WaterKg = tank.WaterKg + missingKg });
        var left = Math.Max(0, (segment.Left.VolumeL ?? 0) + missingKg / Contents.WaterKg(1));
        return (live with { Plant = live.Plant with { Vessels = vessels } })
            .Each(s => s == segment ? s with { Left = s.Left with { VolumeL = left }, EndedS = null } : s);
    }
}
