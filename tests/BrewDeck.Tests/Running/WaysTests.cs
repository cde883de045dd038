using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Deck.Wording;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

/// <summary>Each thing that can be off has its ways, and taking one does what it says.</summary>
public class WaysTests
{
    /// <summary>Days brewed so far, each brewed once.</summary>
    private static readonly Dictionary<string, PerfectDay> _brewed = [];

    private static PerfectDay Past(string step) => Brewed("past " + step, day => day.RunPast(step));

    private static PerfectDay At(string step, double minutes = 5)
    {
        var day = Brewed("at " + step, d => d.RunUntil(step));
        day.Wait(minutes);
        return day;
    }

    private static PerfectDay Brewed(string name, Action<PerfectDay> brew, DayChoices? choices = null)
    {
        if (!_brewed.TryGetValue(name, out var day))
        {
            day = _brewed[name] = new PerfectDay(Demo.Plan(choices: choices));
            brew(day);
        }
        return day.Copy();
    }

    private static RemedyKind[] Kinds(PerfectDay day) => [.. day.Offers.Select(r => r.Kind)];

    private static Remedy Taken(PerfectDay day, RemedyKind kind)
    {
        var remedy = day.Offers.First(r => r.Kind == kind);
        day.Accepted(new RunCommand.Choose(remedy));
        return remedy;
    }

    [Fact]
    public void Cold_strike_liquor_is_heated_on_before_it_is_drawn()
    {
        var day = Past("liquor.heat-strike");
        day.ReadOff(ReadingKind.Temperature, "liquor", -4);
        Assert.Equal([RemedyKind.HeatLiquor, RemedyKind.LeaveIt], Kinds(day));
        Taken(day, RemedyKind.HeatLiquor);
        day.RunPast("mash.dough-in");
        Assert.Equal(66, day.Vessel("tun").TempC, 0.5);
    }

    /// <summary>The tap was shut too soon, and the key struck.</summary>
    [Theory]
    [InlineData("liquor.fill", -3.0)]
    [InlineData("liquor.fill-sparge", -5.0)]
    public void What_a_fill_was_short_of_is_run_in_before_it_is_drawn(string fill, double by)
    {
        var day = Past(fill);
        var litres = day.Forecast.Outlook.FermenterL.P50;
        day.ReadOff(ReadingKind.Volume, "liquor", by);
        Assert.Equal([RemedyKind.FillUp, RemedyKind.LeaveIt], Kinds(day));
        Assert.Equal(-by, day.Offers[0].Amount, 0.2);
        Assert.Equal(day.State.Step(fill)!.Spec.Cautions, day.Offers[0].Insert.Single().Cautions);
        Assert.True(day.Offers[0].Insert.Single().Cautions.HasFlag(Cautions.MainsNearWater));
        Taken(day, RemedyKind.FillUp);
        Assert.Equal(litres, day.Forecast.Outlook.FermenterL.P50, 0.2);
        day.RunToEnd();
        Assert.Equal(litres, day.Forecast.Outlook.FermenterL.P50, 0.2);
    }

    [Fact]
    public void A_fill_that_is_all_but_full_or_drawn_already_asks_for_no_more()
    {
        var day = Past("liquor.fill");
        day.ReadOff(ReadingKind.Volume, "liquor", -0.3);
        Assert.Empty(day.Offers);

        day = At("mash.transfer", 1);
        day.ReadOff(ReadingKind.Volume, "liquor", -3);
        Assert.DoesNotContain(RemedyKind.FillUp, Kinds(day));
    }

