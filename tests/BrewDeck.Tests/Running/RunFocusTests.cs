using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

public class RunFocusTests
{
    private readonly PerfectDay _day = new(Demo.Plan());

    [Fact]
    public void The_day_begins_with_its_first_step() =>
        Assert.Equal(new RunFocus(FocusAct.Start, "setup.check", _day.NowMs), _day.Focus);

    [Fact]
    public void Handwork_may_be_finished_at_any_time_and_is_planned_for_so_long()
    {
        _day.GoOn();
        _day.Wait(4);
        Assert.Equal(new RunFocus(FocusAct.Finish, "setup.check", _day.NowMs + 360_000), _day.Focus);
        _day.Wait(10);
        Assert.Equal(new RunFocus(FocusAct.Finish, "setup.check", _day.NowMs - 240_000), _day.Focus);
    }

    [Fact]
    public void A_rest_runs_by_itself_until_its_time_is_up_then_the_ramp_takes_over()
    {
        _day.RunPast("liquor.heat-sparge");
        var ends = _day.State.Step("mash.rest-1")!.StartedMs!.Value + 3_600_000;
        Assert.Equal(new RunFocus(FocusAct.Wait, "mash.rest-1", ends), _day.Focus);
        _day.Wait((ends - _day.NowMs) / 60_000.0);
        Assert.Equal(new RunFocus(FocusAct.Start, "mash.ramp-2", ends), _day.Focus);
        _day.Wait(5);
        Assert.Equal(new RunFocus(FocusAct.Start, "mash.ramp-2", ends), _day.Focus);
    }

    /// <summary>Over time is counted from the moment it was due, whatever was read meanwhile.</summary>
    [Fact]
    public void A_heat_up_over_time_stays_due_since_it_was_reached()
    {
        _day.RunUntil("mash.ramp-2");
        var due = _day.Focus.DueMs;
        _day.Wait((due - _day.NowMs) / 60_000.0 + 6);
        _day.ReadOff(ReadingKind.Temperature, "liquor", 0);
        _day.Wait(1);
        var focus = _day.Focus;
        Assert.Equal((FocusAct.Finish, "mash.ramp-2"), (focus.Act, focus.StepId));
        Assert.Equal(due, focus.DueMs, 1500.0);
    }

    [Fact]
    public void A_held_step_is_resumed_when_nothing_else_is_to_do()
    {
        _day.RunPast("liquor.heat-sparge");
        _day.Accepted(new RunCommand.Hold("mash.rest-1", "telephone"));
        _day.Wait(10);
        Assert.Equal(new RunFocus(FocusAct.Resume, "mash.rest-1", _day.NowMs), _day.Focus);
    }

    [Fact]
    public void A_chosen_remedy_comes_first()
    {
        _day.RunPast("liquor.heat-sparge");
        _day.ReadOff(ReadingKind.Temperature, "tun", -2);
        _day.Accepted(new RunCommand.Choose(_day.Offers.First(r => r.Kind == RemedyKind.AddHotWater)));
        Assert.Equal(new RunFocus(FocusAct.Start, "remedy.water-1", _day.NowMs), _day.Focus);
        _day.GoOn();
        Assert.Equal((FocusAct.Wait, "mash.rest-1"), (_day.Focus.Act, _day.Focus.StepId));
    }

    [Fact]
    public void When_the_day_is_over_there_is_nothing_to_do()
    {
        _day.RunToEnd();
        Assert.Equal(new RunFocus(FocusAct.None, "", _day.NowMs), _day.Focus);
        Assert.Null(_day.Forecast.HandsNeededS);
    }

