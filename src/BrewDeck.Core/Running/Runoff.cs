using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>
/// What the kettle's level teaches while the tun runs off: the flow. The lauter is run again from where it was last known, faster or
/// slower, so that the strength of what is in the kettle goes with its volume.
/// </summary>
internal static class Runoff
{
    private const double Slowest = 0.2;

    private const double Fastest = 5;

    /// <param name="now">The same cut at now, and at its end if it has come there.</param>
    /// <returns>The plant cut at now with the flow that fits the reading; null when nothing runs off.</returns>
    public static LivePlant? Learned(LivePlant before, LivePlant now, Reading reading, double nowS)
    {
        if (reading.Kind != ReadingKind.Volume || reading.Vessel != before.Setting.Brewhouse.Kettle.Id || !StillRuns(now))
            return null;
        var segment = before.Running.FirstOrDefault(s => s.Left.Kind is StepKind.Lauter or StepKind.RunOff);
        if (segment is null || nowS - segment.SinceS < 60)
            return null;
        double low = Slowest, high = Fastest;
        for (var i = 0; i < 20; i++)
        {
            var middle = Math.Sqrt(low * high);
            if (KettleL(With(before, middle).CutAt(nowS)) > reading.Value)
                high = middle;
            else
                low = middle;
        }
        return With(before, Math.Sqrt(low * high)).CutAt(nowS);
    }

    private static bool StillRuns(LivePlant live) =>
        live.Running.FirstOrDefault(s => s.Left.Kind is StepKind.Lauter or StepKind.RunOff) is { EndedS: null, Left.VolumeL: not 0 };

    private static LivePlant With(LivePlant live, double factor)
    {
        // whatever is read how often, the flow stays within reason of what this bed usually does
        var (habits, usual) = (live.Setting.Habits, live.Setting.Brewhouse.Habits.RunoffLPerMin);
        var flow = Math.Clamp(factor * habits.RunoffLPerMin, Slowest * usual, Fastest * usual);
        return live with { Setting = live.Setting with { Habits = habits with { RunoffLPerMin = flow } } };
    }

    private static double KettleL(LivePlant live) =>
        Contents.StandsL(live.Plant.Vessels[live.Setting.IndexOf(live.Setting.Brewhouse.Kettle.Id)]);
}
