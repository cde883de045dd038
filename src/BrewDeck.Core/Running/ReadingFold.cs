using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Ensemble;

namespace BrewDeck.Core.Running;

/// <summary>What a reading does: the model's plant is moved to it, and what it teaches about the brewhouse is kept for the rest of the day.</summary>
internal static class ReadingFold
{
    private static readonly Remembered<RunState, Lesson> _known = new();

    public static RunState Taken(RunState state, ReadingTaken e, int seq)
    {
        if (!state.Live!.Learns)
            return Written(state, e, seq, e.Expected ?? double.NaN);
        // whoever decides on a reading has folded it to tell what it moves
        var lesson = _known.Of(state, new Asked(e.AtMs, e.Reading), () => Learned(state, e.Reading, state.SecondsAt(e.AtMs)));
        return Written(lesson.Told, e, seq, e.Expected ?? lesson.Expected(state, e.Reading, state.SecondsAt(e.AtMs)));
    }

    private static RunState Written(RunState state, ReadingTaken e, int seq, double expected) =>
        state with { Readings = state.Readings.Add(new(seq, e.AtMs, StepAt(state, e.Reading.Vessel), e.Reading, expected, e.Moved)) };

    private static Lesson Learned(RunState state, Reading reading, double now)
    {
        var cut = state.Live!.CutAt(now);
        var live = reading.StillRuns == true ? cut : DayLearning.AtEndOfRunOff(state, cut, reading, now);
        var flow = Runoff.Learned(state.Live!, live, reading, now) ?? StrikeLevel.Learned(state, live, reading);
        var takes = flow is null && DayLearning.Takes(live, reading) && !DayLearning.IsBelowNothing(state, live, reading, now);
        var after = flow
            ?? (takes ? Felt(DayLearning.From(state, live, reading, now), reading) : null)
            ?? Applied(live with { Setting = SlowHeat.Learned(state, live, reading, now) }, reading, Boiling(state), Fills(state, reading.Vessel));
        return new(live, takes, Filling.Told(state with { Live = after }, live, reading));
    }

    /// <summary>A temperature teaches the bands, and is believed besides: of chilled wort, held by a hand on a valve, a thermometer knows more than the model.</summary>
    private static LivePlant? Felt(LivePlant? learned, Reading reading) =>
        learned is null || reading.Kind != ReadingKind.Temperature ? learned : Applied(learned, reading, boiling: false);

    /// <summary>Water runs in, or has just been: what is more of it came from the source.</summary>
    private static bool Fills(RunState state, string vessel) => Filling.In(state, vessel) is { Status: not RunStatus.Idle };

    private static bool Boiling(RunState state) => state.Steps.Any(s => s.Spec.Kind is StepKind.HotBreak && s.StartedMs is not null);

    /// <summary>What goes on in the vessel that was read; what is of no vessel belongs to what goes on at all.</summary>
    private static string StepAt(RunState state, string vessel)
    {
        var running = state.Steps.Where(s => s.Status == RunStatus.Running).ToList();
        return (running.LastOrDefault(s => s.Spec.Vessel == vessel || s.Spec.To == vessel) ?? running.LastOrDefault())?.Spec.Id ?? "";
    }

    /// <summary>A reading that no stated spread explains, or of what is not uncertain, is simply believed.</summary>
    private static LivePlant Applied(LivePlant live, Reading reading, bool boiling, bool fills = false)
    {
        var index = live.Setting.IndexOf(reading.Vessel);
        if (index < 0)
            return live with { Setting = Around(live.Setting, reading) };
        var inKettle = index == live.Setting.IndexOf(live.Setting.Brewhouse.Kettle.Id);
        var before = live.Plant.Vessels[index];
        var after = reading.Kind switch
        {
            ReadingKind.Temperature => before with { TempC = reading.Value },
            ReadingKind.Volume when fills && reading.Value > Contents.StandsL(before) => Assimilate.Filled(before, reading, live.Setting.HeatCapacityJPerK(index), live.Setting.SourceWaterC),
            ReadingKind.Volume => Assimilate.Volume(before, reading, waterOnly: inKettle && boiling && live.Plant.KnockedOutL == 0),
            ReadingKind.Gravity => Assimilate.Gravity(before, reading.Value),
            _ => before,
        };
        live = live with { Plant = live.Plant with { Vessels = live.Plant.Vessels.SetItem(index, after) } };
        return inKettle ? Milestones.Corrected(live, boiling) : live;
    }