    [Theory]
    [InlineData("liquor.fill")]
    [InlineData("boil.hot-break")]
    [InlineData("cool.cast-out")]
    public void What_may_not_be_left_alone_stays_before_the_eyes(string step)
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(step);
        var end = day.Forecast.Rest.First(s => s.Spec.Id == step).EndS;
        for (var s = day.State.SecondsAt(day.NowMs); s < end - 95; s += 20)
        {
            day.WaitUntil(s);
            Assert.Equal((FocusAct.Wait, step), (day.Focus.Act, day.Focus.StepId));
        }
    }

    [Fact]
    public void The_hops_after_the_hot_break_have_a_key_of_their_own()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("boil.hot-break");
        day.WaitUntil(day.Forecast.Rest.First(s => s.Spec.Id == "boil.hot-break").EndS + 1);
        Assert.Equal((FocusAct.Finish, "boil.hot-break"), (day.Focus.Act, day.Focus.StepId));
        day.Accepted(new RunCommand.Finish("boil.hot-break"));

        Assert.DoesNotContain(day.State.Steps, s => s.Spec.Kind == StepKind.AddToBoil && s.Status != RunStatus.Idle);
        Assert.Equal(StepKind.AddToBoil, day.State.Step(day.Focus.StepId)!.Spec.Kind);
    }

    /// <summary>The chiller is sanitised and the wort knocked out though somebody still digs out the tun.</summary>
    [Fact]
    public void Cleaning_that_takes_long_hides_nothing_that_the_wort_waits_for()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil("clean.tun");
        var sanitiseDue = long.MaxValue;
        for (var i = 0; i < 150 && day.State.Step("cool.knock-out")!.Status != RunStatus.Complete; i++)
        {
            day.Wait(1);
            if (day.Focus.StepId == "boil.sanitise")
                sanitiseDue = Math.Min(sanitiseDue, day.NowMs);
            if (day.Focus.StepId != "clean.tun" && day.Focus.DueMs <= day.NowMs)
                day.GoOn();
        }

        Assert.Equal(RunStatus.Running, day.State.Step("clean.tun")!.Status);
        Assert.Equal(RunStatus.Complete, day.State.Step("cool.knock-out")!.Status);
        Assert.InRange(day.State.Step("boil.sanitise")!.EndedMs!.Value, sanitiseDue, day.State.Step("cool.knock-out")!.StartedMs!.Value);
    }

    /// <summary>The plug waits until the rest that it warms is all but over: the plan has it there, and nobody reads the plan again at the sockets.</summary>
    [Fact]
    public void A_plug_is_not_asked_for_while_the_rest_before_still_needs_it()
    {
        var plan = Demo.Plan(house: Demo.House with
        {
            Vessels = [.. Demo.House.Vessels.Where(v => v.Id != "liquor").Select(v => v with { Roles = v.Id == "kettle" ? VesselRoles.Boil | VesselRoles.HotLiquor : v.Roles, Elements = [v.Elements[0] with { CircuitId = "A" }] })],
            Circuits = [new Circuit("A", 240, 30, 0.8)],
            Habits = Demo.House.Habits with { MashHeating = MashHeating.Direct },
        }, choices: new DayChoices { Sparge = SpargeMethod.None, BatchL = 30 });
        var move = plan.Steps.Last(s => s.Spec.Kind == StepKind.MovePlug && s.Spec.To == "kettle");
        var rest = move.Spec.AfterStepId;
        var day = new PerfectDay(plan);
        day.RunUntil(rest);
        day.Wait(1);

        Assert.Equal((FocusAct.Wait, rest), (day.Focus.Act, day.Focus.StepId));
        Assert.Equal(day.Forecast.Step(rest)!.EndS - move.Spec.LeadS, day.Forecast.Step(move.Spec.Id)!.StartS, 1.0);
    }

    /// <summary>Cold sparge liquor would hold the lauter up for longer than the mash is kept at rest by filling and heating first.</summary>
    [Fact]
    public void Sparge_liquor_that_was_forgotten_goes_before_what_ends_the_rest()
    {
        _day.RunUntil("mash.rest-1");
        _day.Wait(75);
        var seen = new List<(FocusAct, string)>();
        for (var i = 0; i < 60 && _day.State.Step("mash.ramp-2")!.Status == RunStatus.Idle; i++)
        {
            var focus = _day.Focus;
            if (seen.LastOrDefault() != (focus.Act, focus.StepId))
                seen.Add((focus.Act, focus.StepId));
            if (focus.DueMs <= _day.NowMs)
                _day.GoOn();
            else
                _day.Wait(0.2);
        }

        Assert.Equal(
            [
                (FocusAct.Start, "liquor.fill-sparge"), (FocusAct.Wait, "liquor.fill-sparge"), (FocusAct.Finish, "liquor.fill-sparge"),
                (FocusAct.Start, "liquor.heat-sparge"), (FocusAct.Start, "mash.ramp-2"),
            ],
            seen);
    }
}
