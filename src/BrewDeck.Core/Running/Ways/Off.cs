using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Core.Running.Ways;

internal enum OffKind
{
    /// <summary>Less was filled in than planned, and nothing of it is drawn yet; litres at 20 °C.</summary>
    Fill,

    /// <summary>Less strike liquor is in the tun than planned, and the rest of it still in its tank; litres at 20 °C.</summary>
    Strike,

    /// <summary>Liquor too cold or too warm to be drawn; K.</summary>
    Liquor,

    /// <summary>Mash too cold or too warm for its rest; K.</summary>
    Mash,

    /// <summary>Mash too sour or not sour enough; pH.</summary>
    MashPh,

    /// <summary>Nothing runs off, or too little; share of the usual flow that is missing.</summary>
    Runoff,

    /// <summary>An element is without power, or a heat-up lags; W.</summary>
    Power,

    /// <summary>An addition did not go in; its grams.</summary>
    Missed,

    /// <summary>Wort in the making: gravity, volume or bitterness of the end of the day; <see cref="Off.By"/> says nothing.</summary>
    Wort,

    /// <summary>Cast out too warm or too cold; K.</summary>
    Pitch,
}

/// <summary>One thing that is off and was measured or reported; what the model merely drifts to calls for nothing.</summary>
/// <param name="About">Id of a vessel or a step.</param>
/// <param name="By">How far, more than planned above 0; unit by kind.</param>
internal sealed record Off(OffKind Kind, string About, double By)
{
    /// <summary>Nearer than this a mash or liquor is left alone; K.</summary>
    private const double NearK = 0.7;

    /// <summary>Twice what a meter for the mash is usually off; common practice, no source.</summary>
    private const double NearPh = 0.1;

    private const double SlowShare = 0.35;

    /// <summary>Less than this is missing in every second fill: three times what a sight glass is usually off, or this share; common practice, no source.</summary>
    private const double NearL = 0.5, NearShare = 0.02;

    /// <summary>Nearer than this to what was to come the tun's scale is off and not the transfer; common practice, no source.</summary>
    private const double StrikeShare = 0.05;

    /// <summary>Cheap: false when there is certainly nothing.</summary>
    public static bool MayBe(RunState state) => LastCauseMs(state) > state.LastChosenMs || UnansweredPh(state) is not null;

    /// <summary>The most urgent first.</summary>
    public static IEnumerable<Off> In(Weigh weigh)
    {
        Func<Weigh, Off?>[] looks = [Stuck, Power, Missed, Fill, Strike, Mash, MashPh, Liquor, SlowRunoff, Pitch, w => Wort(w, w.State.LastChosenMs)];
        return looks.Select(look => look(weigh)).OfType<Off>();
    }

    /// <summary>A mash may be off in its temperature and its pH at once: mending the one is no answer to the other.</summary>
    private static TakenReading? UnansweredPh(RunState state)
    {
        var answered = state.Remedies.LastOrDefault(r => r.Remedy.Kind is RemedyKind.AddAcid or RemedyKind.AddSoda or RemedyKind.LeaveIt)?.AtMs ?? long.MinValue;
        return Rest(state) is { } rest && RestReadings.Last(state, rest, ReadingKind.Ph) is { } read && read.AtMs > answered ? read : null;
    }

    private static long LastCauseMs(RunState state)
    {
        IEnumerable<long> causes =
        [
            state.Readings is [.., var read] ? read.AtMs : long.MinValue, state.BagMs ?? long.MinValue,
            .. state.Troubles.Select(t => Math.Max(t.AtMs, t.OverMs ?? 0)), .. Slips.In(state).Select(s => s.EndedMs!.Value),
            .. BegunWithoutPowerMs(state),
        ];
        return causes.Max();
    }

    /// <summary>When a heat-up was begun in a vessel whose heat is known to be dead or broken: what was chosen for the last one is no answer to it.</summary>
    private static IEnumerable<long> BegunWithoutPowerMs(RunState state) =>
        state.Live is not { } live || !state.Troubles.Any(IsOfPower) ? [] :
        from step in state.Steps
        where step is { Status: RunStatus.Running, StartedMs: not null } && step.Spec.Kind.EndsBy() == EndsBy.Temperature
        let vessel = PlantModel.HeatedVessel(live.Setting, step.Spec)
        where vessel >= 0 && live.Setting.Wiring.Leads[vessel].Length < Wiring.Of(live.Setting.Brewhouse, live.Setting.Circuits).Leads[vessel].Length
        select step.StartedMs!.Value;

