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

    /// <summary>What a dip stick does not tell apart, litres.</summary>
    private const double NearL = 0.1;

    private const int Looks = 20;

    /// <param name="segment">As it begins or goes on.</param>
    public static Segment Known(Segment segment, PlantState plant) =>
        Is(segment) ? segment with { Known = new(segment.Left, segment.SinceS, plant) } : segment;

    /// <param name="now">The same cut at now, and at its end if it has come there.</param>
    /// <returns>The plant cut at now with the flow that fits the reading; null when nothing runs off.</returns>
    public static LivePlant? Learned(LivePlant before, LivePlant now, Reading reading, double nowS)
    {
        if (reading.Kind != ReadingKind.Volume || reading.Vessel != before.Setting.Brewhouse.Kettle.Id || now.Running.Concat(now.Held).FirstOrDefault(Is) is not { } run)
            return null;
        var learned = now.Running.Contains(run) && StillRuns(run) ? Since(before, reading, nowS) : null;
        var level = KettleL(learned ?? now);
        if (reading.Value < level - (reading.StillRuns == true ? NearL : ReadingDesk.WideL(level)))
            learned = SinceKnown(now, run, reading, nowS) ?? learned;
        return learned?.Each(s => Known(s, learned.Plant));
    }

    /// <summary>From the last cut on.</summary>
    private static LivePlant? Since(LivePlant before, Reading reading, double nowS) =>
        before.Running.FirstOrDefault(Is) is { } segment && nowS - segment.SinceS >= 60 ? Fitting(before, reading, nowS).CutAt(nowS) : null;

    /// <summary>
    /// The wort that the plan had in the kettle cannot have run back: from where the run-off was last known on, at the flow that gives the
    /// level, or at the slowest until the level was there, and then not at all.
    /// </summary>
    private static LivePlant? SinceKnown(LivePlant now, Segment run, Reading reading, double nowS)
    {
        if (run.Known is not { } known || KettleL(now, known.Plant) > reading.Value)
            return null;
        var held = now.Held.Contains(run);
        var untilS = held ? run.SinceS : nowS;
        var from = now with
        {
            Plant = WithVessels(now, known),
            Running = now.Running.Remove(run).Add(run with { Left = known.Left, SinceS = known.SinceS, EndedS = null }),
            Held = now.Held.Remove(run),
        };
        var fits = Fitting(from, reading, untilS);
        var stood = fits.CutAt(KettleL(fits.CutAt(untilS)) <= reading.Value + NearL ? untilS : StoppedS(fits, known.SinceS, reading, untilS));
        var left = stood.Running.First(Is) with { SinceS = untilS };
        var others = stood.Running.RemoveAll(Is);
        return stood with
        {
            Plant = PlantModel.WaitUntil(stood.Setting, stood.Plant, nowS),
            Running = held ? others : others.Add(left),
            Held = held ? stood.Held.Add(left) : stood.Held,
        };
    }

    /// <summary>When the kettle had the level, s of the day.</summary>
    private static double StoppedS(LivePlant slow, double sinceS, Reading reading, double untilS)
    {
        double low = sinceS, high = untilS;
        for (var i = 0; i < Looks; i++)
        {
            var middle = 0.5 * (low + high);
            if (KettleL(slow.CutAt(middle)) > reading.Value)
                high = middle;
            else
                low = middle;
        }
        return low;
    }

    /// <summary>The same with the flow that brings the kettle to the level, or the nearest within reason.</summary>
    private static LivePlant Fitting(LivePlant before, Reading reading, double nowS)
    {
        double low = Slowest, high = Fastest;
        for (var i = 0; i < Looks; i++)
        {
            var middle = Math.Sqrt(low * high);
            if (KettleL(With(before, middle).CutAt(nowS)) > reading.Value)
                high = middle;
            else
                low = middle;
        }
        return With(before, Math.Sqrt(low * high));
    }

    private static PlantState WithVessels(LivePlant now, KnownRunOff known)
    {
        var vessels = now.Plant.Vessels.ToBuilder();
        foreach (var i in PlantModel.VesselsOf(now.Setting, known.Left))
            vessels[i] = known.Plant.Vessels[i];
        return now.Plant with { Vessels = vessels.ToImmutable() };
    }

    private static bool Is(Segment segment) => segment.Left.Kind.RunsOff();

    private static bool StillRuns(Segment run) => run is { EndedS: null, Left.VolumeL: not 0 };

    private static LivePlant With(LivePlant live, double factor)
    {
        // whatever is read how often, the flow stays within reason of what this bed usually does
        var (habits, usual) = (live.Setting.Habits, live.Setting.Brewhouse.Habits.RunoffLPerMin);
        var flow = Math.Clamp(factor * habits.RunoffLPerMin, Slowest * usual, Fastest * usual);
        return live with { Setting = live.Setting with { Habits = habits with { RunoffLPerMin = flow } } };
    }

    private static double KettleL(LivePlant live) => KettleL(live, live.Plant);

    private static double KettleL(LivePlant live, PlantState plant) =>
        Contents.StandsL(plant.Vessels[live.Setting.IndexOf(live.Setting.Brewhouse.Kettle.Id)]);
}
