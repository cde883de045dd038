using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Simulator.Hands;

/// <summary>
/// Decides what a diligent brewer would: starts what is due, waits until the plant is really there, takes the readings that the run
/// sheet asks for, takes the first remedy that is more than leaving it, finishes. Knows only the journal's state and the instruments.
/// </summary>
/// <param name="manner">How it meets what goes wrong.</param>
public sealed class StandInBrewer(PlantFollower hands, Instruments instruments, HumanPace pace, Manner manner)
{
    /// <summary>A refused command is not tried again for a while; ms.</summary>
    private const long SulkMs = 60_000;

    /// <summary>Nobody looks away for longer; ms.</summary>
    private const long LookMs = 600_000;

    private readonly HashSet<(string StepId, ReadingKind Kind, string Vessel)> _taken = [];

    private readonly Dictionary<string, long> _sulking = [];

    private string _noticed = "";

    private long _actMs;

    private long _handsFreeMs;

    private int _offersSeen;

    private Reading? _doubted;

    /// <summary>When the brewer wants to look again, Unix ms.</summary>
    public long WakeMs { get; private set; }

    /// <summary>The next command, or null: nothing to do before <see cref="WakeMs"/> unless something is done earlier.</summary>
    public RunCommand? Decide(RunState state, Forecast forecast, RunFocus focus, long nowMs)
    {
        var wish = Wish(state, forecast, focus, nowMs);
        if (wish is null)
        {
            WakeMs = Soonest(focus, nowMs);
            return null;
        }
        if (_noticed != wish.Value.Key)
            (_noticed, _actMs) = (wish.Value.Key, nowMs + (long)(1000 * wish.Value.DelayS()));
        if (nowMs < _actMs)
        {
            WakeMs = _actMs;
            return null;
        }
        return wish.Value.Command();
    }

    /// <summary>What became of the last command.</summary>
    public void Answered(RunCommand command, Decision decision, long nowMs)
    {
        var key = _noticed;
        _noticed = "";
        switch (decision)
        {
            case Decision.Refused:
                _sulking[key] = nowMs + SulkMs;
                break;
            case Decision.AskAgain asked:
                _doubted = asked.Reading;
                break;
            case Decision.Quarrel quarrel:
                _doubted = quarrel.Reading;
                break;
            case Decision.Accepted when command is RunCommand.Take:
                _doubted = null;
                break;
        }
    }

    private long Soonest(RunFocus focus, long nowMs)
    {
        var soonest = nowMs + LookMs;
        foreach (var untilMs in _sulking.Values.Append(focus.DueMs).Append(_handsFreeMs))
        {
            if (untilMs > nowMs)
                soonest = Math.Min(soonest, untilMs);
        }
        return soonest;
    }

    private Wanted? Wish(RunState state, Forecast forecast, RunFocus focus, long nowMs)
    {
        if (_doubted is { } doubted && Allowed("doubt", nowMs))
            return new Wanted("doubt", pace.MeasureS, () => new RunCommand.Take(Again(doubted), Confirmed: true));
        if (Tend(nowMs) is { } tend)
            return tend;
        if (Offer(state, nowMs) is { } remedy)
            return new Wanted("remedy", pace.NoticeS, () => new RunCommand.Choose(remedy));
        foreach (var step in state.Steps)
        {
            if (step.Status == RunStatus.Running && hands.IsNear(step.Spec.Id) && End(state, forecast, focus, step, nowMs) is { } end)
                return end;
        }
        return Begin(state, focus, nowMs);
    }

    private Remedy? Offer(RunState state, long nowMs)
    {
        if ((!manner.Mends && !AnswersByRemedy()) || state.Count == _offersSeen || state.Readings.IsEmpty)
            return null;
        var offers = Remedies.For(state, nowMs);
        if (!offers.IsEmpty && Preferred(offers) is { } best && best.Kind != RemedyKind.LeaveIt && Allowed("remedy", nowMs))
            return best;
        _offersSeen = state.Count;
        return null;
    }

    private bool AnswersByRemedy() => hands.LiveMishaps.Asking.Any(m => manner.To(m)?.Remedy is not null);

    /// <summary>The first, unless a mishap is to be met with another that is offered; null: who mends nothing takes no other.</summary>
    private Remedy? Preferred(ImmutableArray<Remedy> offers)
    {
        var wanted = hands.LiveMishaps.Asking.Select(manner.To).OfType<Answer>().Select(AsRemedy).OfType<RemedyKind>().ToList();
        return offers.FirstOrDefault(o => wanted.Contains(o.Kind)) ?? (manner.Mends ? offers[0] : null);
    }

