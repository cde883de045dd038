using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

public class StepOrderTests
{
    private readonly PerfectDay _day = new(Demo.Plan());

    private bool CanStart(string id) => StepOrder.CanStart(_day.State, _day.State.Step(id)!);

    [Fact]
    public void At_first_only_what_waits_for_nothing_can_start()
    {
        Assert.True(CanStart("setup.check"));
        Assert.True(CanStart("setup.weigh-in"));
        Assert.True(CanStart("liquor.fill"));
        Assert.False(CanStart("liquor.treat"));
        Assert.False(CanStart("mash.transfer"));
        Assert.False(CanStart("mash.dough-in"));
    }

    [Fact]
    public void Sparge_liquor_is_heated_while_the_mash_rests()
    {
        _day.RunUntil("liquor.heat-sparge");
        Assert.Equal(RunStatus.Running, _day.State.Step("mash.rest-1")!.Status);
        Assert.True(CanStart("mash.ramp-2"));
        Assert.Equal("mash.rest-1", StepOrder.EndedByStarting(_day.State, _day.State.Step("mash.ramp-2")!)!.Spec.Id);
        Assert.False(CanStart("lauter.run"));
    }

    [Fact]
    public void The_chiller_is_sanitised_once_its_minute_has_come()
    {
        _day.RunUntil("boil.boil-1");
        Assert.False(CanStart("boil.sanitise"));
        _day.RunPast(_day.State.Step("boil.sanitise")!.Spec.AfterStepId);
        Assert.True(CanStart("boil.sanitise"));
    }

    [Fact]
    public void A_running_step_by_hand_is_not_ended_by_starting_the_next()
    {
        _day.RunUntil("lauter.vorlauf");
        Assert.False(CanStart("lauter.run"));
        Assert.Null(StepOrder.EndedByStarting(_day.State, _day.State.Step("lauter.run")!));
    }

    [Fact]
    public void Nothing_starts_twice_or_after_the_end()
    {
        _day.RunUntil("setup.check");
        Assert.False(CanStart("setup.check"));
        _day.Accepted(new RunCommand.Abort("enough"));
        Assert.False(CanStart("liquor.fill"));
    }

    [Fact]
    public void Free_is_all_day_what_can_start_without_ending_another()
    {
        while (_day.State.Status is not RunStatus.Complete)
        {
            var asked = _day.State.Steps.Where(s => StepOrder.CanStart(_day.State, s) && StepOrder.EndedByStarting(_day.State, s) is null);
            Assert.Equal(asked.Select(s => s.Spec.Id), StepOrder.Free(_day.State).Select(s => s.Spec.Id));
            _day.GoOn();
        }
    }
}
