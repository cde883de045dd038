using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>A kettle or a mash tun whose heat is dead: wort is boiled elsewhere, the mash is infused or rests on.</summary>
public class DeadHeatTests
{
    private const double PointSg = 0.0015;

    private static readonly Recipe Stepped = Demo.Amber with
    {
        Rests = [new MashRest("maltose", 62, 40), new MashRest("saccharification", 72, 30), new MashRest("mash-out", 77, 10)],
    };

    private static readonly Brewhouse OneCircuit = Demo.House with
    {
        Vessels = [.. Demo.House.Vessels.Select(v => v with { Elements = [.. v.Elements.Select(e => e with { CircuitId = "A" })] })],
        Circuits = [Demo.House.Circuits[0]],
    };

    private static PerfectDay Failed(string vessel, string step, double minutes, Plan? plan = null, int element = 1)
    {
        var day = new PerfectDay(plan ?? Demo.Plan());
        day.RunUntil(step);
        day.Wait(minutes);
        day.Accepted(new RunCommand.Report(new(TroubleKind.ElementFailed, Trouble.Element(vessel, element))));
        return day;
    }

    private static Remedy Taken(PerfectDay day, RemedyKind kind)
    {
        var remedy = day.Offers.First(r => r.Kind == kind);
        day.Accepted(new RunCommand.Choose(remedy));
        return remedy;
    }

    public static TheoryData<string, double, bool> Boils => new()
    {
        { "boil.heat", 1, false }, { "boil.hot-break", 2, false }, { "boil.boil-2", 5, false },
        { "boil.heat", 1, true }, { "boil.boil-2", 5, true },
    };

    [Theory]
    [MemberData(nameof(Boils))]
    public void Wort_of_a_dead_kettle_is_boiled_in_the_tank(string step, double minutes, bool oneCircuit)
    {
        var day = Failed("kettle", step, minutes, Demo.Plan(house: oneCircuit ? OneCircuit : null));
        Assert.Equal([RemedyKind.BoilElsewhere, RemedyKind.LeaveIt], day.Offers.Select(r => r.Kind));
        var remedy = Taken(day, RemedyKind.BoilElsewhere);
        Assert.Equal(oneCircuit, remedy.Insert.Any(s => s.Kind == StepKind.MovePlug && s.To == "liquor"));
        Assert.DoesNotContain(day.Forecast.Rest, s => s.Spec.Vessel == "kettle" && s.Spec.Kind is not (StepKind.Clean or StepKind.TransferWort));
        day.RunPast("cool.knock-out");
        var (boiled, plan) = (day.State.Live!.PostBoil!.Value, day.State.Plan!.Totals);
        Assert.Equal(plan.PostBoilL, Contents.CoolL(boiled), 1.5);
        Assert.InRange(day.Vessel("liquor").TempC, 95, 101);
        day.RunToEnd();
        var outlook = day.Forecast.Outlook;
        Assert.Equal(plan.OriginalGravitySg, outlook.OriginalGravitySg.P50, PointSg);
        Assert.Equal(plan.FermenterL, outlook.FermenterL.P50, 1.0);
        Assert.Equal(plan.BitternessIbu, outlook.BitternessIbu.P50, 2.0);
        Assert.All(remedy.Added, s => Assert.Equal(RunStatus.Complete, day.State.Step(s.Id)!.Status));
        Assert.Equal(RunStatus.Complete, StatusFold.Of(day.Events));
    }

    /// <summary>First wort hops give their bitterness in whichever vessel the wort stands, and while it waits for the pump too.</summary>
    [Fact]
    public void Hops_that_are_in_the_wort_go_on_giving_bitterness_while_it_waits()
    {
        var day = Failed("kettle", "boil.boil-2", 5);
        Taken(day, RemedyKind.BoilElsewhere);
        double Minutes() => day.State.Live!.CutAt(day.State.SecondsAt(day.NowMs)).Plant.Hops[0].BoilMinutes;
        var before = Minutes();
        day.Wait(10);
        Assert.InRange(Minutes() - before, 5, 10);
    }

