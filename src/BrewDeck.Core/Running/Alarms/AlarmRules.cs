using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Alarms;

/// <summary>
/// What is abnormal at a moment. Few on purpose: only what the brewer can and must act on. What is merely due is no alarm until it
/// has waited (common practice for the delays), and what stands stays until it is clearly over, so that nothing chatters.
/// </summary>
public static class AlarmRules
{
    /// <summary>Share of a circuit's current that an instrument's error may add.</summary>
    private const double CircuitSlack = 1.02;

    private const double FullSlackL = 0.5, FullClearL = 0.5;
    private const double MashOffK = 1.5, MashClearK = 0.7;
    private const double BoilMin = 2, HeatMin = 2, AdditionMin = 1, HandsMin = 5, ReachedMin = 15, HeldMin = 10;

    public static IReadOnlyList<Alarm> At(RunState state, Forecast forecast, RunFocus focus, long nowMs) =>
        state.Plan is null || state.DayStartMs is null || state.Status is RunStatus.Complete or RunStatus.Aborted
            ? []
            : [
                .. Circuits(state, forecast), .. Vessels(state, forecast), .. Limits(state, forecast), .. Mash(state, forecast, nowMs),
                .. Waiting(state, focus, nowMs), .. Held(state, nowMs),
            ];

    private static IEnumerable<Alarm> Circuits(RunState state, Forecast forecast)
    {
        var setting = state.Setting();
        foreach (var (circuit, watts) in setting.Circuits.Zip(CircuitLoads.OfW(state, forecast, setting)))
        {
            var amps = watts / circuit.Volts;
            if (amps > circuit.Amps * CircuitSlack)
                yield return new(AlarmKind.CircuitOverloaded, circuit.Id, amps, circuit.Amps);
        }
    }

    /// <summary>As it stands: another vessel may have taken the kettle's place.</summary>
    private static Brewhouse House(RunState state) => state.Live?.Setting.Brewhouse ?? state.Plan!.Brewhouse;

    private static IEnumerable<Alarm> Vessels(RunState state, Forecast forecast)
    {
        var vessels = House(state).Vessels;
        for (var i = 0; i < vessels.Length; i++)
        {
            var (vessel, now) = (vessels[i], forecast.Now.Vessels[i]);
            var litres = Contents.StandsL(now);
            if (litres > vessel.WorkingL + (Stands(state, AlarmKind.VesselTooFull, vessel.Id) ? -FullClearL : FullSlackL))
                yield return new(AlarmKind.VesselTooFull, vessel.Id, litres, vessel.WorkingL);
            if (HeatsDry(state, forecast, vessel))
                yield return new(AlarmKind.ElementsDry, vessel.Id, litres, vessel.CoverL);
        }
    }

    /// <summary>
    /// Limits that the rest of the day is going to break. What the plan itself said would not hold is no news, and where the vessel is
    /// too full already that alarm says it.
    /// </summary>
    private static IEnumerable<Alarm> Limits(RunState state, Forecast forecast) =>
        from limit in LiveLimits.Of(state, forecast)
        where -limit.Margin > (Stands(state, AlarmKind.LimitAhead, limit.Name) ? 0 : LiveLimits.Slack(limit))
            && !state.Plan!.Limits.Any(l => l.Name == limit.Name && !l.Ok)
            && !IsTooFull(state, forecast, limit)
        select new Alarm(AlarmKind.LimitAhead, limit.Name, limit.Value, limit.Bound, limit);

    private static bool IsTooFull(RunState state, Forecast forecast, Limit limit)
    {
        var house = House(state);
        var vessel = limit.Name switch
        {
            LimitName.LiquorInTank => house.HotLiquorTank,
            LimitName.MashInTun => house.MashTun,
            LimitName.MashInLauterTun => house.LauterTun,
            LimitName.WortInKettle => house.Kettle,
            LimitName.WortInWhirlpool => house.Whirlpool,
            _ => null,
        };
        return vessel is not null && Contents.StandsL(forecast.Now.Vessels[house.Vessels.IndexOf(vessel)]) > limit.Bound;
    }

    /// <summary>Its heat may well be on though its elements are not covered: whatever the reckoning waits for.</summary>
    public static bool HeatsDry(RunState state, Forecast forecast, Vessel vessel) =>
        House(state).Vessels.ToList().FindIndex(v => v.Id == vessel.Id) is >= 0 and var at && Contents.StandsL(forecast.Now.Vessels[at]) < vessel.CoverL && (Heats(state, forecast, vessel) || WasCovered(state, vessel));

    /// <summary>A step that is there to heat the vessel runs. A lauter waits for its kettle by itself, and a mash may be heated from elsewhere.</summary>
    private static bool Heats(RunState state, Forecast forecast, Vessel vessel) => Running(state, forecast).Any(s =>
        s.PowerW is > 0 && s.Spec.Vessel == vessel.Id && s.Spec.Kind.Heats() && s.Spec.Kind is not (StepKind.Lauter or StepKind.RunOff or StepKind.Ramp or StepKind.HeatMash));

