using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>Strike liquor through a pump that has lost its prime: the tun's level says what has come.</summary>
public class StrikeLevelTests
{
    private const string Transfer = "mash.transfer";

    private static PerfectDay Transferring(double reckonedL)
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(Transfer);
        for (var i = 0; i < 200 && Contents.StandsL(day.Vessel("tun")) < reckonedL; i++)
            day.Wait(0.1);
        return day;
    }

    private static double BothKg(PerfectDay day) => day.Vessel("tun").WaterKg + day.Vessel("liquor").WaterKg;

    [Theory]
    [InlineData(10)]
    [InlineData(1000)] // by the clock all of it has come
    public void What_has_not_come_is_still_in_the_tank_and_still_comes(double reckonedL)
    {
        var day = Transferring(reckonedL);
        var all = day.State.Step(Transfer)!.Spec.VolumeL!.Value;
        var both = BothKg(day);
        day.Read(ReadingKind.Volume, "tun", 4);
        Assert.Equal(4, Contents.StandsL(day.Vessel("tun")), 1e-6);
        Assert.Equal(both, BothKg(day), 1e-6);
        Assert.True(day.Forecast.Going.Single(s => s.Spec.Id == Transfer).DurationS > 10);
        day.RunPast(Transfer);
        Assert.Equal(all, Contents.CoolL(day.Vessel("tun")), 0.3);
    }

    /// <summary>Who holds the step to bleed the pump reads what has come, and the rest comes when it goes on.</summary>
    [Fact]
    public void Of_a_transfer_that_is_held_the_rest_still_comes()
    {
        var day = Transferring(10);
        var all = day.State.Step(Transfer)!.Spec.VolumeL!.Value;
        var both = BothKg(day);
        day.Accepted(new RunCommand.Hold(Transfer, "air in the pump"));
        day.Read(ReadingKind.Volume, "tun", 4);
        Assert.Equal(4, Contents.StandsL(day.Vessel("tun")), 1e-6);
        Assert.Equal(both, BothKg(day), 1e-6);
        day.Accepted(new RunCommand.Resume(Transfer));
        day.RunPast(Transfer);
        Assert.Equal(all, Contents.CoolL(day.Vessel("tun")), 0.3);
    }

    /// <summary>The tank's own level, and the tun's before anything runs into it, say nothing of the transfer.</summary>
    [Theory]
    [InlineData(Transfer)]
    [InlineData("liquor.heat-strike")]
    public void A_level_in_the_tank_leaves_the_tun_as_it_is(string step)
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunUntil(step);
        day.Wait(0.5);
        double tun = day.Vessel("tun").WaterKg, tank = Contents.StandsL(day.Vessel("liquor"));
        day.Read(ReadingKind.Volume, "liquor", tank - 3);
        Assert.Equal(tun, day.Vessel("tun").WaterKg, 1e-9);
        Assert.True(Contents.StandsL(day.Vessel("liquor")) < tank - 0.5);
    }

    /// <summary>Ended there, the mash is thick, and the deck knows it.</summary>
    [Fact]
    public void Ended_short_the_tun_holds_what_was_read()
    {
        var day = Transferring(1000);
        day.Read(ReadingKind.Volume, "tun", 15);
        day.Accepted(new RunCommand.Finish(Transfer, Short: true));
        Assert.Equal(15, Contents.StandsL(day.Vessel("tun")), 0.1);
    }

    [Fact]
    public void A_level_near_the_end_is_that_of_its_end()
    {
        var day = Transferring(1000);
        var tank = day.Vessel("liquor").WaterKg;
        day.Read(ReadingKind.Volume, "tun", Contents.StandsL(day.Vessel("tun")) - 0.6);
        Assert.Equal(tank, day.Vessel("liquor").WaterKg, 0.05);
        Assert.Equal(FocusAct.Finish, day.Focus.Act);
    }
}
