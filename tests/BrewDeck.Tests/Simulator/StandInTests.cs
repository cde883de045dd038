using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Rehearsing;
using static BrewDeck.Tests.Simulator.HandMadeDay;

namespace BrewDeck.Tests.Simulator;

/// <summary>The stand-in brewer against states and forecasts written by hand.</summary>
public sealed class StandInTests
{
    private static readonly StepSpec _strike =
        Step("strike", StepKind.HeatStrike, Quayside.Liquor, Quayside.Mash) with { TargetC = 40, Background = true };

    private static readonly StepSpec _transfer =
        Step("transfer", StepKind.TransferStrike, Quayside.Liquor, Quayside.Mash) with { VolumeL = 20 };

    private readonly HandMadeDay _day = new(Quayside.Exact());

    private readonly StandInBrewer _brewer;

    private long _nowMs;

    public StandInTests()
    {
        _brewer = new StandInBrewer(_day.Hands, _day.Instruments, new HumanPace(1, steadiness: 0), Manner.Practised);
        _day.Do(Step("fill", StepKind.Fill, Quayside.Liquor) with { VolumeL = 30 });
    }

    [Fact]
    public void StartsWhatIsDueAfterAMoment()
    {
        var state = State(RunStatus.Idle, RunStatus.Idle);
        var focus = new RunFocus(FocusAct.Start, "strike", 60_000);
        Assert.Null(Decide(state, focus));
        Assert.Equal(60_000, _brewer.WakeMs);
        _nowMs = 60_000;
        Assert.Null(Decide(state, focus));
        _nowMs = _brewer.WakeMs;
        Assert.Equal(new RunCommand.Start("strike"), Decide(state, focus));
        Assert.Equal(68_000, _nowMs);
    }

    [Fact]
    public void ReadsAndFinishesOnlyWhenThePlantIsThere()
    {
        _day.Begin(_strike);
        var state = State(RunStatus.Running, RunStatus.Idle);
        var focus = new RunFocus(FocusAct.Finish, "strike", 0);
        Assert.Null(Decide(state, focus));
        _day.WaitFor("strike");
        var take = Assert.IsType<RunCommand.Take>(Soon(state, focus));
        Assert.Equal((ReadingKind.Temperature, Quayside.Liquor), (take.Reading.Kind, take.Reading.Vessel));
        Assert.Equal(40, take.Reading.Value, 0.3);
        _brewer.Answered(take, new Decision.Accepted([]), _nowMs);
        Assert.Equal(new RunCommand.Finish("strike"), Soon(state, focus));
    }

    [Fact]
    public void DoesNotDrawLiquorThatStillHeats()
    {
        _day.Begin(_strike);
        var state = State(RunStatus.Running, RunStatus.Idle);
        Assert.Null(Soon(state, new RunFocus(FocusAct.Start, "transfer", 0)));
    }

    [Fact]
    public void LeavesARefusedCommandAloneForAWhile()
    {
        var state = State(RunStatus.Idle, RunStatus.Idle);
        var focus = new RunFocus(FocusAct.Start, "strike", 0);
        var start = Soon(state, focus)!;
        _brewer.Answered(start, new Decision.Refused("not_now"), _nowMs);
        Assert.Null(Soon(state, focus));
        _nowMs = _brewer.WakeMs;
        Assert.Equal(start, Soon(state, focus));
    }

    [Fact]
    public void MeasuresAgainWhenAskedAndThenStandsByIt()
    {
        _day.Begin(_strike);
        _day.WaitFor("strike");
        var state = State(RunStatus.Running, RunStatus.Idle);
        var focus = new RunFocus(FocusAct.Finish, "strike", 0);
        var take = Assert.IsType<RunCommand.Take>(Soon(state, focus));
        _brewer.Answered(take, new Decision.AskAgain(take.Reading, 50, 60), _nowMs);
        Assert.True(Assert.IsType<RunCommand.Take>(Soon(state, focus)).Confirmed);
    }

    private RunCommand? Decide(RunState state, RunFocus focus) => _brewer.Decide(state, Forecast(), focus, _nowMs);

    /// <summary>Notices, and acts when the hands are there.</summary>
    private RunCommand? Soon(RunState state, RunFocus focus)
    {
        if (Decide(state, focus) is { } atOnce)
            return atOnce;
        if (_brewer.WakeMs > _nowMs + 100_000)
            return null;
        _nowMs = _brewer.WakeMs;
        return Decide(state, focus);
    }

    private static RunState State(RunStatus strike, RunStatus transfer) =>
        new() { Steps = [new RunStep(_strike, strike), new RunStep(_transfer, transfer)] };

    private static Forecast Forecast()
    {
        var plant = new PlantState { Vessels = [] };
        ExpectedReading expected = new(ReadingKind.Temperature, Quayside.Liquor, 40);
        var none = new Figure(0);
        return new Forecast(
            plant,
            [new PlanStep(_strike, 0, 600, 40, null, null, null, [expected], plant)],
            () => new Outlook(none, none, none, none, none, none, none, none, none),
            null);
    }
}