    private static RemedyKind? AsRemedy(Answer answer) => answer == Answer.Leave ? RemedyKind.LeaveIt : answer.Remedy;

    /// <summary>A mishap that can be met by hand.</summary>
    private Wanted? Tend(long nowMs)
    {
        foreach (var live in hands.LiveMishaps.Asking)
        {
            var key = $"tend/{live.Mishap.Kind}";
            // what only a remedy can mend waits for the reading that shows it; what is left as it is, is left once
            if (manner.To(live)?.Act is { } act && !live.Acts.IsEmpty && !(act == HandAct.LeaveIt && live.Answer is not null) && Allowed(key, nowMs))
                return new Wanted(key, act == HandAct.CoolSample ? pace.CoolS : pace.NoticeS, () => new RunCommand.Tend(act));
        }
        return null;
    }

    private Wanted? End(RunState state, Forecast forecast, RunFocus focus, RunStep step, long nowMs)
    {
        var id = step.Spec.Id;
        foreach (var expected in ExpectedOf(forecast, id))
        {
            var key = (id, expected.Kind, expected.Vessel);
            var name = $"read/{id}/{expected.Kind}/{expected.Vessel}";
            if (_taken.Contains(key) || !Allowed(name, nowMs))
                continue;
            if (instruments.Read(expected.Kind, expected.Vessel) is { } reading)
                return new Wanted(name, pace.MeasureS, () => Take(key, reading));
            _taken.Add(key);
        }
        return hands.IsDone(id) && !TakenOver(state, focus, id) && Allowed("finish/" + id, nowMs) ? new Wanted("finish/" + id, pace.NoticeS, () => new RunCommand.Finish(id)) : null;
    }

    /// <summary>The big key ends a step by the clock and starts what follows it at one stroke.</summary>
    private static bool TakenOver(RunState state, RunFocus focus, string stepId) =>
        focus.Act == FocusAct.Start && state.Step(focus.StepId) is { } next && StepOrder.EndedByStarting(state, next)?.Spec.Id == stepId;

    private RunCommand.Take Take((string StepId, ReadingKind Kind, string Vessel) key, Reading reading)
    {
        _taken.Add(key);
        return new RunCommand.Take(reading);
    }

    private Reading Again(Reading doubted) => instruments.Read(doubted.Kind, doubted.Vessel) ?? doubted;

    private Wanted? Begin(RunState state, RunFocus focus, long nowMs)
    {
        var key = $"{focus.Act}/{focus.StepId}";
        if (focus.Act == FocusAct.Resume && Allowed(key, nowMs))
            return new Wanted(key, pace.NoticeS, () => new RunCommand.Resume(focus.StepId));
        if (focus.Act != FocusAct.Start || nowMs < focus.DueMs - 1000 || !Allowed(key, nowMs) || Waits(state, focus.StepId))
            return null;
        var spec = state.Step(focus.StepId)!.Spec;
        return spec.HandsS > 0 && nowMs < _handsFreeMs ? null : new Wanted(key, pace.NoticeS, () => Started(spec));
    }

    /// <summary>What goes into the kettle at once still keeps the hands there for a while: pouring, and an eye on the foam.</summary>
    private RunCommand.Start Started(StepSpec spec)
    {
        if (spec.Kind.EndsBy() == EndsBy.Act)
            _handsFreeMs = _actMs + (long)(1000 * pace.WorkFactor() * spec.HandsS);
        return new RunCommand.Start(spec.Id);
    }

    /// <summary>Liquor that is still heating is not drawn.</summary>
    private bool Waits(RunState state, string stepId)
    {
        var spec = state.Steps.First(s => s.Spec.Id == stepId).Spec;
        if (spec.Kind is not (StepKind.TransferStrike or StepKind.Infuse or StepKind.Lauter or StepKind.BatchSparge) && spec.SpargeL is not > 0)
            return false;
        return state.Steps.Any(s => s.Status == RunStatus.Running
            && s.Spec.Kind is StepKind.HeatStrike or StepKind.HeatSparge && !hands.IsDone(s.Spec.Id));
    }

    private bool Allowed(string key, long nowMs) => !_sulking.TryGetValue(key, out var untilMs) || nowMs >= untilMs;

    private static ImmutableArray<ExpectedReading> ExpectedOf(Forecast forecast, string stepId)
    {
        foreach (var step in forecast.Going)
        {
            if (step.Spec.Id == stepId)
                return step.Expected;
        }
        return [];
    }

    /// <summary>Something that the brewer wants to do, and how long it takes until it is done.</summary>
    private readonly record struct Wanted(string Key, Func<double> DelayS, Func<RunCommand> Command);
}
