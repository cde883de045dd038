using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;

namespace BrewDeck.Tests.Running;

public class RemediesTests
{
    private static readonly Plan _plan = Demo.Plan();
    private static readonly Lazy<PerfectDay> _atMash = new(() => Past("liquor.heat-sparge"));
    private static readonly Lazy<PerfectDay> _lautered = new(() => Past("lauter.run"));

    private static PerfectDay Past(string step)
    {
        var day = new PerfectDay(_plan);
        day.RunPast(step);
        return day;
    }

    private PerfectDay MashOff(double by)
    {
        var day = _atMash.Value.Copy();
        day.ReadOff(ReadingKind.Temperature, "tun", by);
        return day;
    }

    private PerfectDay KettleOff(ReadingKind kind, double by)
    {
        var day = _lautered.Value.Copy();
        day.ReadOff(kind, "kettle", by);
        return day;
    }

    private static RemedyKind[] Kinds(PerfectDay day) => [.. day.Offers.Select(r => r.Kind)];

    [Fact]
    public void A_mash_as_planned_calls_for_nothing() => Assert.Empty(MashOff(0.3).Offers);

    [Theory]
    [InlineData(ReadingKind.Gravity)]
    [InlineData(ReadingKind.Volume)]
    public void A_kettle_as_planned_calls_for_nothing(ReadingKind kind) => Assert.Empty(KettleOff(kind, 0).Offers);

    /// <summary>Nothing is pressed on a brewer who has chosen; who asks again sees what is still off.</summary>
    [Fact]
    public void A_wort_that_was_left_as_it_is_shows_its_ways_again_to_who_asks()
    {
        var day = KettleOff(ReadingKind.Gravity, -0.008);
        RemedyKind[] kinds = Kinds(day);
        day.Accepted(new RunCommand.Choose(day.Offers.First(r => r.Kind == RemedyKind.LeaveIt)));

        Assert.Empty(day.Offers);
        Assert.Equal(kinds, Remedies.Asked(day.State, day.NowMs).Select(r => r.Kind));
        day.Accepted(new RunCommand.Choose(Remedies.Asked(day.State, day.NowMs)[0]));
        Assert.DoesNotContain(Remedies.Asked(day.State, day.NowMs), r => r.Kind == kinds[0]);
    }

    [Fact]
    public void A_wort_as_planned_has_no_ways_for_who_asks() => Assert.Empty(Remedies.Asked(KettleOff(ReadingKind.Gravity, 0).State, _lautered.Value.NowMs));

    [Fact]
    public void A_cold_mash_is_heated_or_given_hot_water() =>
        Assert.Equal([RemedyKind.HeatMash, RemedyKind.AddHotWater, RemedyKind.LeaveIt], Kinds(MashOff(-2)));

    [Fact]
    public void A_warm_mash_is_given_cold_water() => Assert.Equal([RemedyKind.AddColdWater, RemedyKind.LeaveIt], Kinds(MashOff(2)));

    [Theory]
    [InlineData(-2, RemedyKind.AddHotWater)]
    [InlineData(-2, RemedyKind.HeatMash)]
    [InlineData(2, RemedyKind.AddColdWater)]
    public void A_mash_remedy_brings_the_rest_to_its_temperature(double off, RemedyKind kind)
    {
        var day = MashOff(off);
        day.Accepted(new RunCommand.Choose(day.Offers.First(r => r.Kind == kind)));
        day.GoOn();
        if (kind == RemedyKind.HeatMash)
        {
            Assert.Equal(RunStatus.Held, day.State.Step("mash.rest-1")!.Status);
            day.GoOn();
        }
        Assert.Equal(RunStatus.Running, day.State.Step("mash.rest-1")!.Status);
        Assert.Equal(66, day.Vessel("tun").TempC, 0.1);
        Assert.Empty(day.Offers);
    }

    [Fact]
    public void Hot_water_costs_the_litres_that_the_heat_balance_says()
    {
        var day = MashOff(-2);
        var litres = day.Offers.First(r => r.Kind == RemedyKind.AddHotWater).Amount;
        // (27 kg of water and 9 kg of grain, some 1.9 L/kg of each K over 34 K of boiling water)
        Assert.InRange(litres, 1.2, 2.6);
    }

