using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using static BrewDeck.Core.Learning.InstrumentErrors;

namespace BrewDeck.Core.Learning;

/// <summary>Heat-ups and unheated rests: what of the elements reaches the liquid, and what goes to the room.</summary>
internal static class HeatEvidence
{
    /// <summary>A shorter rise is lost in the noise of the thermometer.</summary>
    private const double SmallestRiseK = 8;

    private const double SmallestFallK = 0.5;

    private const double NearTargetK = 1;

    public static IEnumerable<Evidence> Of(BatchTrace batch) =>
    [
        .. batch.Final.Done(s => s.Kind is StepKind.HeatStrike or StepKind.HeatSparge or StepKind.Ramp or StepKind.HeatToBoil)
            .Select(s => HeatUp(batch, s)).OfType<Evidence>().GroupBy(e => (e.Parameter, e.LeftOut)).Select(Together),
        .. batch.Final.Done(s => s.Kind == StepKind.Rest).Select(s => Rest(batch, s)).OfType<Evidence>(),
    ];

    private static Evidence? HeatUp(BatchTrace batch, RunStep step)
    {
        var id = step.Spec.Vessel;
        if (batch.Plan.Brewhouse[id] is not { RatedW: > 0 } vessel || batch.AtStart(step) is not { } live
            || batch.Within(step, ReadingKind.Temperature, id) is not { } read)
            return null;
        var index = live.Setting.IndexOf(id);
        var start = live.Plant.Vessels[index];
        double end = read.Reading.Value, rise = end - start.TempC, seconds = (read.AtMs - step.StartedMs!.Value) / 1000.0 - ReadingDelayS;
        if (rise < SmallestRiseK || seconds < 120 || Contents.StandsL(start) < vessel.CoverL)
            return null;
        var wall = live.Setting.HeatCapacityJPerK(index);
        var stored = Contents.HeatAtJ(start, wall, end) - Contents.HeatJ(start, wall);
        var lost = live.Setting.LossWPerK(index) * (0.5 * (start.TempC + end) - live.Setting.AmbientC);
        var net = (stored / seconds + lost) / vessel.RatedW;
        // the thermostat throttles near its target, the wall and the loss are the profile's; a mash also warms its hoses
        var shared = Root(0.007, DelayBiasS / seconds, 0.15 * lost * seconds / stored, 0.08 * wall * rise / stored, start.GrainKg > 0 ? 0.025 : 0);
        return batch.Says(
            LessonParameters.Net + id, net, net * Root(StartK(batch, step) / rise, DelayNoiseS / seconds), net * shared,
            new DrivingReading("start_c", start.TempC), new DrivingReading("end_c", end), new DrivingReading("heat_up_s", seconds))
            with
        { LeftOut = Spoiling.OfTimed(batch.Final, step) ?? Unfed(live, index, vessel) ?? Late(step, vessel, end, net) };
    }

    private static Spoilt? Unfed(LivePlant live, int index, Vessel vessel) =>
        live.Setting.Wiring.Leads[index].Sum(l => l.Element.PowerW) < vessel.Elements.Sum(e => e.PowerW) - 1 ? Spoilt.WithoutPower : null;

    /// <summary>It has stood at its target for nobody knows how long; a reading on the way there is in time, however slow it was.</summary>
    private static Spoilt? Late(RunStep step, Vessel vessel, double endC, double net) =>
        endC > (step.Spec.TargetC ?? endC) - NearTargetK && !vessel.Elements.IsEmpty && net < Spoiling.LateHeat * LessonParameters.NetFraction(vessel) ? Spoilt.Late : null;

    /// <summary>How well the start is known: read in the same vessel a little before, or only reckoned.</summary>
    private static double StartK(BatchTrace batch, RunStep step) => batch.Final.Readings.Any(r =>
        r.Reading.Is(ReadingKind.Temperature, step.Spec.Vessel) && r.AtMs <= step.StartedMs && r.AtMs > step.StartedMs - 600_000)
        ? Math.Sqrt(2) * TemperatureNoiseK
        : StartTemperatureK;

    /// <summary>Heat-ups of one day share the day's mains: they speak with one voice.</summary>
    private static Evidence Together(IGrouping<(string, Spoilt?), Evidence> same)
    {
        var weight = same.Sum(e => 1 / Squared(e.Sd));
        return same.First() with
        {
            Value = same.Sum(e => e.Value / Squared(e.Sd)) / weight,
            Sd = 1 / Math.Sqrt(weight),
            Readings = [.. same.SelectMany(e => e.Readings)],
        };
    }

    /// <summary>A rest without heat: from the temperature before it to the one at its end.</summary>
    private static Evidence? Rest(BatchTrace batch, RunStep step)
    {
        var id = step.Spec.Vessel;
        if (batch.AtStart(step) is not { } live || batch.Within(step, ReadingKind.Temperature, id) is not { } after)
            return null;
        var index = live.Setting.IndexOf(id);
        var heated = live.Setting.Habits.MashHeating switch
        {
            MashHeating.HotWater => false,
            MashHeating.Coil => true,
            _ => live.Setting.Brewhouse.Vessels[index].RatedW > 0,
        };
        var before = batch.Final.Readings.LastOrDefault(r => r.Reading.Is(ReadingKind.Temperature, id) && r.AtMs <= step.StartedMs);
        if (heated || before is null)
            return null;
        double from = before.Reading.Value - live.Setting.AmbientC, to = after.Reading.Value - live.Setting.AmbientC, seconds = (after.AtMs - before.AtMs) / 1000.0;
        if (to <= 1 || from - to < SmallestFallK || seconds < 600)
            return null;
        var mash = live.Plant.Vessels[index];
        var capacity = Contents.CapacityJPerK(mash, live.Setting.HeatCapacityJPerK(index), mash.TempC);
        var loss = capacity * Math.Log(from / to) / seconds;
        return batch.Says(
            LessonParameters.HeatLoss + id, loss, loss * Math.Sqrt(2) * TemperatureNoiseK / (from - to), 0.03 * loss,
            new DrivingReading("start_c", before.Reading.Value), new DrivingReading("end_c", after.Reading.Value), new DrivingReading("rest_s", seconds))
            with
        { LeftOut = Spoiling.OfTimed(batch.Final, step) };
    }
}