    private static bool IsOfPower(ReportedTrouble t) => t.Stands && t.Trouble.Kind is TroubleKind.CircuitTripped or TroubleKind.ElementFailed;

    private static Off? Stuck(Weigh weigh) => Trouble(weigh, TroubleKind.RunoffStuck) is { } stuck ? new(OffKind.Runoff, stuck.Trouble.About, -1) : null;

    private static Off? Power(Weigh weigh)
    {
        var trouble = Trouble(weigh, TroubleKind.CircuitTripped) ?? Trouble(weigh, TroubleKind.ElementFailed)
            ?? (BegunWithoutPowerMs(weigh.State).Any(ms => ms > weigh.State.LastChosenMs) ? weigh.State.Troubles.LastOrDefault(IsOfPower) : null);
        return trouble is null ? SlowHeating(weigh) : new(OffKind.Power, trouble.Trouble.About, -weigh.DeadW());
    }

    /// <summary>A heat-up whose readings show that much of its heat is missing.</summary>
    private static Off? SlowHeating(Weigh weigh)
    {
        var setting = weigh.Live.Setting;
        var slow = Enumerable.Range(0, setting.FermenterIndex).Where(v => setting.HeatFactor[v] < SlowHeat.SlowFactor).Select(v => SlowHeat.In(weigh.State, setting, v)).FirstOrDefault();
        if (slow is null || !Read(weigh.State, ReadingKind.Temperature, slow.Spec.Vessel, slow.StartedMs ?? 0))
            return null;
        var vessel = setting.IndexOf(slow.Spec.Vessel);
        var gives = setting.NetHeatW(vessel, Contents.StandsL(weigh.Live.Vessel(slow.Spec.Vessel)), weigh.Live.Plant.PlugAt);
        return new(OffKind.Power, slow.Spec.Vessel, gives * (1 - 1 / setting.HeatFactor[vessel]));
    }

    private static Off? Missed(Weigh weigh)
    {
        var reported = Unanswered(weigh.State, t => t.Trouble.Kind == TroubleKind.AdditionMissed) is { } missed ? weigh.State.Step(missed.Trouble.About) : null;
        return (reported ?? Slips.LeftOut(weigh.State).LastOrDefault(s => s.EndedMs > weigh.State.LastChosenMs && CanStillGoIn(weigh, s))) is { } step
            ? new(OffKind.Missed, step.Spec.Id, -step.Spec.Charges.Where(c => c.Kind == ChargeKind.Hop).Sum(c => c.Amount))
            : null;
    }

    /// <summary>What is boiled goes in while there is a boil, what the whirlpool takes while the wort is hot.</summary>
    private static bool CanStillGoIn(Weigh weigh, RunStep addition) => !addition.Spec.Charges.IsEmpty
        && (addition.Spec.Kind == StepKind.AddToWhirlpool ? weigh.Live.Plant.KnockedOutL == 0 : addition.Spec.Kind != StepKind.Boil && weigh.Live.PostBoil is null);

    private static Off? Fill(Weigh weigh)
    {
        if (weigh.State.LastDone(s => s.Kind == StepKind.Fill) is not { } fill
            || Standing(weigh, fill) is not { StartedMs: { } since } last || weigh.Plan.Step(last.Spec.Id) is not { } planned || !Read(weigh.State, ReadingKind.Volume, fill.Spec.Vessel, since))
            return null;
        var wanted = Contents.CoolL(planned.After.Vessels[weigh.Live.Setting.IndexOf(fill.Spec.Vessel)]);
        var by = Contents.CoolL(weigh.Live.Vessel(fill.Spec.Vessel)) - wanted;
        return by > -Math.Max(NearL, NearShare * wanted) ? null : new(OffKind.Fill, fill.Spec.Id, by);
    }

    /// <summary>
    /// The step after which the vessel of a fill should stand as planned: the fill, until something is drawn; what was drawn last, while all that is for the
    /// sparge still waits. Null: it is being drawn, or the grist is in it.
    /// </summary>
    private static RunStep? Standing(Weigh weigh, RunStep fill)
    {
        if (!IsInUse(weigh.State, fill))
            return fill;
        var sparges = weigh.State.Steps.Where(s => s.Spec.SpargeL > 0).ToList();
        var drawn = weigh.State.LastDone(s => s.Kind == StepKind.TransferStrike && s.Vessel == fill.Spec.Vessel);
        return fill.Spec.Vessel == weigh.Live.Setting.Brewhouse.HotLiquorTank.Id && sparges.Count > 0 && sparges.All(s => s.Status == RunStatus.Idle)
            && !weigh.State.Steps.Any(s => s is { Status: RunStatus.Running, Spec.Kind: StepKind.TransferStrike or StepKind.Infuse })
                ? drawn
                : null;
    }