    [Fact]
    public void Once_the_wort_is_in_the_tank_its_readings_are_those_of_the_kettle()
    {
        var day = Failed("kettle", "boil.heat", 1);
        Taken(day, RemedyKind.BoilElsewhere);
        day.RunUntil("boil.boil-1");
        day.ReadOff(ReadingKind.Gravity, "liquor", -0.004);
        Assert.Equal("liquor", Taken(day, RemedyKind.BoilLonger).Vessel);
        day.RunToEnd();
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, day.Forecast.Outlook.OriginalGravitySg.P50, PointSg);
    }

    /// <summary>Liquor that is left over would only thin the wort.</summary>
    [Fact]
    public void Liquor_that_is_left_in_the_tank_is_drained_first()
    {
        var day = new PerfectDay(Demo.Plan());
        day.RunPast("lauter.run");
        day.Read(ReadingKind.Volume, "liquor", 9);
        day.RunUntil("boil.heat");
        day.Wait(1);
        day.Accepted(new RunCommand.Report(new(TroubleKind.ElementFailed, Trouble.Element("kettle", 1))));
        var remedy = Taken(day, RemedyKind.BoilElsewhere);
        Assert.Equal(StepKind.Drain, remedy.Insert[0].Kind);
        day.RunUntil(remedy.Insert[1].Id);
        Assert.Equal(Demo.House.HotLiquorTank.DeadSpaceL, Contents.CoolL(day.State.Live!.Plant.Vessels[0]), 0.1);
        day.RunToEnd();
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, day.Forecast.Outlook.OriginalGravitySg.P50, PointSg);
    }

    [Fact]
    public void Undo_makes_the_kettle_the_kettle_again()
    {
        var day = Failed("kettle", "boil.boil-2", 5);
        var before = Laws.Same.Text(day.State);
        Taken(day, RemedyKind.BoilElsewhere);
        Assert.Equal("liquor", day.State.Live!.Setting.Brewhouse.Kettle.Id);
        day.Accepted(new RunCommand.Undo());
        Assert.Equal(before, Laws.Same.Text(day.State));
    }

    /// <summary>The tank keeps as much free for foam as the kettle does: this much wort no longer fits.</summary>
    [Fact]
    public void A_tank_without_room_for_the_foam_boils_nothing()
    {
        var kettle = Demo.House.Vessels[2];
        var wide = Demo.House with { Vessels = Demo.House.Vessels.Replace(kettle, kettle with { CapacityL = 85, HeadroomL = 20 }) };
        Assert.DoesNotContain(Failed("kettle", "boil.heat", 1, Demo.Plan(house: wide)).Offers, r => r.Kind == RemedyKind.BoilElsewhere);
        Assert.Contains(Failed("kettle", "boil.heat", 1).Offers, r => r.Kind == RemedyKind.BoilElsewhere);
    }

    /// <summary>Nothing but leaving it: no numbers of a day that never ends, but that it never boils.</summary>
    [Fact]
    public void Without_a_pump_leaving_a_dead_kettle_says_that_it_never_boils()
    {
        var left = Assert.Single(Failed("kettle", "boil.heat", 1, Demo.Plan(house: Demo.House with { Pumps = [] })).Offers);
        Assert.Equal((RemedyKind.LeaveIt, StepKind.HeatToBoil, false), (left.Kind, left.Never, left.Ahead));
        Assert.Empty(left.Gives);
    }

    /// <summary>The tank holds sparge liquor: once it has given it, the way is there.</summary>
    [Fact]
    public void While_the_wort_runs_off_a_dead_kettle_can_only_be_left_for_later()
    {
        var day = Failed("kettle", "lauter.run", 10);
        var left = Assert.Single(day.Offers);
        Assert.Equal((RemedyKind.LeaveIt, true), (left.Kind, left.Ahead));
        day.Accepted(new RunCommand.Choose(left));
        day.RunUntil("boil.heat");
        Assert.Equal(RemedyKind.BoilElsewhere, day.Offers[0].Kind);
    }

    /// <summary>5.2 kW that are left boil nearly as well as the tank does and cost no cleaning; 2 kW do not.</summary>
    [Theory]
    [InlineData(2, RemedyKind.LeaveIt)]
    [InlineData(1, RemedyKind.BoilElsewhere)]
    public void With_one_of_two_elements_left_the_aims_decide(int dead, RemedyKind best)
    {
        var kettle = Demo.House.Vessels[2];
        var two = kettle with { Elements = [new Element(5200, 0.95, 12, "C"), new Element(2000, 0.95, 12, "B")] };
        var day = Failed("kettle", "boil.heat", 1, Demo.Plan(house: Demo.House with { Vessels = Demo.House.Vessels.Replace(kettle, two) }), dead);
        Assert.Equal(best, day.Offers[0].Kind);
        var left = day.Offers.Single(r => r.Kind == RemedyKind.LeaveIt);
        Assert.Null(left.Never);
    }

    [Theory]
    [InlineData("mash.rest-1", 8, false)]
    [InlineData("mash.ramp-2", 1, false)]
    [InlineData("mash.ramp-2", 1, true)]
    public void A_mash_whose_tun_is_dead_is_raised_with_hot_liquor(string step, double minutes, bool oneCircuit)
    {
        var day = Failed("tun", step, minutes, Demo.Plan(Stepped, house: oneCircuit ? OneCircuit : null));
        Assert.Equal([RemedyKind.Infuse, RemedyKind.RestOn, RemedyKind.LeaveIt], day.Offers.Select(r => r.Kind));
        Assert.Equal(StepKind.Ramp, day.Offers[^1].Never);
        var remedy = Taken(day, RemedyKind.Infuse);
        Assert.True(remedy.NoMashOut);
        day.RunUntil("mash.rest-2");
        Assert.Equal(72, day.Vessel("tun").TempC, 0.5);
        day.RunPast("lauter.vorlauf");
        // cold water has made sparge liquor of it again, which on one circuit stands without heat once the plug is at the kettle
        Assert.InRange(day.Vessel("liquor").TempC, oneCircuit ? 68 : 76, 78);
        day.RunToEnd();
        var plan = day.State.Plan!.Totals;
        Assert.Equal(plan.FermenterL, day.Forecast.Outlook.FermenterL.P50, 0.6);
        Assert.Equal(remedy.Gives.Single(s => s.Figure == "original_gravity_sg").After, day.Forecast.Outlook.OriginalGravitySg.P50, PointSg);
    }

    [Fact]
    public void A_tun_without_room_is_not_infused()
    {
        var tun = Demo.House.Vessels[1];
        var small = Demo.House with { Vessels = Demo.House.Vessels.Replace(tun, tun with { CapacityL = 40, HeadroomL = 3 }) };
        Assert.Equal([RemedyKind.RestOn, RemedyKind.LeaveIt], Failed("tun", "mash.rest-1", 8, Demo.Plan(Stepped, house: small)).Offers.Select(r => r.Kind));
    }

    [Fact]
    public void A_mash_out_is_better_left_out_than_infused()
    {
        var day = Failed("tun", "mash.ramp-2", 1);
        var remedy = Taken(day, RemedyKind.RestOn);
        Assert.Equal(["mash.ramp-2", "mash.rest-2"], remedy.Ends);
        Assert.Equal(0, remedy.Amount);
        day.RunToEnd();
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, day.Forecast.Outlook.OriginalGravitySg.P50, PointSg);
    }

    /// <summary>A short rest in the cold has not converted: in a tun that keeps its warmth more minutes help.</summary>
    [Fact]
    public void A_mash_that_is_not_raised_rests_longer_where_that_gives_gravity()
    {
        var brief = Demo.Amber with { Rests = [new MashRest("protein", 54, 10), new MashRest("saccharification", 66, 15)] };
        var tun = Demo.House.Vessels[1];
        var warm = Demo.House with { Vessels = Demo.House.Vessels.Replace(tun, tun with { CapacityL = 90, LossWPerK = 1 }) };
        var day = Failed("tun", "mash.rest-1", 8, Demo.Plan(brief, new DayChoices { Sparge = SpargeMethod.None }, warm));
        var remedy = Taken(day, RemedyKind.RestOn);
        Assert.True(remedy.Amount > 1);
        Assert.Equal(15 + remedy.Amount, day.State.Step("mash.rest-2")!.Spec.Minutes!.Value, 1e-9);
        day.RunToEnd();
        Assert.True(remedy.Partly || Math.Abs(day.State.Plan!.Totals.OriginalGravitySg - day.Forecast.Outlook.OriginalGravitySg.P50) < PointSg);
    }

    [Theory]
    [InlineData(RemedyKind.Infuse)]
    [InlineData(RemedyKind.RestOn)]
    public void Undo_puts_the_ramps_back(RemedyKind kind)
    {
        var day = Failed("tun", "mash.ramp-2", 1, Demo.Plan(Stepped));
        var before = Laws.Same.Text(day.State);
        Taken(day, kind);
        day.Accepted(new RunCommand.Undo());
        Assert.Equal(before, Laws.Same.Text(day.State));
    }
}