    /// <summary>The pump had lost its prime, and the key was struck all the same: what is not in the tun is in the tank.</summary>
    [Theory]
    [InlineData("mash.transfer")]
    [InlineData("mash.dough-in")]
    public void Strike_liquor_that_stayed_in_its_tank_is_run_over_after_all(string after)
    {
        var day = Past(after);
        var (litres, both) = (day.Forecast.Outlook.FermenterL.P50, day.Vessel("tun").WaterKg + day.Vessel("liquor").WaterKg);
        day.ReadOff(ReadingKind.Volume, "tun", -8);
        Assert.Equal(both, day.Vessel("tun").WaterKg + day.Vessel("liquor").WaterKg, after == "mash.transfer" ? 1e-6 : 1);
        Assert.Equal(RemedyKind.RunOver, Kinds(day)[0]);
        Assert.Equal(8, Taken(day, RemedyKind.RunOver).Amount, 0.4);
        Assert.Equal(litres, day.Forecast.Outlook.FermenterL.P50, 0.3);
        Assert.Empty(day.Offers);
        day.RunToEnd();
        Assert.Equal(litres, day.Forecast.Outlook.FermenterL.P50, 0.5);
    }

    [Fact]
    public void A_tun_whose_scale_is_a_little_off_asks_for_no_liquor()
    {
        var day = Past("mash.transfer");
        day.ReadOff(ReadingKind.Volume, "tun", -0.8);
        Assert.DoesNotContain(RemedyKind.RunOver, Kinds(day));
    }