    /// <summary>What is left of the strike liquor in its tank, until its first rest is over: a mash that is left so is thick, and the batch short.</summary>
    private static Off? Strike(Weigh weigh)
    {
        var tun = weigh.Live.Setting.Brewhouse.MashTun.Id;
        if (StrikeLevel.Transfer(weigh.State, tun) is not { Status: RunStatus.Complete } transfer
            || weigh.State.Done(s => s.Vessel == tun || s.To == tun).Select(s => weigh.Plan.Step(s.Spec.Id)).LastOrDefault(s => s is not null) is not { } planned
            || !Read(weigh.State, ReadingKind.Volume, tun, transfer.StartedMs ?? 0))
            return null;
        var wanted = planned.After.Vessels[weigh.Live.Setting.IndexOf(tun)].WaterKg / Contents.WaterKg(1);
        var by = weigh.Live.Vessel(tun).WaterKg / Contents.WaterKg(1) - wanted;
        return by > -Math.Max(NearL, StrikeShare * wanted) ? null : new(OffKind.Strike, transfer.Spec.Id, by);
    }

    /// <summary>Something has been drawn since, or the grist is in it.</summary>
    private static bool IsInUse(RunState state, RunStep fill) => state.Steps.SkipWhile(s => s != fill).Skip(1)
        .Any(s => s.Status != RunStatus.Idle && (s.Spec.SpargeL > 0 || s.Spec is { Vessel: var from, To: not "" } && from == fill.Spec.Vessel && s.Spec.Kind != StepKind.HeatStrike
            || s.Spec.Kind == StepKind.DoughIn && s.Spec.Vessel == fill.Spec.Vessel));

    private static Off? Mash(Weigh weigh)
    {
        var rest = Rest(weigh.State);
        if (rest?.Spec.TargetC is not { } target || !ReadFor(weigh.State, rest, ReadingKind.Temperature))
            return null;
        var index = weigh.Live.Setting.IndexOf(rest.Spec.Vessel);
        var by = RestReadings.OffK(weigh.State, rest, weigh.Before(rest).Vessels[index].TempC, target, weigh.NowMs);
        return Math.Abs(by) < NearK ? null : new(OffKind.Mash, rest.Spec.Id, by);
    }

    private static Off? MashPh(Weigh weigh)
    {
        var rest = Rest(weigh.State);
        if (rest?.Spec.ExpectedPh is not { } expected || UnansweredPh(weigh.State) is not { } read)
            return null;
        var by = read.Reading.Value - expected;
        return Math.Abs(by) < NearPh ? null : new(OffKind.MashPh, rest.Spec.Id, by);
    }

    /// <summary>Strike liquor that is heated and not yet drawn, or that is too hot while it is still heated.</summary>
    private static Off? Liquor(Weigh weigh)
    {
        var heated = weigh.State.Steps.LastOrDefault(s => s.Status is RunStatus.Complete or RunStatus.Running && s.Spec.Kind == StepKind.HeatStrike);
        var drawn = heated is null ? null : weigh.State.Steps.SkipWhile(s => s != heated).Skip(1)
            .FirstOrDefault(s => s.Spec.Kind is StepKind.TransferStrike or StepKind.DoughIn);
        if (heated is null || drawn is not { Status: RunStatus.Idle } || !Read(weigh.State, ReadingKind.Temperature, heated.Spec.Vessel, heated.StartedMs ?? 0))
            return null;
        var by = weigh.Live.Vessel(heated.Spec.Vessel).TempC - weigh.StrikeC(heated.Spec);
        return Math.Abs(by) < NearK || (by < 0 && heated.Status == RunStatus.Running) ? null : new(OffKind.Liquor, heated.Spec.Id, by);
    }

    private static Off? SlowRunoff(Weigh weigh)
    {
        var run = weigh.State.Steps.FirstOrDefault(s => s.Status == RunStatus.Running && s.Spec.Kind.RunsOff());
        // of what has run no flow can be mended, and a way for the bed would hide the ways for the wort
        if (run is null || weigh.HasRun(run) || !Read(weigh.State, ReadingKind.Volume, run.Spec.To, run.StartedMs ?? 0))
            return null;
        var missing = 1 - weigh.Live.Setting.Habits.RunoffLPerMin / weigh.Plan.Brewhouse.Habits.RunoffLPerMin;
        return missing < SlowShare ? null : new(OffKind.Runoff, run.Spec.Id, -missing);
    }