    [Fact]
    public void Leaving_it_ends_the_matter_and_undo_brings_the_offers_back()
    {
        var day = MashOff(-2);
        day.Accepted(new RunCommand.Choose(day.Offers[^1]));
        Assert.Empty(day.Offers);
        day.Accepted(new RunCommand.Undo());
        Assert.Equal(3, day.Offers.Length);
    }

    [Fact]
    public void A_remedy_taken_and_undone_leaves_the_run_sheet_as_it_was()
    {
        var day = MashOff(-2);
        var before = Laws.Same.Text(day.State);
        day.Accepted(new RunCommand.Choose(day.Offers[0]));
        day.GoOn();
        day.Wait(2);
        day.Accepted(new RunCommand.Undo());
        day.Accepted(new RunCommand.Undo());
        Assert.Equal(before, Laws.Same.Text(day.State));
    }

    [Theory]
    [InlineData(ReadingKind.Gravity, -0.004, new[] { RemedyKind.BoilLonger, RemedyKind.AddExtract })]
    [InlineData(ReadingKind.Gravity, 0.002, new[] { RemedyKind.Dilute, RemedyKind.BoilShorter })]
    [InlineData(ReadingKind.Volume, 3, new[] { RemedyKind.BoilLonger })]
    [InlineData(ReadingKind.Volume, -3, new[] { RemedyKind.Dilute })]
    public void Each_way_that_the_kettle_is_off_has_its_remedies(ReadingKind kind, double by, RemedyKind[] wanted)
    {
        var offered = Kinds(KettleOff(kind, by));
        Assert.Single(offered, RemedyKind.LeaveIt);
        Assert.All(wanted, k => Assert.Contains(k, offered));
    }

    [Theory]
    [InlineData(ReadingKind.Gravity, -0.004)]
    [InlineData(ReadingKind.Gravity, 0.002)]
    [InlineData(ReadingKind.Volume, 3)]
    [InlineData(ReadingKind.Volume, -3)]
    public void Each_remedy_taken_really_brings_the_end_of_the_day_nearer_to_the_plan(ReadingKind kind, double by)
    {
        foreach (var remedy in KettleOff(kind, by).Offers.Where(r => r.Kind != RemedyKind.LeaveIt))
        {
            var left = KettleOff(kind, by);
            var taken = KettleOff(kind, by);
            taken.Accepted(new RunCommand.Choose(remedy));
            left.RunToEnd();
            taken.RunToEnd();
            var (was, now) = (Off(left, kind), Off(taken, kind));
            Assert.True(now < 0.3 * was, $"{remedy.Kind}: {was} to {now}");
        }
    }

    [Fact]
    public void What_a_remedy_promises_is_what_it_gives()
    {
        var day = KettleOff(ReadingKind.Gravity, -0.004);
        var extract = day.Offers.First(r => r.Kind == RemedyKind.AddExtract);
        var promised = extract.Gives.Single(s => s.Figure == "original_gravity_sg").After;
        day.Accepted(new RunCommand.Choose(extract));
        Assert.Equal(promised, day.Forecast.Outlook.OriginalGravitySg.P50, 0.0001);
        day.RunToEnd();
        Assert.Equal(promised, day.Forecast.Outlook.OriginalGravitySg.P50, 0.0003);
    }

    [Fact]
    public void A_boil_that_is_shortened_keeps_the_minutes_of_the_late_additions()
    {
        var day = KettleOff(ReadingKind.Gravity, 0.002);
        day.Accepted(new RunCommand.Choose(day.Offers.First(r => r.Kind == RemedyKind.BoilShorter)));
        var rest = day.Forecast.Rest;
        var late = rest.First(s => s.Spec.Id == "boil.add-at-10").StartS;
        var knockOut = rest.First(s => s.Spec.Kind == StepKind.KnockOut).StartS;
        Assert.Equal(600, knockOut - late, 1.0);
    }

    /// <summary>Off the plan, as the figure that was read sees it.</summary>
    private double Off(PerfectDay day, ReadingKind kind)
    {
        var outlook = day.Forecast.Outlook;
        return kind == ReadingKind.Gravity
            ? Math.Abs(outlook.OriginalGravitySg.P50 - _plan.Totals.OriginalGravitySg)
            : Math.Abs(outlook.FermenterL.P50 - _plan.Totals.FermenterL);
    }
}
