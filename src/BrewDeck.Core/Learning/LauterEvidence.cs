using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using static BrewDeck.Core.Learning.InstrumentErrors;

namespace BrewDeck.Core.Learning;

/// <summary>What came off the tun against what went in: absorption, washing, runoff flow.</summary>
internal static class LauterEvidence
{
    public static IEnumerable<Evidence> Of(BatchTrace batch)
    {
        var steps = batch.Final.Done(s => s.Kind is StepKind.Lauter or StepKind.RunOff or StepKind.BatchSparge).ToList();
        var runs = steps.Where(s => s.Spec.Kind != StepKind.BatchSparge).ToList();
        var kettle = batch.Plan.Brewhouse.Kettle.Id;
        if (runs.Count == 0 || batch.AtStart(steps[0]) is not { } live || batch.Within(runs[^1], ReadingKind.Volume, kettle) is not { } read)
            return [];
        var spoilt = Spoiling.Of(batch.Final, [.. MashEvidence.Made(batch), .. steps]);
        return
        [
            .. new[] { Kept(batch, live, steps, read), Washing(batch, live, steps, runs[^1], read) }.SelectMany(e => e).Select(e => e with { LeftOut = spoilt }),
            .. Flow(batch, runs, kettle),
        ];
    }

    /// <summary>Litres at 20 °C that a kettle reading means.</summary>
    internal static double CoolL(TakenReading read, double plato, double vesselC) => read.Reading.Value
        * SugarSolution.DensityKgPerM3(plato, read.Reading.AtC ?? vesselC) / SugarSolution.DensityKgPerM3(plato, 20);

    private static IEnumerable<Evidence> Kept(BatchTrace batch, LivePlant live, List<RunStep> steps, TakenReading read)
    {
        var grain = live.Vessel(batch.Plan.Brewhouse.MashTun.Id).GrainKg;
        if (grain <= 0)
            yield break;
        var drained = Ran(live, steps.Select(s => s.Spec with { VolumeL = null }));
        var seen = CoolL(read, drained.Plato, drained.TempC);
        var target = steps[^1].Spec.VolumeL ?? double.PositiveInfinity;
        var noise = VolumeNoiseL / grain;
        var shared = Root(VolumeBias(seen), 0.1 * batch.Plan.Brewhouse.MashTun.DeadSpaceL) / grain;
        // a kettle that is a little short may have been filled to the mark or run dry: that it holds at least this much is all that such a reading says
        var mark = target - 2 * VolumeNoiseL;
        var full = seen > mark;
        var value = live.Setting.Habits.AbsorptionLPerKg + (Contents.CoolL(drained) - (full ? mark : seen)) / grain;
        yield return batch.Says(
            LessonParameters.Absorption, value, noise, shared,
            new DrivingReading("kettle_volume_l", read.Reading.Value), new DrivingReading("drained_would_be_l", Contents.CoolL(drained)), new DrivingReading("grist_kg", grain))
            with
        { IsUpperLimit = full };
    }

    /// <summary>Stages that would have brought as much extract into the kettle, along the slope of the model at the profile's own number.</summary>
    private static IEnumerable<Evidence> Washing(BatchTrace batch, LivePlant live, List<RunStep> steps, RunStep last, TakenReading read)
    {
        if (batch.Within(last, ReadingKind.Gravity, batch.Plan.Brewhouse.Kettle.Id) is not { } gravity)
            yield break;
        var plato = SugarSolution.PlatoFromSg(gravity.Reading.Value);
        var litres = CoolL(read, plato, 80);
        var seen = litres * SugarSolution.ExtractKgPerL(plato, 20);
        var stages = live.Setting.Habits.SpargeStages;
        live = AsRead(batch, live);
        double Extract(double s) => Ran(With(live, s), steps.Select(x => x.Spec with { VolumeL = x == last ? litres : x.Spec.VolumeL })).ExtractKg;
        double expected = Extract(stages), slope = (Extract(1.3 * stages) - expected) / (0.3 * stages);
        // a bed that is hardly washed says nothing about its stages
        if (slope < 0.01 * expected / stages)
            yield break;
        var noise = seen * Root(PlatoNoise / plato, VolumeNoiseL / litres, PlatoNoise / 17) / slope;
        yield return batch.Says(
            LessonParameters.SpargeStages, stages + (seen - expected) / slope, noise, seen * VolumeScaleFraction / slope,
            new DrivingReading("kettle_gravity_sg", gravity.Reading.Value), new DrivingReading("kettle_volume_l", read.Reading.Value), new DrivingReading("extract_expected_kg", expected));
    }

    /// <summary>The mash just as strong as it was read: what the day's own learning made of the reading must not enter twice.</summary>
    private static LivePlant AsRead(BatchTrace batch, LivePlant live)
    {
        var tun = live.Setting.IndexOf(batch.Plan.Brewhouse.MashTun.Id);
        if (batch.Final.LastDone(s => s.Kind == StepKind.Vorlauf) is not { } vorlauf
            || batch.Within(vorlauf, ReadingKind.Gravity, batch.Plan.Brewhouse.MashTun.Id) is not { } read)
            return live;
        var mash = Assimilate.Gravity(live.Plant.Vessels[tun], read.Reading.Value);
        return live with { Plant = live.Plant with { Vessels = live.Plant.Vessels.SetItem(tun, mash) } };
    }

    private static IEnumerable<Evidence> Flow(BatchTrace batch, List<RunStep> runs, string kettle)
    {
        double hot = 0, seconds = 0, before = 0;
        foreach (var run in runs)
        {
            if (batch.AtStart(run) is not { } live || batch.Within(run, ReadingKind.Volume, kettle) is not { } read)
                yield break;
            var tun = live.Vessel(run.Spec.Vessel);
            var cool = CoolL(read, tun.Plato, tun.TempC);
            hot += (cool - before) * SugarSolution.DensityKgPerM3(tun.Plato, 20) / SugarSolution.DensityKgPerM3(tun.Plato, tun.TempC);
            seconds += (read.AtMs - run.StartedMs!.Value) / 1000.0 - ReadingDelayS;
            before = cool;
        }
        if (seconds < 300 || hot < 5)
            yield break;
        var flow = 60 * hot / seconds;
        yield return batch.Says(
            LessonParameters.Runoff, flow, flow * Root(VolumeNoiseL / hot, DelayNoiseS / seconds), flow * Root(VolumeBias(hot) / hot, DelayBiasS / seconds),
            new DrivingReading("run_off_hot_l", hot), new DrivingReading("run_off_s", seconds))
            with
        { LeftOut = Spoiling.OfTimed(batch.Final, runs) ?? Late(batch, flow) };
    }

    private static Spoilt? Late(BatchTrace batch, double flow) => flow < Spoiling.LateFlow * batch.Plan.Brewhouse.Habits.RunoffLPerMin ? Spoilt.Late : null;

    /// <summary>The kettle after these steps as the model runs them.</summary>
    private static VesselState Ran(LivePlant live, IEnumerable<StepSpec> specs)
    {
        var plant = live.Plant;
        foreach (var spec in specs)
            plant = PlantModel.Run(live.Setting, spec, plant, plant.Vessels[live.Setting.IndexOf(spec.Vessel)].AtS, double.PositiveInfinity).State;
        return plant.Vessels[live.Setting.IndexOf(live.Setting.Brewhouse.Kettle.Id)];
    }

    private static LivePlant With(LivePlant live, double stages) =>
        live with { Setting = live.Setting with { Habits = live.Setting.Habits with { SpargeStages = stages } } };
}
