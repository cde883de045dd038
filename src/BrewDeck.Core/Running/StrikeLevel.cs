using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>
/// A level read in the tun while strike liquor runs into it, or once it is said to have come, far from what the clock says: a pump that lost its prime has
/// left the rest in its tank, and that still comes, or can be run over.
/// </summary>
internal static class StrikeLevel
{
    /// <summary>Nearer than this the flow is as reckoned and the scale is off; share of what is moved in all.</summary>
    private const double Near = 0.1;

    /// <param name="live">Cut at now.</param>
    /// <returns>Null: the reading is no such level.</returns>
    public static LivePlant? Learned(RunState state, LivePlant live, Reading reading)
    {
        if (reading.Kind != ReadingKind.Volume || Transfer(state, reading.Vessel) is not { Spec: { VolumeL: > 0 and var all } transfer })
            return null;
        var segment = live.Running.Concat(live.Held).FirstOrDefault(s => s.Left.Id == transfer.Id);
        int from = live.Setting.IndexOf(transfer.Vessel), to = live.Setting.IndexOf(reading.Vessel);
        var (tank, tun) = (live.Plant.Vessels[from], live.Plant.Vessels[to]);
        // what the grist has given by then is there, whatever water is missing
        var read = Assimilate.Volume(tun, reading, waterOnly: tun.GrainDryKg > 0);
        // no more can come than stands in the tank
        var missingKg = Math.Max(tun.WaterKg - read.WaterKg, -tank.WaterKg);
        if (Math.Abs(missingKg) <= Near * Contents.WaterKg(all))
            return null;
        var vessels = live.Plant.Vessels.SetItem(to, read).SetItem(from, tank with { WaterKg = tank.WaterKg + missingKg });
        var balanced = live with { Plant = live.Plant with { Vessels = vessels } };
        if (segment is null)
            return balanced;
        var left = Math.Max(0, (segment.Left.VolumeL ?? 0) + missingKg / Contents.WaterKg(1));
        return balanced.Each(s => s == segment ? s with { Left = s.Left with { VolumeL = left }, EndedS = null } : s);
    }

    /// <summary>The strike liquor that runs into a tun, or has come there last with nothing but the grist after it, and its rest; null: there is none.</summary>
    public static RunStep? Transfer(RunState state, string tun)
    {
        var last = state.Steps.LastOrDefault(s => s.StartedMs is not null && s.Status != RunStatus.Skipped && (s.Spec.Vessel == tun || s.Spec.To == tun) && s.Spec.Kind is not (StepKind.DoughIn or StepKind.Rest));
        return last is { Spec: { Kind: StepKind.TransferStrike, To: var to } } && to == tun ? last : null;
    }
}