    private static PlantSetting Around(PlantSetting setting, Reading reading) => (reading.Kind, reading.Vessel) switch
    {
        (ReadingKind.Temperature, Places.Grain) => setting with { GrainC = reading.Value },
        (ReadingKind.Temperature, Places.Source) => setting with { SourceWaterC = reading.Value },
        (ReadingKind.Temperature, Places.Room) => setting with { AmbientC = reading.Value },
        _ => setting,
    };

    private sealed record Asked(long AtMs, Reading Reading);

    /// <param name="Live">Before the reading, cut at it.</param>
    /// <param name="Takes">It tells something about the sources.</param>
    /// <param name="Told">The state with what it taught, the reading itself not yet written.</param>
    private sealed record Lesson(LivePlant Live, bool Takes, RunState Told)
    {
        public double Expected(RunState state, Reading reading, double now) => Takes
            ? DayLearning.Predicted(state, Live, reading, now)
            : Expectations.Of(Live.Setting, Live.Plant, reading.Kind, reading.Vessel);
    }
}

/// <summary>A vessel as a reading says it is.</summary>
internal static class Assimilate
{
    /// <param name="waterOnly">In and after the boil a wrong volume is water gone or not gone; before, it is wort of the same strength.</param>
    public static VesselState Volume(in VesselState v, Reading reading, bool waterOnly)
    {
        var celsius = reading.AtC ?? v.TempC;
        var litres = Math.Max(0, reading.Value - Contents.GrainLPerKg * v.GrainDryKg);
        if (!waterOnly)
        {
            var kg = litres * SugarSolution.DensityKgPerM3(v.Plato, celsius) / 1000;
            return v with { WaterKg = kg * (1 - v.Plato / 100), ExtractKg = kg * v.Plato / 100 };
        }
        var water = v.WaterKg;
        for (var i = 0; i < 20; i++)
        {
            var trial = v with { WaterKg = water, TempC = celsius };
            var miss = litres - Contents.LiquidL(trial);
            water = Math.Max(0.01, water + miss * Water.DensityKgPerM3(celsius) / 1000);
        }
        return v with { WaterKg = water };
    }

    /// <summary>More than was reckoned has run in, as cold as it comes.</summary>
    public static VesselState Filled(in VesselState v, Reading reading, double wallJPerK, double sourceC)
    {
        var missingL = reading.Value - Contents.StandsL(reading.AtC is { } c ? v with { TempC = c } : v);
        return Contents.Add(v, wallJPerK, Math.Max(0, missingL) * Water.DensityKgPerM3(sourceC) / 1000, 0, sourceC);
    }

    /// <summary>The same litres at another strength; in the mash what has dissolved more is no longer to dissolve.</summary>
    public static VesselState Gravity(in VesselState v, double sg)
    {
        // below water there is no wort, only an instrument that reads a little low
        var plato = Math.Max(0, SugarSolution.PlatoFromSg(sg));
        if (v.GrainDryKg > 0)
        {
            var extract = v.WaterKg * plato / (100 - plato);
            var more = extract - v.ExtractKg;
            // what is missing is late while much is still to dissolve, and will not come once nearly all should have
            var late = more > 0 ? more : more * v.UndissolvedKg / (v.UndissolvedKg + v.ExtractKg);
            return v with
            {
                ExtractKg = extract,
                GrainDryKg = Math.Max(0, v.GrainDryKg - more),
                UndissolvedKg = Math.Max(0, v.UndissolvedKg - late),
            };
        }
        var kg = Contents.LiquidL(v) * SugarSolution.DensityKgPerM3(plato, v.TempC) / 1000;
        return v with { WaterKg = kg * (1 - plato / 100), ExtractKg = kg * plato / 100 };
    }
}
