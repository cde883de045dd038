using System.Collections.Immutable;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>The rest of the day from a state and a moment: the model that drew the plan, folded over what is left.</summary>
public static class Forecasts
{
    private static readonly Remembered<LivePlant, Forecast> _known = new();

    /// <param name="nowMs">Unix ms.</param>
    public static Forecast At(RunState state, long nowMs) => state is { Live: { } live, Plan: not null }
        ? _known.Of(live, new Asked(nowMs, state.Status, state.Steps, state.Readings.Length), () => Reckoned(state, live, nowMs))
        : throw new InvalidOperationException("the batch has not been opened");

    private static Forecast Reckoned(RunState state, LivePlant from, long nowMs)
    {
        var now = state.SecondsAt(nowMs);
        var live = state.DayStartMs is null ? from : from.CutAt(now);
        // a remedy is for now: it does not wait until what runs in its vessel is over
        var atOnce = state.Steps.Where(s => StepOrder.CutsIn(s.Spec) && StepOrder.CanStart(state, s)).ToList();
        var waiting = state.Steps.Where(s => s.Status == RunStatus.Idle).Except(atOnce);
        var going = DayFold.Over(live.Setting, atOnce.Select(s => s.Spec), Free(live.Plant, now), now);
        going = going.AddRange(Running(state, live, After(going, live, now), now));
        var switches = HeatSwitch.Ahead(state, live.Setting, live.Plant, going, now);
        return new(
            live.Plant,
            going,
            () => DayFold.Over(live.Setting, waiting.Select(s => s.Spec), After(going, live, now), now, going),
            rest => OutlookOf(state, live, rest, nowMs),
            rest => HandsNeededS(state, rest, switches, now))
        {
            Switches = switches,
        };
    }

    private static PlantState After(ImmutableArray<PlanStep> steps, LivePlant live, double now) =>
        steps.IsEmpty ? Free(live.Plant, now) : steps[^1].After;

    /// <summary>Running and held steps to their ends, each from now on.</summary>
    private static ImmutableArray<PlanStep> Running(RunState state, LivePlant live, PlantState plant, double now)
    {
        var steps = ImmutableArray.CreateBuilder<PlanStep>();
        foreach (var spec in live.Running.Concat(live.Held).Select(s => s.Left))
        {
            var left = spec with { HandsS = HandsLeftS(state, spec, now) };
            var outcome = PlantModel.After(live.Setting, left, plant with { HandsFreeS = now }, now);
            var step = DayFold.Step(live.Setting, left, plant, outcome);
            plant = outcome.State with { HandsFreeS = Math.Max(plant.HandsFreeS, outcome.State.HandsFreeS) };
            steps.Add(step with { After = plant });
        }
        return steps.ToImmutable();
    }

    private static double HandsLeftS(RunState state, StepSpec spec, double now)
    {
        var started = state.Step(spec.Id)?.StartedMs is { } ms ? state.SecondsAt(ms) : now;
        return Math.Max(0, spec.HandsS - (now - started));
    }

    private static PlantState Free(PlantState plant, double now) =>
        plant with { HandsFreeS = now, CircuitFreeS = [.. plant.CircuitFreeS.Select(_ => now)] };

    /// <summary>The next moment at which a key or a hand is wanted: a step ends, one begins that the hands must start, or heat is switched.</summary>
    private static double? HandsNeededS(RunState state, ImmutableArray<PlanStep> rest, ImmutableArray<HeatSwitch> switches, double now)
    {
        double? first = switches is [var next, ..] ? next.AtS : null;
        foreach (var step in rest)
        {
            if (state.Step(step.Spec.Id) is { } run && RestReadings.HalfTimeMs(state, run) is { } half && state.SecondsAt(half) > now)
                first = first is { } sooner ? Math.Min(sooner, state.SecondsAt(half)) : state.SecondsAt(half);
            var idle = state.Step(step.Spec.Id)?.Status == RunStatus.Idle;
            if (idle && step.Spec.HandsS <= 0)
                continue;
            var at = idle ? step.StartS : step.Spec.Kind.EndsBy() == EndsBy.Hands ? now : step.EndS;
            first = first is { } earlier ? Math.Min(earlier, at) : at;
        }
        return first;
    }

    private static Outlook OutlookOf(RunState state, LivePlant live, ImmutableArray<PlanStep> rest, long nowMs)
    {
        var setting = live.Setting;
        var end = rest.IsEmpty ? live.Plant : rest[^1].After;
        var kettle = setting.IndexOf(setting.Brewhouse.Kettle.Id);
        var full = live.PreBoil ?? LastAfter(rest, s => s.Kind.FillsKettle(), kettle) ?? live.Plant.Vessels[kettle];
        var boiled = live.PostBoil ?? LastAfter(rest, s => s.Kind == StepKind.Boil, kettle) ?? live.Plant.Vessels[kettle];
        var fermenter = end.Vessels[setting.FermenterIndex];
        var finish = rest.IsEmpty ? state.SecondsAt(state.OverMs ?? nowMs) : rest.Max(s => s.EndS);
        var bands = live.Belief.Bands(LastBegun(state));
        return new(
            bands.PreBoilL.Around(Contents.CoolL(full)),
            bands.PreBoilGravitySg.Around(Sg(full)),
            bands.PostBoilL.Around(Contents.CoolL(boiled)),
            bands.FermenterL.Around(Contents.CoolL(fermenter)),
            bands.OriginalGravitySg.Around(Sg(fermenter)),
            bands.BitternessIbu.Around(WortFigures.BitternessIbu(setting, end)),
            bands.ColourEbc.Around(WortFigures.ColourEbc(setting, end)),
            bands.PitchC.Around(fermenter.TempC),
            bands.FinishMs.Around(state.MsAt(finish, nowMs)));
    }

    /// <summary>The step of the plan that was begun last of those that run or are on hold, or else the next one; empty when the day is over.</summary>
    internal static string LastBegun(RunState state)
    {
        var planned = state.Plan!.Steps.Select(s => s.Spec.Id).ToHashSet();
        var open = state.Steps.Where(s => s.Open && planned.Contains(s.Spec.Id)).ToList();
        var begun = open.Where(s => s.Status != RunStatus.Idle).MaxBy(s => s.StartedMs);
        return (begun ?? open.FirstOrDefault())?.Spec.Id ?? "";
    }

    private static VesselState? LastAfter(ImmutableArray<PlanStep> rest, Func<StepSpec, bool> wanted, int vessel) =>
        rest.LastOrDefault(s => wanted(s.Spec)) is { } step ? step.After.Vessels[vessel] : null;

    private static double Sg(in VesselState v) => SugarSolution.SgFromPlato(v.Plato);

    /// <summary>All that a forecast goes by besides the plant. Of readings their number will do: another reading makes another plant.</summary>
    private sealed record Asked(long NowMs, RunStatus Status, ImmutableArray<RunStep> Steps, int Readings);
}
