using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Rehearsing;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Simulator;

/// <summary>What undo does at the plant of a rehearsal.</summary>
public sealed class TakenBackTests
{
    private const long StartMs = 1_700_000_000_000;

    private readonly PaperBook _book = new(new BatchOpened(StartMs, Demo.Plan(), "", Rehearsed: true));

    private RehearsalPlayer _player = RehearsalPlayer.For(Demo.Plan(), 4711, StartMs);

    [Fact]
    public void A_run_off_whose_end_is_taken_back_runs_on()
    {
        PlayInto(StepKind.Lauter, minutes: 12);
        var kettle = _player.Plant.Kettle.ColdL;
        Do(new RunCommand.Finish(Running(StepKind.Lauter)));
        Do(new RunCommand.Undo());
        Wait(15);

        Assert.True(_player.Plant.Kettle.ColdL > kettle + 5, $"{kettle:0.0} L before, {_player.Plant.Kettle.ColdL:0.0} L a quarter of an hour after");
    }

    [Fact]
    public void It_comes_to_the_same_end_as_if_nothing_had_been_struck()
    {
        PlayInto(StepKind.Lauter, minutes: 12);
        Do(new RunCommand.Finish(Running(StepKind.Lauter)));
        Do(new RunCommand.Undo());
        var lauter = Running(StepKind.Lauter);
        Wait(90);

        Assert.False(_player.Plant.RunsOff);
        var wanted = _book.State.Step(lauter)!.Spec.VolumeL!.Value;
        Assert.InRange(_player.Plant.Kettle.ColdL, wanted - 1.5, wanted + 1.5);
    }

    [Fact]
    public void A_hold_that_is_taken_back_lets_it_run_on_and_going_on_taken_back_stops_it()
    {
        PlayInto(StepKind.Lauter, minutes: 12);
        var lauter = Running(StepKind.Lauter);
        Do(new RunCommand.Hold(lauter, ""));
        Do(new RunCommand.Undo());
        Assert.True(_player.Plant.RunsOff);
        Do(new RunCommand.Hold(lauter, ""));
        Do(new RunCommand.Resume(lauter));
        Do(new RunCommand.Undo());
        Assert.False(_player.Plant.RunsOff);
    }

    [Fact]
    public void A_start_that_is_taken_back_turns_its_heat_off_again()
    {
        PlayInto(StepKind.HeatStrike, minutes: 3);
        var step = _book.State.Steps.First(s => s.Spec.Kind == StepKind.HeatStrike && s.Status == RunStatus.Running);
        Assert.False(double.IsNaN(_player.Plant[step.Spec.Vessel].SetC));
        while (_book.State.Step(step.Spec.Id)!.Status == RunStatus.Running)
            Do(new RunCommand.Undo());

        Assert.True(double.IsNaN(_player.Plant[step.Spec.Vessel].SetC));
    }

    [Fact]
    public void Liquor_that_a_held_transfer_left_in_the_tank_comes_when_it_goes_on()
    {
        PlayInto(StepKind.TransferStrike, minutes: 1);
        var transfer = Running(StepKind.TransferStrike);
        var both = BothKg();
        Do(new RunCommand.Hold(transfer, ""));
        var tun = _player.Plant.Tun.LiquidKg;
        Wait(5);
        Assert.Equal(tun, _player.Plant.Tun.LiquidKg, 0.05);
        Do(new RunCommand.Resume(transfer));
        Wait(15);

        Assert.False(_player.Plant.Pouring);
        var all = _book.State.Step(transfer)!.Spec.VolumeL!.Value;
        Assert.InRange(_player.Plant.Tun.ColdL, all - 0.5, all + 0.5);
        Assert.Equal(both, BothKg(), 0.2);
    }

    /// <summary>Left as it is the pump whines on, ended it stands, taken back it whines again, primed it brings the rest.</summary>
    [Fact]
    public void A_pump_without_prime_is_seen_until_its_liquor_has_come()
    {
        _player = RehearsalPlayer.For(Demo.Plan(), 4711, StartMs, [new Mishap(MishapKind.PumpLostPrime, Severity.Plain)]);
        PlayInto(StepKind.TransferStrike, minutes: 0);
        Wait(1);
        var transfer = Running(StepKind.TransferStrike);
        var both = BothKg();
        Do(new RunCommand.Tend(HandAct.LeaveIt));
        Assert.Single(_player.LiveMishaps.Asking);
        Do(new RunCommand.Finish(transfer));
        Assert.Empty(_player.LiveMishaps.Asking);
        var ended = _player.Plant.Tun.LiquidKg;
        Wait(2);
        Assert.Equal(ended, _player.Plant.Tun.LiquidKg, 0.05);

        Do(new RunCommand.Undo());
        Assert.Single(_player.LiveMishaps.Asking);
        Wait(2);
        // a tenth of its flow
        Assert.InRange(_player.Plant.Tun.LiquidKg, ended + 0.5, ended + 5);
        Do(new RunCommand.Tend(HandAct.PrimePump));
        Wait(20);

        Assert.Empty(_player.LiveMishaps.Asking);
        Assert.False(_player.Plant.Pouring);
        var all = _book.State.Step(transfer)!.Spec.VolumeL!.Value;
        Assert.InRange(_player.Plant.Tun.ColdL, all - 0.5, all + 0.5);
        Assert.Equal(both, BothKg(), 0.2);
    }

    private double BothKg() => _player.Plant.Tun.LiquidKg + _player.Plant["liquor"].LiquidKg;

    [Fact]
    public void The_same_day_is_made_again_from_its_record()
    {
        PlayInto(StepKind.Lauter, minutes: 12);
        Do(new RunCommand.Finish(Running(StepKind.Lauter)));
        Do(new RunCommand.Undo());
        Wait(15);
        Do(new RunCommand.Write("here"));
        var again = RehearsalPlayer.For(Demo.Plan(), 4711, StartMs);
        again.Replay(_book.Events);

        Assert.Equal(_player.Plant.Kettle.ColdL, again.Plant.Kettle.ColdL, 0.2);
    }

    private string Running(StepKind kind) => _book.State.Steps.First(s => s.Spec.Kind == kind && s.Status == RunStatus.Running).Spec.Id;

    private void PlayInto(StepKind kind, int minutes)
    {
        while (!_book.State.Steps.Any(s => s.Spec.Kind == kind && s.Status == RunStatus.Running))
        {
            var command = _player.Next(_book.State, StartMs + 36 * 3_600_000L);
            Assert.NotNull(command);
            Do(command);
        }
        Wait(minutes);
    }

    /// <summary>The hands leave the deck alone; the plant goes on.</summary>
    private void Wait(int minutes)
    {
        _player.BrewerActs = false;
        _player.Next(_book.State, _player.NowMs + minutes * 60_000L);
        _player.BrewerActs = true;
    }

    private void Do(RunCommand command)
    {
        var decision = _book.Submit(command, _player.NowMs);
        _player.Answered(command, decision);
        if (decision is Decision.Accepted accepted)
            _player.Happened(accepted.Events, _book.State);
    }
}