    private static Off? Pitch(Weigh weigh)
    {
        var cast = weigh.State.Steps.LastOrDefault(s => s.Spec.Kind == StepKind.CastOut);
        var pitch = weigh.State.Steps.LastOrDefault(s => s.Spec.Kind == StepKind.Pitch);
        if (cast?.StartedMs is not { } since || pitch is not { Status: RunStatus.Idle } || IsCooling(weigh.State)
            || !Read(weigh.State, ReadingKind.Temperature, Places.Fermenter, since))
            return null;
        // against the plan: the chiller may have been set colder for the rest
        var by = weigh.Live.Vessel(Places.Fermenter).TempC - weigh.Plan.Recipe.Yeast.PitchC;
        return Math.Abs(by) < NearK ? null : new(OffKind.Pitch, cast.Open ? cast.Spec.Id : pitch.Spec.Id, by);
    }

    private static bool IsCooling(RunState state) => state.Steps.Any(s => s.Open && s.Spec.Kind == StepKind.CoolInFermenter);

    /// <summary>What of the wort is off though a remedy has been chosen since it was measured: another figure, or the rest of the way.</summary>
    public static Off? StillOff(Weigh weigh) => Wort(weigh, long.MinValue);

    private static Off? Wort(Weigh weigh, long since)
    {
        if (!WortMayBeOff(weigh, since))
            return null;
        var aims = Aims.Of(weigh, weigh.Forecast);
        return aims.Gravity.Near && aims.Volume.Near && (aims.Bitterness.Near || !weigh.HopsLeft) ? null : new(OffKind.Wort, weigh.Kettle.Id, 0);
    }

    /// <summary>Something was measured or done since then that the wort depends on.</summary>
    private static bool WortMayBeOff(Weigh weigh, long since)
    {
        var state = weigh.State;
        if (weigh.Live.Vessel(Places.Fermenter).LiquidKg > 0)
            return state.Readings.Any(r => r.AtMs > since && r.Reading.Vessel == Places.Fermenter && r.Reading.Kind is ReadingKind.Gravity or ReadingKind.Volume);
        bool InKettle(TakenReading r) => (weigh.Live.PreBoil is not null || weigh.HasRunOff) && r.Reading.Vessel == weigh.Kettle.Id && r.Reading.Kind is ReadingKind.Volume or ReadingKind.Gravity;
        bool FirstRunnings(TakenReading r) => r.Reading.Is(ReadingKind.Gravity, weigh.Plan.Brewhouse.LauterTun.Id) && weigh.RunOff is not null;
        return state.Readings.Any(r => r.AtMs > since && (InKettle(r) || FirstRunnings(r)))
            || state.Troubles.Any(t => Math.Max(t.AtMs, t.OverMs ?? 0) > since && t.Trouble.Kind is not TroubleKind.RunoffStuck)
            || Slips.In(state).Any(s => s.EndedMs > since)
            || state.BagMs > since;
    }

    /// <summary>The rest that goes on, or the one that the doughing in leads to: it goes on, or its liquor is in the tun.</summary>
    private static RunStep? Rest(RunState state) => RestReadings.Rest(state, RestReadings.DoughingIn(state) ?? DoughInAhead(state));

    /// <summary>A doughing in that waits while its liquor runs into the tun or stands there: the cheapest moment to mend it.</summary>
    public static RunStep? DoughInAhead(RunState state) =>
        state.Steps.FirstOrDefault(s => s is { Status: RunStatus.Idle, Spec.Kind: StepKind.DoughIn }) is { } doughIn
        && state.Steps.Any(s => s is { Spec.Kind: StepKind.TransferStrike, Status: RunStatus.Running or RunStatus.Complete } && s.Spec.To == doughIn.Spec.Vessel)
            ? doughIn
            : null;

    private static bool ReadFor(RunState state, RunStep rest, ReadingKind kind) =>
        RestReadings.Last(state, rest, kind) is { } read && read.AtMs > state.LastChosenMs;

    private static bool Read(RunState state, ReadingKind kind, string vessel, long fromMs) =>
        state.Readings.Any(r => r.Reading.Is(kind, vessel) && r.AtMs >= fromMs && r.AtMs > state.LastChosenMs);

    private static ReportedTrouble? Trouble(Weigh weigh, TroubleKind kind) =>
        Unanswered(weigh.State, t => t.Stands && t.Trouble.Kind == kind);

    private static ReportedTrouble? Unanswered(RunState state, Func<ReportedTrouble, bool> wanted) =>
        state.Troubles.LastOrDefault(t => wanted(t) && t.AtMs > state.LastChosenMs);
}