    /// <summary>Filled once in the morning for strike and sparge: what has gone from the tank since is missing in the sparge.</summary>
    [Fact]
    public void A_tank_that_is_short_for_the_sparge_is_filled_up_though_strike_liquor_was_drawn_from_it()
    {
        var day = Past("mash.dough-in");
        day.RunPast("liquor.fill-sparge");
        day.RunUntil("mash.rest-1");
        var litres = day.Forecast.Outlook.FermenterL.P50;
        day.ReadOff(ReadingKind.Volume, "liquor", -8);
        Assert.Equal([RemedyKind.FillUp, RemedyKind.LeaveIt], Kinds(day));
        Taken(day, RemedyKind.FillUp);
        Assert.Equal(litres, day.Forecast.Outlook.FermenterL.P50, 0.3);
    }

    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(6, 2)]
    public void Strike_liquor_that_is_too_hot_is_mended_where_it_is_read(double by, int offers)
    {
        var day = At("liquor.heat-strike", 1);
        day.WaitUntil(day.Forecast.Rest.First(s => s.Spec.Id == "liquor.heat-strike").EndS);
        day.ReadOff(ReadingKind.Temperature, "liquor", by);
        Assert.Equal(offers, day.Offers.Length);
        if (offers == 0)
            return;
        Assert.Equal([RemedyKind.AddColdWater, RemedyKind.LeaveIt], Kinds(day));
        // a fifth of an hour is still weighed in: the tank cools meanwhile, and the mash comes out too hot all the same
        Assert.InRange(day.Offers[^1].Gives.Single(s => s.Figure == "mash_c").After, 67, 66 + 0.8 * by);
        Taken(day, RemedyKind.AddColdWater);
        day.RunPast("mash.dough-in");
        Assert.Equal(66, day.Vessel("tun").TempC, 0.5);
    }

    /// <summary>A bed that was slow is no matter any more once the wort has run: what is off is the wort.</summary>
    [Fact]
    public void A_weak_wort_at_the_end_of_a_slow_run_off_gets_the_ways_of_a_wort()
    {
        var day = At("lauter.run", 20);
        day.ReadOff(ReadingKind.Volume, "kettle", -0.5 * day.Expected(ReadingKind.Volume, "kettle"));
        Assert.Contains(RemedyKind.RakeBed, Kinds(day));
        day.WaitUntil(day.Forecast.Rest.First(s => s.Spec.Id == "lauter.run").EndS);
        day.ReadOff(ReadingKind.Volume, "kettle", 0);
        day.ReadOff(ReadingKind.Gravity, "kettle", -0.006);
        Assert.Contains(RemedyKind.AddExtract, Kinds(day));
        Assert.DoesNotContain(RemedyKind.RakeBed, Kinds(day));
    }

    /// <summary>The others are there for their aroma, and who is at the scale reads there what to weigh.</summary>
    [Fact]
    public void Hops_of_another_alpha_acid_are_weighed_anew_and_no_others()
    {
        var day = At("setup.weigh-in", 1);
        var hops = day.State.Plan!.Steps.Where(s => s.Spec.Kind != StepKind.WeighIn).SelectMany(s => s.Spec.Charges).Where(c => c.AlphaG > 0).ToList();
        var bitter = hops[0];
        Assert.Contains(hops, h => h.Name != bitter.Name);
        var alpha = bitter.AlphaG / bitter.Amount;
        day.Accepted(new RunCommand.Weigh(new(ChargeKind.Hop, bitter.Name) { AlphaFraction = 1.2 * alpha }));

        var remedy = Taken(day, RemedyKind.Reweigh);

        double Grams(string name) => day.State.Steps.Where(s => s.Spec.Kind != StepKind.WeighIn).SelectMany(s => s.Spec.Charges).Where(c => c.Name == name).Sum(c => c.Amount);
        foreach (var other in hops.Where(h => h.Name != bitter.Name))
            Assert.Equal(hops.Where(h => h.Name == other.Name).Sum(h => h.Amount), Grams(other.Name), 6);
        Assert.Equal(bitter.Amount / 1.2, Grams(bitter.Name), 0.05 * bitter.Amount);
        var listed = day.State.Step("setup.weigh-in")!.Spec.Charges.Where(c => c.Name == bitter.Name).Sum(c => c.Amount);
        Assert.Equal(Grams(bitter.Name), listed, 6);
    }

    [Fact]
    public void A_bed_that_lets_nothing_through_is_not_left_alone_at_no_cost()
    {
        var day = At("lauter.run");
        day.Accepted(new RunCommand.Report(new(TroubleKind.RunoffStuck, "lauter.run")));
        var leave = day.Offers[^1];
        Assert.Equal((RemedyKind.LeaveIt, StepKind.Lauter), (leave.Kind, leave.Never));
        Assert.Empty(leave.Gives);
        Assert.All(day.Offers[..^1], r => Assert.Matches("then at [5-9]0 % of its usual flow", RemedyWords.Title(r, day.State.Plan!.Brewhouse, Notation.Metric)));
    }

    /// <summary>The liquor is pumped round the tun as the mash will be: without its hose the pump runs dry.</summary>
    [Fact]
    public void Liquor_that_is_heated_in_the_tun_is_given_the_hoses_of_the_doughing_in()
    {
        var day = Past("mash.transfer");
        day.ReadOff(ReadingKind.Temperature, "tun", -4);
        var heat = Assert.Single(day.Offers.Single(r => r.Kind == RemedyKind.HeatMash).Insert);
        var doughIn = day.State.Step("mash.dough-in")!.Spec;
        Assert.NotNull(doughIn.HosePaths);
        Assert.Equal(doughIn.HosePaths, heat.HosePaths);
        Assert.Equal(doughIn.Hoses, heat.Hoses);
    }

    /// <summary>Hops that have not gone in keep their minutes: what is boiled longer is boiled before them.</summary>
    [Fact]
    public void A_boil_is_made_longer_before_the_first_hops()
    {
        var day = At("boil.hot-break", 1);
        day.ReadOff(ReadingKind.Gravity, "kettle", -0.006);
        var remedy = Taken(day, RemedyKind.BoilLonger);
        Assert.Equal(StepKind.Boil, Assert.Single(remedy.Insert).Kind);
        var first = day.Forecast.Rest.First(s => s.Spec.Kind == StepKind.AddToBoil);
        Assert.Equal(HopMinutes(day.State.Plan!.Steps), HopMinutes(day.Forecast.Rest), 1.5);
        Assert.Contains(day.Forecast.Rest.TakeWhile(s => s != first), s => s.Spec.Id == remedy.Insert[0].Id);
        day.RunToEnd();
        Assert.Equal(RunStatus.Complete, day.State.Step(remedy.Insert[0].Id)!.Status);
    }

    private static double HopMinutes(ImmutableArray<PlanStep> steps) =>
        (steps.First(s => s.Spec.Kind == StepKind.KnockOut).StartS - steps.First(s => s.Spec.Kind == StepKind.AddToBoil).StartS) / 60;

    /// <summary>The hose and a cold tun took more than planned: the cheapest moment to mend it is before the grist.</summary>
    [Theory]
    [InlineData(RemedyKind.HeatMash)]
    [InlineData(RemedyKind.AddHotWater)]
    public void Liquor_that_came_into_the_tun_cold_is_mended_before_doughing_in(RemedyKind kind)
    {
        var day = At("mash.transfer");
        day.ReadOff(ReadingKind.Temperature, "tun", -4);
        day.RunPast("mash.transfer");
        var remedy = Taken(day, kind);
        day.RunUntil("mash.dough-in");
        Assert.All(remedy.Insert, s => Assert.Equal(RunStatus.Complete, day.State.Step(s.Id)!.Status));
        day.RunPast("mash.dough-in");
        Assert.Equal(66, day.Vessel("tun").TempC, 0.5);
    }

    [Fact]
    public void Strike_liquor_that_is_too_hot_gets_cold_water()
    {
        var day = Past("liquor.heat-strike");
        day.ReadOff(ReadingKind.Temperature, "liquor", 4);
        Assert.Equal([RemedyKind.AddColdWater, RemedyKind.LeaveIt], Kinds(day));
        Taken(day, RemedyKind.AddColdWater);
        day.RunPast("mash.dough-in");
        Assert.Equal(66, day.Vessel("tun").TempC, 0.5);
    }

    [Theory]
    [InlineData(0.3, RemedyKind.AddAcid)]
    [InlineData(-0.3, RemedyKind.AddSoda)]
    public void A_mash_ph_that_is_off_gets_half_of_what_the_sum_says(double by, RemedyKind kind)
    {
        var day = new PerfectDay(Demo.Plan() is var plan ? plan with { Steps = [.. plan.Steps.Select(Expecting)] } : null!);
        day.RunUntil("mash.rest-1");
        day.Wait(10);
        day.Read(ReadingKind.Ph, "tun", 5.4 + by);
        var remedy = Taken(day, kind);
        Assert.Equal(5.4 + by / 2, Assert.Single(remedy.Gives, s => s.Figure == "mash_ph").After, 1e-9);
        Assert.InRange(remedy.Amount, 1, 60);
        day.GoOn();
        Assert.Equal(5.4 + by / 2, day.State.Step("mash.rest-1")!.Spec.ExpectedPh!.Value, 1e-9);
    }

    [Fact]
    public void A_mash_that_is_cold_and_not_sour_enough_has_both_mended_one_after_the_other()
    {
        var day = new PerfectDay(Demo.Plan() is var plan ? plan with { Steps = [.. plan.Steps.Select(Expecting)] } : null!);
        day.RunUntil("mash.rest-1");
        day.Wait(10);
        day.Read(ReadingKind.Ph, "tun", 5.7);
        day.ReadOff(ReadingKind.Temperature, "tun", -2);
        Taken(day, RemedyKind.HeatMash);

        Taken(day, RemedyKind.AddAcid);

        Assert.Empty(day.Offers);
    }

    private static PlanStep Expecting(PlanStep step) =>
        step.Spec.Kind == StepKind.Rest ? step with { Spec = step.Spec with { ExpectedPh = 5.4 } } : step;

    [Fact]
    public void A_stuck_bed_is_rested_lifted_or_cut_and_then_runs_again()
    {
        foreach (var kind in new[] { RemedyKind.RestBed, RemedyKind.Underlet, RemedyKind.RakeBed })
        {
            var day = At("lauter.run", 10);
            var (kettle, tank) = (day.Vessel("kettle").LiquidKg, day.Vessel("liquor").LiquidKg);
            day.Accepted(new RunCommand.Report(new(TroubleKind.RunoffStuck, "lauter.run")));
            var remedy = Taken(day, kind);
            Assert.True(remedy.Minutes > 0, $"{kind} costs {remedy.Minutes} min");
            day.GoOn();
            Assert.Equal(RunStatus.Held, day.State.Step("lauter.run")!.Status);
            day.GoOn();
            Assert.Equal(RunStatus.Running, day.State.Step("lauter.run")!.Status);
            Assert.Empty(Possible.Standing(day.State));
            Assert.Equal(kettle, day.Vessel("kettle").LiquidKg, 0.5);
            Assert.Equal(kind == RemedyKind.Underlet, day.Vessel("liquor").LiquidKg < tank - 1);
            day.RunPast("lauter.run");
            Assert.Equal(day.State.Plan!.Totals.PreBoilL, Contents.CoolL(day.Vessel("kettle")), 0.3);
        }
    }

    /// <summary>Nobody has forgotten what waits for the hands that mend it.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_hold_is_called_out_but_not_while_its_bed_is_cut(bool mended)
    {
        var day = At("lauter.run", 10);
        if (mended)
        {
            day.Accepted(new RunCommand.Report(new(TroubleKind.RunoffStuck, "lauter.run")));
            Taken(day, RemedyKind.RakeBed);
            day.GoOn();
        }
        else
        {
            day.Accepted(new RunCommand.Hold("lauter.run", ""));
        }
        Assert.Equal(RunStatus.Held, day.State.Step("lauter.run")!.Status);
        day.Wait(12);
        Assert.Equal(!mended, AlarmRules.At(day.State, day.Forecast, day.Focus, day.NowMs).Any(a => a.Kind == AlarmKind.HeldLong));
    }

    /// <summary>What is said of each way is what put it in its place: no shown figure moves, so the minutes do.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(30)]
    public void The_ways_of_a_stuck_bed_stand_in_the_order_of_what_they_say(double minutes)
    {
        var day = At("lauter.run", minutes);
        day.Accepted(new RunCommand.Report(new(TroubleKind.RunoffStuck, "lauter.run")));
        var frees = day.Offers.Where(r => r.Kind != RemedyKind.LeaveIt).ToList();
        Assert.True(frees.Count > 1);
        Assert.All(frees, r => Assert.DoesNotContain(r.Gives, s => s.Figure == "original_gravity_sg" && Math.Abs(s.After - s.Before) >= 0.001));
        Assert.Equal(frees.Select(r => Math.Round(r.Minutes)).Order(), frees.Select(r => Math.Round(r.Minutes)));
        Assert.Equal(HandWork.RakeMin, frees.First(r => r.Kind == RemedyKind.RakeBed).Insert[0].Minutes);
    }

    [Fact]
    public void A_run_off_that_creeps_calls_for_its_ways()
    {
        var day = At("lauter.run", 20);
        day.ReadOff(ReadingKind.Volume, "kettle", -0.5 * day.Expected(ReadingKind.Volume, "kettle"));
        Assert.Contains(RemedyKind.RakeBed, Kinds(day));
        var left = day.Forecast.Outlook.FinishMs.P50;
        Taken(day, RemedyKind.RakeBed);
        Assert.True(day.Forecast.Outlook.FinishMs.P50 < left);
    }

    [Fact]
    public void What_a_tripped_circuit_fed_goes_on_one_that_can_carry_it()
    {
        var day = At("lauter.run", 20);
        day.Accepted(new RunCommand.Report(new(TroubleKind.CircuitTripped, "C")));
        var left = day.Forecast.Outlook.FinishMs.P50;
        var remedy = day.Offers[0];
        Assert.Equal((RemedyKind.OtherCircuit, "A"), (remedy.Kind, remedy.CircuitId));
        Assert.DoesNotContain(day.Offers, r => r.CircuitId == "B");
        day.Accepted(new RunCommand.Choose(remedy));
        Assert.True(day.Forecast.Outlook.FinishMs.P50 < left - 3_600_000, string.Join(" ", day.Forecast.Rest.Take(4).Select(s => $"{s.Spec.Id} {s.DurationS}")) + $" left {left} now {day.Forecast.Outlook.FinishMs.P50}");
        Assert.True(day.State.Live!.Setting.NetHeatW(2, 50, day.State.Live.Plant.PlugAt) > 5000);
        day.Accepted(new RunCommand.Undo());
        Assert.Equal(left, day.Forecast.Outlook.FinishMs.P50, 1.0);
    }

    /// <summary>The tank that hung on the tripped circuit too is done with: the other circuit has to carry the kettle alone.</summary>
    [Fact]
    public void What_is_no_longer_heated_keeps_no_circuit_from_taking_over()
    {
        var house = Demo.House with
        {
            Circuits = [new Circuit("A", 240, 30, 0.8, Sockets: 1), new Circuit("B", 240, 30, 0.8)],
            Vessels = [.. Demo.House.Vessels.Select(v => v with { Elements = [.. v.Elements.Select(e => e with { CircuitId = v.Id == "tun" ? "B" : "A" })] })],
        };
        var day = new PerfectDay(Demo.Plan(house: house));
        day.RunUntil("boil.boil-1");
        day.Accepted(new RunCommand.Report(new(TroubleKind.CircuitTripped, "A")));

        var remedy = day.Offers[0];
        Assert.Equal((RemedyKind.OtherCircuit, "B", house.Kettle.Elements[0].PowerW), (remedy.Kind, remedy.CircuitId, remedy.PowerW));
        day.Accepted(new RunCommand.Choose(remedy));
        Assert.True(day.State.Live!.Setting.NetHeatW(day.State.Live.Setting.IndexOf("kettle"), 50, day.State.Live.Plant.PlugAt) > 5000);
        Assert.Empty(day.Offers);
    }

    [Fact]
    public void A_forgotten_addition_goes_in_at_once_and_the_weight_can_make_up_for_the_minutes()
    {
        var added = Demo.Plan().Steps.First(s => s.Spec.Kind == StepKind.AddToBoil && s.Spec.Charges.Any(c => c.AlphaG > 0)).Spec;
        var day = Past(added.Id);
        day.Wait(20);
        day.Accepted(new RunCommand.Report(new(TroubleKind.AdditionMissed, added.Id)));
        var aim = day.State.Plan!.Totals.BitternessIbu;
        Assert.Contains(RemedyKind.AddNow, Kinds(day));
        var reweighed = day.Offers.First(r => r.Kind == RemedyKind.Reweigh && r.Replace.IsEmpty);
        day.Accepted(new RunCommand.Choose(reweighed));
        day.GoOn();
        Assert.True(reweighed.Amount > added.Charges.Sum(c => c.Amount));
        day.RunToEnd();
        Assert.Equal(aim, day.Forecast.Outlook.BitternessIbu.P50, 1.5);
    }

    /// <summary>Nobody reports a skip besides: r knows it.</summary>
    [Fact]
    public void A_skipped_addition_may_still_go_in_and_bring_the_bitterness_back()
    {
        var hops = Demo.Plan().Steps.First(s => s.Spec.Kind == StepKind.AddToBoil && s.Spec.Charges.Any(c => c.AlphaG > 0)).Spec;
        var day = Brewed("before " + hops.Id, d => d.RunUntil(s => StepOrder.CanStart(s, s.Step(hops.Id)!)));
        Assert.Empty(day.Offers);
        day.Accepted(new RunCommand.Skip(hops.Id, "forgotten"));
        day.Wait(5);
        var left = day.Forecast.Outlook.BitternessIbu.P50;
        var off = Assert.Single(Remedies.OffPlan(day.Offers), s => s.Figure == "bitterness_ibu");
        Assert.Equal(day.State.Plan!.Totals.BitternessIbu, off.Before);
        Assert.Equal(hops.Charges, Taken(day, RemedyKind.AddNow).Insert.Single().Charges);
        Assert.True(day.Forecast.Outlook.BitternessIbu.P50 > left + 5);
        Assert.Empty(day.Offers);
    }

    /// <summary>Once the boil is over nothing is boiled any more, and nothing that was skipped calls for it.</summary>
    [Fact]
    public void A_skipped_addition_is_not_offered_after_the_boil()
    {
        var hops = Demo.Plan().Steps.First(s => s.Spec.Kind == StepKind.AddToBoil && s.Spec.Charges.Any(c => c.AlphaG > 0)).Spec;
        var day = Brewed("before " + hops.Id, d => d.RunUntil(s => StepOrder.CanStart(s, s.Step(hops.Id)!)));
        day.Accepted(new RunCommand.Skip(hops.Id, "no hops"));
        day.RunPast("cool.knock-out");
        Assert.DoesNotContain(RemedyKind.AddNow, Kinds(day));
    }

    [Theory]
    [InlineData(0.5, false)]
    [InlineData(2.4, true)]
    public void A_bed_is_underlet_with_no_more_than_the_tank_gives(double aboveItsOutletL, bool offered)
    {
        var day = At("lauter.run", 10);
        var outlet = day.State.Plan!.Brewhouse.HotLiquorTank.DeadSpaceL;
        day.Read(ReadingKind.Volume, "liquor", outlet + aboveItsOutletL);
        var gives = Contents.CoolL(day.Vessel("liquor")) - outlet;
        day.Accepted(new RunCommand.Report(new(TroubleKind.RunoffStuck, "lauter.run")));
        var underlet = day.Offers.FirstOrDefault(r => r.Kind == RemedyKind.Underlet);
        Assert.Equal(offered, underlet is not null);
        Assert.True(underlet is null || underlet.Amount <= gives + 1e-3, $"{underlet?.Amount} of {gives} L");
    }

    /// <summary>Short and nearly too weak: water would make it too weak, and only who wants the litres above all is offered it.</summary>
    [Theory]
    [InlineData(MattersMost.Gravity, false)]
    [InlineData(MattersMost.Volume, true)]
    public void A_weak_and_short_wort_is_not_watered_down(MattersMost matters, bool offered)
    {
        var day = Brewed($"lautered, {matters}", d => d.RunPast("lauter.run"), new DayChoices { MattersMost = matters });
        day.ReadOff(ReadingKind.Volume, "kettle", -3);
        var gravity = Figures(day).Gravity;
        for (var i = 0; i < 20 && Figures(day).Gravity > -0.0009; i++)
            day.Read(ReadingKind.Gravity, "kettle", day.Expected(ReadingKind.Gravity, "kettle") - 0.0007);
        Assert.InRange(Figures(day).Gravity, -0.0015, -0.0005);
        Assert.True(Figures(day).Volume < -1.5, $"{Figures(day)}, was {gravity}");
        Assert.Equal(offered, Kinds(day).Contains(RemedyKind.Dilute));
    }

    private static (double Gravity, double Volume) Figures(PerfectDay day)
    {
        var (end, totals) = (day.Forecast.Rest[^1].After.Vessels[^1], day.State.Plan!.Totals);
        return (BrewDeck.Core.Physics.SugarSolution.SgFromPlato(end.Plato) - totals.OriginalGravitySg, Contents.CoolL(end) - totals.FermenterL);
    }

    [Fact]
    public void Weak_first_runnings_move_the_kettles_mark()
    {
        var day = At("lauter.vorlauf", 3);
        day.ReadOff(ReadingKind.Gravity, "tun", -0.008);
        var remedy = Taken(day, RemedyKind.RunOffLess);
        Assert.InRange(remedy.Amount, 0.5, 8);
        day.RunToEnd();
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, day.Forecast.Outlook.OriginalGravitySg.P50, 0.0015);
    }

    [Fact]
    public void After_the_boil_weak_wort_is_boiled_again()
    {
        var day = At("cool.knock-out", 1);
        day.ReadOff(ReadingKind.Gravity, "kettle", -0.004);
        var again = Assert.Single(Taken(day, RemedyKind.BoilLonger).Insert);
        var notation = new Notation(UnitSystem.Metric, TimeZoneInfo.Utc);
        var step = day.Forecast.Rest.Single(s => s.Spec.Id == again.Id);
        Assert.Contains(HandsWords.AtTheDeck(step, day.State.Plan!, notation), line => line.Contains("heat off at the switch", StringComparison.Ordinal));
        day.RunToEnd();
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, day.Forecast.Outlook.OriginalGravitySg.P50, 0.0015);
        Assert.True(day.Forecast.Outlook.BitternessIbu.P50 > day.State.Plan!.Totals.BitternessIbu);
    }

    [Fact]
    public void A_boil_that_cannot_reach_the_plan_is_offered_for_as_far_as_it_comes()
    {
        var day = Past("lauter.run");
        day.ReadOff(ReadingKind.Gravity, "kettle", -0.012);
        var aim = day.State.Plan!.Totals.OriginalGravitySg;
        var left = day.Forecast.Outlook.OriginalGravitySg.P50;
        var remedy = Taken(day, RemedyKind.BoilLonger);
        Assert.Equal((true, 60), (remedy.Partly, remedy.Amount));
        day.RunToEnd();
        Assert.InRange(day.Forecast.Outlook.OriginalGravitySg.P50, left + 0.003, aim - 0.0015);
    }

    [Fact]
    public void Wort_that_comes_too_warm_out_of_the_chiller_is_made_up_for_by_the_rest()
    {
        var day = At("cool.cast-out", 3);
        day.Read(ReadingKind.Temperature, "fermenter", day.State.Step("cool.cast-out")!.Spec.TargetC!.Value + 3);
        Taken(day, RemedyKind.SetChiller);
        day.RunPast("cool.cast-out");
        Assert.Equal(day.State.Plan!.Totals.PitchC, day.Vessel("fermenter").TempC, 0.5);
    }

    [Fact]
    public void Strong_wort_in_the_fermenter_is_thinned_there()
    {
        var day = Past("cool.cast-out");
        day.ReadOff(ReadingKind.Gravity, "fermenter", 0.004);
        var remedy = Taken(day, RemedyKind.Dilute);
        Assert.Equal(("fermenter", remedy.Amount), (remedy.Vessel, remedy.WaterL));
        day.RunToEnd();
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, day.Forecast.Outlook.OriginalGravitySg.P50, 0.0015);
    }

    [Fact]
    public void A_boil_that_ended_early_calls_for_the_minutes_that_are_missing()
    {
        var day = At("boil.boil-1", 10);
        day.Accepted(new RunCommand.Finish("boil.boil-1"));
        Assert.Contains(RemedyKind.BoilLonger, Kinds(day));
    }

    [Theory]
    [InlineData(MattersMost.Gravity, RemedyKind.AddExtract)]
    [InlineData(MattersMost.Time, RemedyKind.AddExtract)]
    public void What_matters_most_leads_the_list(MattersMost what, RemedyKind first)
    {
        var plan = Demo.Plan();
        var day = new PerfectDay(plan with { Choices = plan.Choices with { MattersMost = what } });
        day.RunPast("lauter.run");
        day.ReadOff(ReadingKind.Gravity, "kettle", -0.004);
        Assert.Equal(first, day.Offers[0].Kind);
    }

    [Fact]
    public void Leaving_it_says_what_comes_of_it_with_its_band()
    {
        var day = Past("lauter.run");
        day.ReadOff(ReadingKind.Gravity, "kettle", -0.004);
        var gravity = Assert.Single(day.Offers.Single(r => r.Kind == RemedyKind.LeaveIt).Gives, s => s.Figure == "original_gravity_sg");
        Assert.Equal(day.State.Plan!.Totals.OriginalGravitySg, gravity.Before);
        Assert.True(gravity.Low < gravity.After && gravity.After < gravity.High);
    }

    [Fact]
    public void No_offer_breaks_a_limit()
    {
        var day = Past("lauter.run");
        day.ReadOff(ReadingKind.Gravity, "kettle", 0.012);
        var room = day.State.Plan!.Brewhouse.Kettle.WorkingL;
        Assert.All(day.Offers, r => Assert.True(r.Closest is null or { Ok: true }, $"{r.Kind}: {r.Closest}"));
        Assert.All(day.Offers.Where(r => r.Kind == RemedyKind.Dilute), r => Assert.True(r.Closest!.Value <= room));
    }
}
