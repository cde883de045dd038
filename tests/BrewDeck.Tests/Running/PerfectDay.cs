using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Ensemble;

namespace BrewDeck.Tests.Running;

/// <summary>A brewer who presses the big key the moment it is due, on a brewhouse that does just what the model says.</summary>
internal sealed class PerfectDay
{
    public const long StartMs = 1_780_000_000_000;

    public PerfectDay(Plan plan) => Add(new BatchOpened(StartMs, plan, "test", Rehearsed: true));

    private PerfectDay(PerfectDay other)
    {
        Events = [.. other.Events];
        (State, NowMs) = (other.State, other.NowMs);
    }

    public List<RunEvent> Events { get; } = [];

    public PerfectDay Copy() => new(this);

    public RunState State { get; private set; } = new();

    public long NowMs { get; private set; } = StartMs;

    public Forecast Forecast => Forecasts.At(State, NowMs);

    public RunFocus Focus => RunFocus.Of(State, Forecast, NowMs);

    /// <summary>One act: waits until the focus is due and does what the big key does.</summary>
    public void GoOn()
    {
        var focus = Focus;
        while (ActMs(focus) > NowMs)
        {
            NowMs = Math.Min(ActMs(focus), NextEndMs());
            focus = Focus;
        }
        Do(focus.Act switch
        {
            FocusAct.Start => new RunCommand.Start(focus.StepId),
            FocusAct.Resume => new RunCommand.Resume(focus.StepId),
            _ => new RunCommand.Finish(focus.StepId),
        });
    }

    /// <summary>What is reached, not timed, is seen after the moment that it takes anyone to look.</summary>
    private long ActMs(RunFocus focus) =>
        focus.Act == FocusAct.Finish && State.Step(focus.StepId)!.Spec.Kind.EndsBy() is EndsBy.Temperature or EndsBy.Level
            ? focus.DueMs + (long)(1000 * UsualPace.MeanNoticeS)
            : focus.DueMs;

    /// <summary>The next moment at which something that runs comes to its end: it may want the hands sooner.</summary>
    private long NextEndMs() => Forecast.Rest
        .Where(s => State.Step(s.Spec.Id)!.Status == RunStatus.Running)
        .Select(s => State.MsAt(s.EndS, NowMs)).Where(ms => ms > NowMs).Append(long.MaxValue).Min();

    public void RunUntil(Func<RunState, bool> reached)
    {
        for (var i = 0; i < 500 && !reached(State); i++)
            GoOn();
        Assert.True(reached(State), $"never reached; stands at {Focus}");
    }

    /// <summary>Until a step runs.</summary>
    public void RunUntil(string stepId) => RunUntil(s => s.Step(stepId)!.Status == RunStatus.Running);

    /// <summary>Until a step is over.</summary>
    public void RunPast(string stepId) => RunUntil(s => !s.Step(stepId)!.Open);

    public void RunToEnd() => RunUntil(s => s.Status == RunStatus.Complete);

    public void WaitUntil(double second) => NowMs = State.MsAt(second, NowMs);

    public void Wait(double minutes) => NowMs += (long)(minutes * 60_000);

    public Decision Do(RunCommand command)
    {
        var decision = RunDesk.Decide(State, command, NowMs);
        if (decision is Decision.Accepted accepted)
        {
            foreach (var happened in accepted.Events)
                Add(happened);
        }
        return decision;
    }

    /// <summary>A command that must be accepted.</summary>
    public ImmutableArray<RunEvent> Accepted(RunCommand command) =>
        Assert.IsType<Decision.Accepted>(Do(command)).Events;

    /// <summary>A reading so far off what the model says now.</summary>
    public ImmutableArray<Shift> ReadOff(ReadingKind kind, string vessel, double by) =>
        Read(kind, vessel, Expected(kind, vessel) + by);

    public ImmutableArray<Shift> Read(ReadingKind kind, string vessel, double value) =>
        Assert.IsType<ReadingTaken>(Accepted(new RunCommand.Take(new Reading(kind, vessel, value, ""), Confirmed: true))[0]).Moved;

    public ImmutableArray<Remedy> Offers => Remedies.For(State, NowMs);

    public VesselState Vessel(string id)
    {
        var live = State.Live!.CutAt(State.SecondsAt(NowMs));
        return live.Plant.Vessels[live.Setting.IndexOf(id)];
    }

    /// <summary>What the deck would hold a reading against.</summary>
    public double Predicted(ReadingKind kind, string vessel)
    {
        var reading = new Reading(kind, vessel, Expected(kind, vessel), "");
        return RunFold.Then(State, new ReadingTaken(NowMs, reading, [])).Readings[^1].Expected;
    }

    public double Expected(ReadingKind kind, string vessel)
    {
        var live = State.Live!.CutAt(State.SecondsAt(NowMs));
        return Expectations.Of(live.Setting, live.Plant, kind, vessel);
    }

    private void Add(RunEvent happened)
    {
        Events.Add(happened);
        State = happened is Undone ? RunFold.Of(Events) : RunFold.Then(State, happened);
    }
}
