using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

public class RunDeskTests
{
    private readonly PerfectDay _day = new(Demo.Plan());

    [Fact]
    public void Nothing_can_be_done_before_a_batch_is_opened() =>
        Assert.Equal(new Decision.Refused("no_batch"), RunDesk.Decide(new RunState(), new RunCommand.Write("note"), 0));

    [Theory]
    [InlineData("boil.heat", "step_not_due")]
    [InlineData("no.such", "no_such_step")]
    public void A_step_that_cannot_start_is_refused(string id, string code) =>
        Assert.Equal(new Decision.Refused(code), _day.Do(new RunCommand.Start(id)));

    [Fact]
    public void The_first_start_is_second_0_of_the_day()
    {
        _day.Wait(7);
        _day.Accepted(new RunCommand.Start("setup.check"));
        Assert.Equal(_day.NowMs, _day.State.DayStartMs);
        Assert.Equal(RunStatus.Running, _day.State.Status);
    }

    [Fact]
    public void What_waits_can_neither_be_finished_nor_held_nor_resumed()
    {
        Assert.Equal(new Decision.Refused("step_not_running"), _day.Do(new RunCommand.Finish("setup.check")));
        Assert.Equal(new Decision.Refused("step_not_running"), _day.Do(new RunCommand.Hold("setup.check", "")));
        Assert.Equal(new Decision.Refused("step_not_held"), _day.Do(new RunCommand.Resume("setup.check")));
    }

    [Fact]
    public void A_ramp_started_early_ends_the_rest_in_the_same_act()
    {
        _day.RunUntil("mash.rest-1");
        _day.Wait(20);
        var events = _day.Accepted(new RunCommand.Start("mash.ramp-2"));
        Assert.Equal([new StepFinished(_day.NowMs, "mash.rest-1"), new StepStarted(_day.NowMs, "mash.ramp-2") { Part = 1 }], events);
        _day.Accepted(new RunCommand.Undo());
        Assert.Equal(RunStatus.Running, _day.State.Step("mash.rest-1")!.Status);
        Assert.Equal(RunStatus.Idle, _day.State.Step("mash.ramp-2")!.Status);
    }

    [Fact]
    public void The_rest_follows_on_when_its_temperature_is_reached()
    {
        _day.RunUntil("mash.ramp-2");
        _day.Wait(12);
        Assert.Equal(["mash.ramp-2", "mash.rest-2"], _day.Accepted(new RunCommand.Finish("mash.ramp-2")).Select(StepOf));
    }

    [Fact]
    public void An_addition_is_over_at_once_and_the_boil_goes_on()
    {
        _day.RunUntil(s => s.Step("boil.add-at-60")!.Status == RunStatus.Complete);
        Assert.Equal(RunStatus.Running, _day.State.Step("boil.boil-1")!.Status);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void Skipping_wants_a_reason(string reason) =>
        Assert.Equal(new Decision.Refused("reason_missing"), _day.Do(new RunCommand.Skip("setup.check", reason)));

    [Fact]
    public void A_skipped_step_is_closed_and_the_next_one_may_start()
    {
        _day.Accepted(new RunCommand.Skip("setup.check", " done yesterday "));
        Assert.Equal(RunStatus.Skipped, _day.State.Step("setup.check")!.Status);
        Assert.Equal("done yesterday", Assert.IsType<StepSkipped>(_day.Events[^1]).Reason);
        Assert.Equal(new RunFocus(FocusAct.Start, "liquor.fill", _day.NowMs), _day.Focus);
        Assert.Equal(new Decision.Refused("no_such_step"), _day.Do(new RunCommand.Skip("setup.check", "again")));
    }

    [Fact]
    public void After_an_abort_only_notes_readings_and_undo_are_left()
    {
        _day.RunUntil("mash.rest-1");
        _day.Accepted(new RunCommand.Abort("power cut"));
        Assert.Equal((RunStatus.Aborted, "power cut"), (_day.State.Status, _day.State.AbortReason));
        Assert.Equal(FocusAct.None, _day.Focus.Act);
        Assert.Equal(new Decision.Refused("day_is_over"), _day.Do(new RunCommand.Finish("mash.rest-1")));
        _day.Accepted(new RunCommand.Write("poured away"));
        _day.Read(ReadingKind.Temperature, "tun", 40);
        for (var i = 0; i < 3; i++)
            _day.Accepted(new RunCommand.Undo());
        Assert.Equal(RunStatus.Running, _day.State.Status);
    }

    [Fact]
    public void An_empty_note_is_refused_and_a_note_is_trimmed()
    {
        Assert.Equal(new Decision.Refused("empty_note"), _day.Do(new RunCommand.Write(" ")));
        _day.Accepted(new RunCommand.Write(" cloudy "));
        Assert.Equal("cloudy", _day.State.Notes[0].Text);
    }

    [Fact]
    public void Two_vessels_on_one_socket_are_not_heated_at_once()
    {
        var house = Demo.House with { Circuits = [new Circuit("A", 240, 30, 0.8)] };
        var day = new PerfectDay(Demo.Plan(house: house));
        while (day.State.Status != RunStatus.Complete)
        {
            foreach (var step in day.State.Steps.Where(s => s.Status == RunStatus.Idle))
                day.Do(new RunCommand.Start(step.Spec.Id));
            var live = day.State.Live!;
            var loads = live.Running.Select(s => PlantModel.LoadsW(live.Setting, s.Left, live.Plant)[0]).ToList();
            Assert.InRange(loads.Sum(), 0, live.Setting.Circuits[0].ContinuousW);
            day.GoOn();
        }
    }

    [Fact]
    public void A_remedy_is_taken_once()
    {
        _day.RunUntil("mash.rest-1");
        _day.ReadOff(ReadingKind.Temperature, "tun", -2);
        var heat = _day.Offers[0];
        _day.Accepted(new RunCommand.Choose(heat));
        Assert.Equal(new Decision.Refused("remedy_outdated"), _day.Do(new RunCommand.Choose(heat)));
        Assert.Single(_day.State.Steps, s => s.Spec.Kind == StepKind.HeatMash);
    }

    [Fact]
    public void A_remedy_for_a_step_that_is_over_is_refused()
    {
        _day.RunUntil("mash.rest-1");
        _day.ReadOff(ReadingKind.Temperature, "tun", -2);
        var heat = _day.Offers[0];
        _day.RunPast("mash.rest-1");
        Assert.Equal(new Decision.Refused("remedy_outdated"), _day.Do(new RunCommand.Choose(heat)));
    }

    private static string StepOf(RunEvent e) => e switch
    {
        StepStarted s => s.StepId,
        StepFinished s => s.StepId,
        _ => "",
    };
}
