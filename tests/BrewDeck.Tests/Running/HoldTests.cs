using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>Hold, resume, overtime and skipping, as a brewer meets them.</summary>
public class HoldTests
{
    private readonly PerfectDay _day = new(Demo.Plan());

    private double Left(string id) => _day.Forecast.Rest.First(s => s.Spec.Id == id).DurationS / 60;

    [Fact]
    public void A_held_rest_keeps_its_minutes()
    {
        _day.RunUntil("mash.rest-1");
        _day.Wait(20);
        _day.Accepted(new RunCommand.Hold("mash.rest-1", "pump"));
        _day.Wait(15);
        Assert.Equal(40, Left("mash.rest-1"), 6);
        _day.Accepted(new RunCommand.Resume("mash.rest-1"));
        _day.Wait(10);
        Assert.Equal(30, Left("mash.rest-1"), 6);
    }

    /// <summary>A kettle with its heat off cools and does not steam away; it comes back to the boil before it boils on.</summary>
    [Fact]
    public void A_held_boil_cools_steams_no_more_and_comes_back_to_the_boil()
    {
        _day.RunUntil("boil.boil-1");
        _day.Wait(10);
        var before = _day.Vessel("kettle");
        _day.Accepted(new RunCommand.Hold("boil.boil-1", "breaker"));
        _day.Wait(20);
        var held = _day.Vessel("kettle");
        // but for what a lid lets by: a tenth of a kilo an hour at the boil
        Assert.InRange(before.WaterKg - held.WaterKg, 0, 0.1 / 3);
        Assert.InRange(held.TempC, before.TempC - 6, before.TempC - 1);
        _day.Accepted(new RunCommand.Resume("boil.boil-1"));
        _day.Wait(1);
        var warming = _day.Vessel("kettle");
        Assert.Equal(held.WaterKg, warming.WaterKg, 0.003);
        Assert.InRange(warming.TempC, held.TempC + 0.5, before.TempC);
        _day.Wait(9);
        Assert.Equal(before.TempC, _day.Vessel("kettle").TempC, 0.2);
        Assert.InRange(before.WaterKg - _day.Vessel("kettle").WaterKg, 0.3, 0.8);
    }

    [Fact]
    public void A_boil_that_nobody_ends_boils_on()
    {
        var last = Last();
        _day.RunUntil(last);
        var end = _day.Forecast.Outlook;
        _day.Wait(Left(last) + 12);
        var over = _day.Forecast.Outlook;
        // five kilos an hour for twelve minutes
        Assert.Equal(end.PostBoilL.P50 - 1, over.PostBoilL.P50, 0.05);
        Assert.InRange(over.OriginalGravitySg.P50, end.OriginalGravitySg.P50 + 0.0007, end.OriginalGravitySg.P50 + 0.0025);
        Assert.InRange(over.BitternessIbu.P50, end.BitternessIbu.P50 + 0.3, end.BitternessIbu.P50 + 5);
    }

    /// <summary>The pieces of one boil share its minutes: late at one is early at the next, also when a reading fell in between.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Overtime_of_a_piece_of_the_boil_is_taken_from_the_next_piece(bool readMeanwhile)
    {
        var (first, next) = Neighbours();
        var minutes = _day.State.Step(next)!.Spec.Minutes!.Value;
        _day.RunUntil(first);
        _day.Wait(Left(first) + 2);
        if (readMeanwhile)
            _day.ReadOff(ReadingKind.Temperature, "kettle", 0);
        _day.Wait(1);
        _day.Accepted(new RunCommand.Finish(first));
        Assert.Equal(minutes - 3, _day.State.Step(next)!.Spec.Minutes!.Value, 6);
    }

    [Fact]
    public void Skipping_the_last_of_the_boil_ends_the_boil()
    {
        var last = Last();
        _day.RunUntil(last);
        _day.Wait(2);
        _day.Accepted(new RunCommand.Skip(last, "volume is reached"));
        Assert.NotNull(_day.State.Live!.PostBoil);
    }

    [Fact]
    public void What_runs_in_another_vessel_goes_on_while_a_step_is_finished()
    {
        _day.RunUntil("setup.weigh-in");
        _day.Wait(10);
        var expected = _day.Vessel("liquor").TempC;
        _day.Accepted(new RunCommand.Finish("setup.weigh-in"));
        Assert.Equal(expected, _day.Vessel("liquor").TempC, 6);
        _day.Wait(1);
        Assert.InRange(_day.Vessel("liquor").TempC, expected + 0.5, 100);
    }

    [Fact]
    public void An_addition_goes_in_once_though_the_log_was_cut_between_its_start_and_its_end()
    {
        _day.RunUntil("boil.hot-break");
        _day.RunUntil(s => s.Step("boil.add-at-60")!.Status == RunStatus.Complete);
        var started = _day.Events.FindIndex(e => e is StepStarted { StepId: "boil.add-at-60" });
        var state = RunFold.Of([.. _day.Events.Take(started + 1)]);
        Assert.Equal(RunStatus.Running, state.Step("boil.add-at-60")!.Status);
        var now = _day.Events[started].AtMs;
        state = RunFold.Then(state, new ReadingTaken(now + 60_000, new Reading(ReadingKind.Ph, "kettle", 5.2, ""), []));
        state = RunFold.Then(state, new StepFinished(now + 120_000, "boil.add-at-60"));
        Assert.Single(state.Live!.Plant.Hops);
        Assert.Single(Forecasts.At(state, now + 120_000).Now.Hops);
    }

    [Fact]
    public void A_clock_that_is_set_back_neither_throws_nor_brews_twice()
    {
        _day.RunUntil("boil.boil-1");
        _day.Wait(20);
        var water = _day.Vessel("kettle").WaterKg;
        _day.ReadOff(ReadingKind.Temperature, "kettle", 0);
        _day.Wait(-15);
        _day.Accepted(new RunCommand.Hold("boil.boil-1", "clock"));
        Assert.Equal(water, _day.Vessel("kettle").WaterKg, 6);
    }

    private string Last() => _day.State.Steps.Last(s => s.Spec.Kind == StepKind.Boil).Spec.Id;

    /// <summary>Two pieces of the boil with nothing between them but the hands at the chiller.</summary>
    private (string First, string Next) Neighbours()
    {
        var kettle = _day.State.Steps.Where(s => s.Spec.Vessel == "kettle").ToList();
        var i = kettle.Zip(kettle.Skip(1)).ToList().FindIndex(p => p.First.Spec.Kind == StepKind.Boil && p.Second.Spec.Kind == StepKind.Boil);
        return (kettle[i].Spec.Id, kettle[i + 1].Spec.Id);
    }
}
