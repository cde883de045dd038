using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>What readings and times teach: the members move, and the live plant with their mean.</summary>
internal static class DayLearning
{
    /// <summary>A run-off with no more than this to go is at its end when its level is read there: it ran faster; share of its length.</summary>
    private const double NearEnd = 0.3;

    /// <summary>With more in it no member's vessel is empty; spares a look at all of them, litres.</summary>
    private const double NearEmptyL = 5;

    /// <summary>With so little to go a run-off is at its end, and its level says nothing of its flow; s.</summary>
    private const double AtEndS = 1;

    /// <summary>Someone who ends a step this much later than expected was away; share of its length.</summary>
    private const double Away = 0.3;

    /// <summary>How far the time of a heat-up or a flow is off beside all stated spreads; share of its length, common practice, no source.</summary>
    private const double TimeModel = 0.02;

    /// <summary>How well the moment is known from which a heat-up or a flow starts; s, common practice, no source.</summary>
    private const double TimeStartS = 20;

    /// <summary>What a reading would show for the mean member.</summary>
    private static double Expected(LivePlant live, Reading reading)
    {
        var shows = Of(live, reading);
        for (var j = 0; j < live.Belief.Sources.Length; j++)
        {
            if (live.Belief.Sources[j].OnReading is { } on)
                shows += live.Belief.Sources[j].Sd * live.Belief.Mean[j] * on(reading.Kind, reading.Vessel, shows);
        }
        return shows;
    }

    /// <summary>The prediction that a reading is held against: one that shows just this moves nothing.</summary>
    /// <param name="live">Cut at <paramref name="nowS"/>.</param>
    public static double Predicted(RunState state, LivePlant live, Reading reading, double nowS)
    {
        var expected = Expected(live, reading);
        return expected + live.Belief.Beside(RowOf(new DayPlace(state, live, nowS), live, reading, expected));
    }

    /// <summary>Whether a reading tells something about the sources; others are taken as they are.</summary>
    public static bool Takes(LivePlant live, Reading reading) => live.Setting.IndexOf(reading.Vessel) is >= 0 and var vessel
        && live.Plant.Vessels[vessel].LiquidKg > 0
        && (reading.Kind is ReadingKind.Volume or ReadingKind.Gravity
            || (reading.Kind == ReadingKind.Temperature && vessel == live.Setting.FermenterIndex));

    /// <summary>
    /// In the first seconds of a run-off the members' mean lies beside the mean member and may fall below an empty kettle: that predicts nothing.
    /// </summary>
    /// <param name="live">Cut at <paramref name="nowS"/>.</param>
    public static bool IsBelowNothing(RunState state, LivePlant live, Reading reading, double nowS) => reading.Kind == ReadingKind.Volume
        && Of(live, reading) < NearEmptyL && Predicted(state, live, reading, nowS) < 0;

    /// <summary>The plant after a reading; null: a surprise that no stated spread explains.</summary>
    /// <param name="live">Cut at <paramref name="nowS"/>.</param>
    public static LivePlant? From(RunState state, LivePlant live, Reading reading, double nowS)
    {
        var place = new DayPlace(state, live, nowS);
        var expected = Expected(live, reading);
        var row = RowOf(place, live, reading, expected);
        var error = ReadingErrors.SdOf(reading.Kind, reading.Vessel, expected);
        return live.Belief.After(row, reading.Value - expected, error) is { } after ? Moved(state, live, after, nowS, place) : null;
    }

    private static Row RowOf(DayPlace place, LivePlant live, Reading reading, double expected) => WithInstrument(
        live.Belief, reading, expected, place.Of(live.Setting.IndexOf(reading.Vessel), v => Shown(reading, v)));

    /// <summary>What the time teaches that a heat-up, a run-off or a cast-out took.</summary>
    /// <param name="lateS">Seconds by which it ended later than expected.</param>
    public static LivePlant FromTime(RunState state, LivePlant live, StepSpec spec, double lastedS, double lateS, double nowS)
    {
        var index = live.Belief.Response.IndexOf(spec.Id);
        if (index < 0)
            return live;
        var step = live.Belief.Response.Plan.Steps[index];
        // a remedy does it otherwise or elsewhere: nothing of what was planned tells how long that takes
        if (step.Spec.Kind != spec.Kind || step.Spec.Vessel != spec.Vessel)
            return live;
        var readings = state.Readings.Count(r => state.SecondsAt(r.AtMs) > nowS - lateS);
        var off = lateS - readings * UsualPace.MeanMeasureS - UsualPace.MeanNoticeS;
        if (Math.Abs(off) > Away * step.DurationS)
            return live;
        var error = Math.Sqrt(Pace.AfterVariance(readings) + TimeStartS * TimeStartS + TimeModel * lastedS * TimeModel * lastedS);
        var after = live.Belief.AfterWidened(live.Belief.Response.Row(day => day[index].DurationS), off, error);
        return Moved(state, live, after, nowS, new DayPlace(state, live, nowS));
    }

