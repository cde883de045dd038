using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

public class TroubleTests
{
    private readonly PerfectDay _day = new(Demo.Plan());

    private double NetHeatW(string vessel)
    {
        var setting = _day.State.Live!.Setting;
        var index = setting.IndexOf(vessel);
        return setting.NetHeatW(index, 1000, _day.State.Live.Plant.PlugAt);
    }

    [Fact]
    public void Before_the_day_begins_nothing_can_be_wrong() => Assert.Empty(Possible.At(_day.State));

    [Theory]
    [InlineData("lauter.run", TroubleKind.RunoffStuck)]
    [InlineData("boil.boil-1", TroubleKind.BoilInterrupted)]
    public void What_the_running_step_may_suffer_comes_first(string step, TroubleKind kind)
    {
        _day.RunUntil(step);
        Assert.Equal(new Trouble(kind, step), Possible.At(_day.State)[0]);
    }

    [Theory]
    [InlineData("lauter.run", TroubleKind.RunoffStuck)]
    [InlineData("boil.boil-1", TroubleKind.BoilInterrupted)]
    public void What_stands_still_is_on_hold_until_it_is_over(string step, TroubleKind kind)
    {
        _day.RunUntil(step);
        _day.Wait(5);
        _day.Accepted(new RunCommand.Report(new(kind, step)));
        Assert.Equal(RunStatus.Held, _day.State.Step(step)!.Status);
        _day.Wait(10);
        _day.Accepted(new RunCommand.Clear(new(kind, step)));
        Assert.Equal(RunStatus.Running, _day.State.Step(step)!.Status);
        Assert.Empty(Possible.Standing(_day.State));
    }

    [Fact]
    public void What_keeps_the_mash_warm_can_trip_before_it_is_mashed_in()
    {
        var day = new PerfectDay(Demo.Plan(choices: new DayChoices { MashHeating = Core.Brewhouses.MashHeating.Direct }));
        day.RunUntil("liquor.heat-strike");
        var tun = day.State.Plan!.Brewhouse.MashTun;
        Assert.All(tun.Elements, e => Assert.Contains(new Trouble(TroubleKind.CircuitTripped, e.CircuitId), Possible.At(day.State)));
        Assert.Contains(new Trouble(TroubleKind.ElementFailed, Trouble.Element(tun.Id, 1)), Possible.At(day.State));
    }

    [Fact]
    public void A_tripped_circuit_feeds_nothing_until_it_is_on_again()
    {
        _day.RunUntil("liquor.heat-strike");
        var circuit = _day.State.Live!.Setting.Brewhouse.HotLiquorTank.Elements[0].CircuitId;
        var before = NetHeatW("liquor");
        _day.Wait(2);
        _day.Accepted(new RunCommand.Report(new(TroubleKind.CircuitTripped, circuit)));
        Assert.True(NetHeatW("liquor") < before);
        _day.Accepted(new RunCommand.Clear(new(TroubleKind.CircuitTripped, circuit)));
        Assert.Equal(before, NetHeatW("liquor"));
    }

    [Fact]
    public void While_a_circuit_is_out_its_tank_gets_no_warmer()
    {
        _day.RunUntil("liquor.heat-strike");
        _day.Wait(5);
        foreach (var circuit in _day.State.Live!.Setting.Circuits)
            _day.Do(new RunCommand.Report(new(TroubleKind.CircuitTripped, circuit.Id)));
        var before = _day.Vessel("liquor").TempC;
        _day.Wait(10);
        Assert.True(_day.Vessel("liquor").TempC < before);
    }

    [Fact]
    public void An_element_that_fails_heats_no_more()
    {
        _day.RunUntil("boil.heat");
        var before = NetHeatW("kettle");
        _day.Accepted(new RunCommand.Report(new(TroubleKind.ElementFailed, Trouble.Element("kettle", 1))));
        var first = _day.State.Live!.Setting.Brewhouse.Kettle.Elements.Max(e => e.PowerW);
        Assert.InRange(before - NetHeatW("kettle"), 0.9 * first, first);
        Assert.DoesNotContain(new(TroubleKind.ElementFailed, Trouble.Element("kettle", 1)), Possible.At(_day.State));
    }

    [Fact]
    public void A_forgotten_addition_takes_its_bitterness_out_of_the_outlook_and_undo_brings_it_back()
    {
        var added = _day.State.Plan!.Steps.First(s => s.Spec.Kind == StepKind.AddToBoil && s.Spec.Charges.Any(c => c.AlphaG > 0)).Spec.Id;
        _day.RunPast(added);
        _day.Wait(3);
        var before = _day.Forecast.Outlook.BitternessIbu.P50;
        _day.Accepted(new RunCommand.Report(new(TroubleKind.AdditionMissed, added)));
        Assert.Equal(RunStatus.Skipped, _day.State.Step(added)!.Status);
        Assert.True(_day.Forecast.Outlook.BitternessIbu.P50 < 0.8 * before);
        _day.Accepted(new RunCommand.Undo());
        Assert.Equal(before, _day.Forecast.Outlook.BitternessIbu.P50, 1e-9);
    }

    [Fact]
    public void A_boil_without_heat_cools()
    {
        _day.RunUntil("boil.boil-1");
        foreach (var circuit in _day.State.Live!.Setting.Circuits)
            _day.Do(new RunCommand.Report(new(TroubleKind.CircuitTripped, circuit.Id)));
        _day.Wait(10);
        Assert.InRange(_day.Vessel("kettle").TempC, 90, 99.5);
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        _day.RunUntil("mash.rest-1");
        Assert.Equal("trouble_not_possible", Code(new RunCommand.Report(new(TroubleKind.BoilInterrupted, "boil.boil-1"))));
        Assert.Equal("trouble_not_standing", Code(new RunCommand.Clear(new(TroubleKind.CircuitTripped, "A"))));
    }

    private string Code(RunCommand command) => Assert.IsType<Decision.Refused>(_day.Do(command)).Code;
}