    /// <summary>A level read in a run-off shows elements that were reckoned to be covered: hands have switched their heat on, or not yet off.</summary>
    private static bool WasCovered(RunState state, Vessel vessel) => vessel.IsHeated
        && state.Steps.FirstOrDefault(s => s.Status == RunStatus.Running && s.Spec.Kind.RunsOff()) is { } run
        && (run.Spec.To == vessel.Id || (run.Spec.SpargeL > 0 && House(state).HotLiquorTank == vessel))
        && state.Readings.LastOrDefault(r => r.Reading.Is(ReadingKind.Volume, vessel.Id) && r.AtMs >= run.StartedMs) is { } read
        && read.Reading.Value < vessel.CoverL && read.Expected >= vessel.CoverL;

    /// <summary>
    /// A mash that cools as the plan says it will is not off, nor is one that its own heat has brought back meanwhile; what stands as an alarm is
    /// also what the remedies look for.
    /// </summary>
    private static IEnumerable<Alarm> Mash(RunState state, Forecast forecast, long nowMs)
    {
        var rest = state.Steps.FirstOrDefault(s => s is { Status: RunStatus.Running, Spec.Kind: StepKind.Rest });
        if (rest?.Spec.TargetC is not { } target || RestReadings.Last(state, rest, ReadingKind.Temperature) is not { } read
            || state.Remedies.Any(r => r.AtMs >= read.AtMs))
            yield break;
        var counted = forecast.Now.Vessels[state.Live!.Setting.IndexOf(rest.Spec.Vessel)].TempC;
        if (Math.Abs(RestReadings.OffK(state, rest, counted, target, nowMs)) < MashClearK)
            yield break;
        var celsius = read.Reading.Value;
        var off = Math.Abs(RestReadings.OffK(state, rest, celsius, target, read.AtMs));
        if (off > (Stands(state, AlarmKind.MashOff, rest.Spec.Id) ? MashClearK : MashOffK))
            yield return new(AlarmKind.MashOff, rest.Spec.Id, celsius, target);
    }

    private static IEnumerable<Alarm> Waiting(RunState state, RunFocus focus, long nowMs)
    {
        var minutes = (nowMs - focus.DueMs) / 60_000.0;
        if (state.Step(focus.StepId) is not { } step || Late(focus.Act, step.Spec.Kind) is not { } late || minutes < late.Minutes)
            yield break;
        yield return new(late.Kind, focus.StepId, minutes, 0);
    }

    /// <summary>What waiting means for a step, and from when on; null: hands take the time they take.</summary>
    private static (AlarmKind Kind, double Minutes)? Late(FocusAct act, StepKind kind) => (act, kind) switch
    {
        (FocusAct.Finish, StepKind.HeatToBoil) => (AlarmKind.BoilUnattended, BoilMin),
        (FocusAct.Finish, StepKind.Ramp or StepKind.HeatMash) => (AlarmKind.HeatRunsOn, HeatMin),
        (FocusAct.Start, StepKind.AddToBoil or StepKind.AddToWhirlpool) => (AlarmKind.AdditionLate, AdditionMin),
        (FocusAct.Finish, _) when kind.EndsBy() == EndsBy.Hands => null,
        // a level or a temperature is reached when it is: the model may be some minutes off
        (FocusAct.Finish, _) when kind.EndsBy() is EndsBy.Level or EndsBy.Temperature => (AlarmKind.HandsLate, ReachedMin),
        (FocusAct.Finish or FocusAct.Start, _) => (AlarmKind.HandsLate, HandsMin),
        _ => null,
    };

    /// <summary>What is held while hands are at work on its vessel has not been forgotten.</summary>
    private static IEnumerable<Alarm> Held(RunState state, long nowMs) => state.Steps
        .Where(s => s is { Status: RunStatus.Held, HeldMs: not null } && nowMs - s.HeldMs > HeldMin * 60_000
            && !state.Steps.Any(o => o.Status == RunStatus.Running && o.Spec.Kind.HoldsOthers() && o.Spec.Vessel == s.Spec.Vessel))
        .Select(s => new Alarm(AlarmKind.HeldLong, s.Spec.Id, (nowMs - s.HeldMs!.Value) / 60_000.0, 0));

    private static IEnumerable<PlanStep> Running(RunState state, Forecast forecast) =>
        forecast.Rest.Where(s => state.Step(s.Spec.Id)?.Status == RunStatus.Running);

    private static bool Stands(RunState state, AlarmKind kind, string about) =>
        state.Alarms.Any(a => a.Alarm.Kind == kind && a.Alarm.About == about);
}