    /// <summary>
    /// A level read at the end of a run-off is that of its end; the plant is taken there, with nothing left to run. It must be nearer to
    /// that than to anything the plant as it stands would predict, unless the end is there anyway.
    /// </summary>
    public static LivePlant AtEndOfRunOff(RunState state, LivePlant live, Reading reading, double nowS)
    {
        var segment = live.Running.FirstOrDefault(s => s.Left.Kind.RunsOff() && s.Left.To == reading.Vessel);
        if (segment is null || segment.EndedS is not null || reading.Kind != ReadingKind.Volume)
            return live;
        var end = PlantModel.Run(live.Setting, segment.Left, live.Plant, nowS, double.PositiveInfinity);
        if (end.DurationS > NearEnd * PlannedS(live, segment))
            return live;
        var ended = live with { Plant = PlantModel.WaitUntil(live.Setting, AtNow(live, end, nowS), nowS) };
        var atItsEnd = Expected(ended, reading);
        // far below its end a bed has been slow or stuck, whatever the clock says
        if (reading.Value < atItsEnd - ReadingDesk.WideL(atItsEnd))
            return live;
        double Off(double predicted) => Math.Abs(predicted - reading.Value);
        var asItStands = Math.Min(Off(Expected(live, reading)), Off(Predicted(state, live, reading, nowS)));
        if (end.DurationS > AtEndS && Off(atItsEnd) > asItStands)
            return live;
        var spent = segment.Left with { SpargeL = segment.Left.SpargeL is null ? null : 0, VolumeL = 0 };
        return ended with { Running = live.Running.Replace(segment, segment with { Left = spent }) };
    }

    private static double PlannedS(LivePlant live, Segment segment) =>
        live.Belief.Response.IndexOf(segment.Left.Id) is >= 0 and var i ? live.Belief.Response.Plan.Steps[i].DurationS : 0;

    private static PlantState AtNow(LivePlant live, StepOutcome end, double nowS)
    {
        var vessels = end.State.Vessels.ToBuilder();
        for (var i = 0; i < vessels.Count; i++)
            vessels[i] = vessels[i] with { AtS = Math.Min(vessels[i].AtS, nowS) };
        return end.State with { Vessels = vessels.ToImmutable() };
    }

    private static LivePlant Moved(RunState state, LivePlant live, Belief after, double nowS, DayPlace place)
    {
        var vessels = live.Plant.Vessels.ToBuilder();
        for (var i = 0; i < vessels.Count; i++)
            vessels[i] = MovedVessel(vessels[i], live.Belief, after, of => place.Of(i, of));
        return live with
        {
            Belief = after,
            Setting = MovedSetting(live.Setting, live.Belief, after),
            Plant = live.Plant with { Vessels = vessels.ToImmutable() },
            PreBoil = Milestone(live.PreBoil, live, after, s => s.Kind.FillsKettle()),
            PostBoil = Milestone(live.PostBoil, live, after, s => s.Kind == StepKind.Boil),
        };
    }

    private static VesselState? Milestone(VesselState? was, LivePlant live, Belief after, Func<StepSpec, bool> wanted)
    {
        if (was is not { } v)
            return null;
        var kettle = after.Response.Setting.IndexOf(after.Response.Setting.Brewhouse.Kettle.Id);
        var steps = after.Response.Plan.Steps;
        var last = steps.Length - 1;
        while (last >= 0 && !wanted(steps[last].Spec))
            last--;
        // a kit whose kettle fills by mashing in it has no such step ahead of it: nothing tells of it then
        return last < 0 ? v : MovedVessel(v, live.Belief, after, of => after.Response.Row(day => of(day[last].After.Vessels[kettle])));
    }

    private static VesselState MovedVessel(in VesselState v, Belief before, Belief after, Func<Func<VesselState, double>, Row> row)
    {
        if (v.LiquidKg <= 0)
            return v;
        double By(Func<VesselState, double> of) => after.Moved(row(of), before);
        return v with
        {
            WaterKg = Math.Max(0, v.WaterKg + By(x => x.WaterKg)),
            ExtractKg = Math.Max(0, v.ExtractKg + By(x => x.ExtractKg)),
            GrainDryKg = Math.Max(0, v.GrainDryKg + By(x => x.GrainDryKg)),
            UndissolvedKg = Math.Max(0, v.UndissolvedKg + By(x => x.UndissolvedKg)),
        };
    }

    private static PlantSetting MovedSetting(PlantSetting setting, Belief before, Belief after)
    {
        for (var j = 0; j < after.Sources.Length; j++)
        {
            var most = after.Sources[j].Most;
            var by = after.Sources[j].Sd * (Math.Min(after.Mean[j], most) - Math.Min(before.Mean[j], most));
            if (by != 0 && after.Sources[j].OnPlant is { } on)
                setting = on(setting, by);
        }
        return setting;
    }

    private static Row WithInstrument(Belief belief, Reading reading, double expected, Row row)
    {
        double[] atMark = [.. row.AtMark.Slope], dry = [.. row.Dry.Slope];
        for (var j = 0; j < atMark.Length; j++)
        {
            var adds = belief.Sources[j].Sd * (belief.Sources[j].OnReading?.Invoke(reading.Kind, reading.Vessel, expected) ?? 0);
            (atMark[j], dry[j]) = (atMark[j] + adds, dry[j] + adds);
        }
        return new(row.AtMark with { Slope = atMark }, row.Dry with { Slope = dry });
    }

    private static double Of(LivePlant live, Reading reading) =>
        Shown(reading, live.Vessel(reading.Vessel));

    private static double Shown(Reading reading, VesselState v) => reading.Kind switch
    {
        ReadingKind.Temperature => v.TempC,
        ReadingKind.Volume => Contents.StandsL(v with { TempC = reading.AtC ?? v.TempC }),
        _ => SugarSolution.SgFromPlato(v.Plato),
    };
}
