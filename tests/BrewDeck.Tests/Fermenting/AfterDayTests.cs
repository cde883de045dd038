using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Tests.Planning;
using BrewDeck.Tests.Running;

namespace BrewDeck.Tests.Fermenting;

public sealed class AfterDayTests
{
    private const long DayMs = 86_400_000;

    private readonly PerfectDay _day = new(Demo.Plan(WithDryHops()));

    [Fact]
    public void Nothing_is_taken_before_pitching()
    {
        Assert.Equal(new Decision.Refused("not_pitched"), _day.Do(Gravity(1.040)));
        Assert.Empty(DueDates.Of(_day.State.Ferment));
    }

    [Fact]
    public void Readings_are_taken_when_the_run_is_complete_and_both_folds_agree()
    {
        _day.RunToEnd();
        _day.Wait(6 * 1440);
        Assert.IsType<Decision.Accepted>(_day.Do(Gravity(1.014)));
        Assert.IsType<Decision.Accepted>(_day.Do(new RunCommand.After.Taste("clean", 4)));

        Assert.Equal(RunStatus.Complete, _day.State.Status);
        Assert.Equal(1.014, _day.State.Ferment.Readings.Single().Reading.Value);
        var light = FermentFold.Of(_day.Events);
        Assert.Equal(_day.State.Ferment.PitchedMs, light.PitchedMs);
        Assert.Equal(_day.State.Ferment.Readings, light.Readings);
        Assert.Equal(_day.State.Ferment.Tastings, light.Tastings);
    }

    /// <summary>Points times litres are kept (common practice, no source): what ferments is the thinned wort.</summary>
    [Fact]
    public void Water_after_the_reading_thins_the_measured_gravity_and_a_later_reading_counts_as_it_is()
    {
        _day.RunPast("cool.cast-out");
        _day.ReadOff(ReadingKind.Volume, Places.Fermenter, 0);
        var read = _day.Expected(ReadingKind.Gravity, Places.Fermenter) + 0.004;
        _day.Read(ReadingKind.Gravity, Places.Fermenter, read);
        var dilute = _day.Offers.First(r => r.Kind == RemedyKind.Dilute);
        var before = _day.State.Ferment.MeasuredL!.Value;
        _day.Accepted(new RunCommand.Choose(dilute));
        Assert.Equal(read, _day.State.Ferment.MeasuredOriginalSg);
        _day.RunPast(dilute.Insert[0].Id);

        var ferment = _day.State.Ferment;
        Assert.Equal(dilute.Amount, ferment.ThinnedByL, 1e-9);
        Assert.Equal(1 + (read - 1) * before / (before + dilute.Amount), ferment.MeasuredOriginalSg!.Value, 0.0001);
        Assert.Equal(before + dilute.Amount, ferment.MeasuredL!.Value, 1e-9);
        Assert.Equal(ferment.MeasuredOriginalSg, FermentFold.Of(_day.Events).MeasuredOriginalSg);
        // a record from elsewhere may tell of the same step twice
        var twice = new RemedyChosen(_day.NowMs, dilute with { Insert = [dilute.Insert[0] with { VolumeL = 1 }] }, []);
        Assert.Equal(ferment.MeasuredOriginalSg, FermentFold.Of([.. _day.Events, twice]).MeasuredOriginalSg);

        _day.Read(ReadingKind.Gravity, Places.Fermenter, 1.047);
        Assert.Equal((1.047, 0.0), (_day.State.Ferment.MeasuredOriginalSg!.Value, _day.State.Ferment.ThinnedByL));
    }

    [Fact]
    public void What_was_written_can_be_taken_back()
    {
        _day.RunToEnd();
        _day.Do(Gravity(1.040));
        Assert.Single(_day.State.Ferment.Readings);
        _day.Do(new RunCommand.Undo());

        Assert.Empty(_day.State.Ferment.Readings);
        Assert.Empty(FermentFold.Of(_day.Events).Readings);
    }

    [Theory]
    [InlineData(1.5, "reading_impossible")]
    [InlineData(1.080, "gravity_above_original")]
    public void A_gravity_that_beer_cannot_have_is_refused(double sg, string code)
    {
        _day.RunToEnd();
        Assert.Equal(new Decision.Refused(code), _day.Do(Gravity(sg)));
    }

    [Fact]
    public void Dry_hops_end_their_contact_with_packaging()
    {
        _day.RunToEnd();
        var pitched = _day.State.Ferment.PitchedMs!.Value;

        var due = DueDates.Of(_day.State.Ferment);
        Assert.Equal([(DueKind.GravityCheck, 5), (DueKind.Addition, 10), (DueKind.Packaging, 14)],
            due.Select(d => (d.Kind, (int)Math.Round((d.DueMs - pitched) / (double)DayMs))));

        _day.Do(new RunCommand.After.SetDate(new DueItem(DueKind.Packaging, "", pitched + 20 * DayMs)));
        Assert.Equal(16 * DayMs, DueDates.Of(_day.State.Ferment).Single(d => d.Kind == DueKind.Addition).DueMs - pitched);
        _day.Do(new RunCommand.After.Add(new DatedAddition("Cascade", 80, "g")));
        Assert.DoesNotContain(DueDates.Of(_day.State.Ferment), d => d.Kind == DueKind.Addition);
    }

    [Fact]
    public void Gravity_is_due_until_two_readings_agree_and_nothing_after_packaging()
    {
        _day.RunToEnd();
        _day.Wait(5 * 1440);
        _day.Do(Gravity(1.016));
        _day.Wait(3 * 1440);
        _day.Do(Gravity(1.012));
        Assert.Contains(DueDates.Of(_day.State.Ferment), d => d.Kind == DueKind.GravityCheck);
        Assert.False(FermentFigures.Of(_day.State.Ferment)!.Steady);
        _day.Wait(3 * 1440);
        _day.Do(Gravity(1.0115));
        Assert.True(FermentFigures.Of(_day.State.Ferment)!.Steady);
        Assert.DoesNotContain(DueDates.Of(_day.State.Ferment), d => d.Kind == DueKind.GravityCheck);

        _day.Do(new RunCommand.After.Package(Packaging.InKeg(38, 2.4, 4)));
        Assert.Empty(DueDates.Of(_day.State.Ferment));
    }

    [Fact]
    public void A_band_is_wider_by_refractometer()
    {
        _day.RunToEnd();
        _day.Do(new RunCommand.Take(new Reading(ReadingKind.Gravity, "fermenter", 1.048, "1.048")));
        _day.Wait(6 * 1440);
        _day.Do(Gravity(1.012));
        var hydrometer = FermentFigures.Of(_day.State.Ferment)!.AbvPercent;
        _day.Do(new RunCommand.After.ReadFermenter(new FermenterReading(FermenterFigure.Gravity, 1.012, "6.6bx") { Brix = 6.6 }));
        var refractometer = FermentFigures.Of(_day.State.Ferment)!.AbvPercent;

        Assert.Equal(hydrometer.P50, refractometer.P50, 1e-9);
        Assert.True(refractometer.P90 - refractometer.P10 > 1.3 * (hydrometer.P90 - hydrometer.P10));
        Assert.InRange(hydrometer.P50, 3.5, 6);
    }

    // 1.050 to 1.010: a refractometer then shows about 6.2 °Bx (Terrill 2011, his example lies within 0.001)
    [Fact]
    public void A_refractometer_is_corrected_for_alcohol() =>
        Assert.Equal(1.010, FermentFigures.ByRefractometerSg(1.050, 6.3), 0.002);

    [Fact]
    public void Bottles_get_the_sugar_that_the_warmest_temperature_leaves_wanting()
    {
        var cool = Packaging.InBottles(20, 2.4, 12, PrimingSugar.TableSugar);
        var warm = Packaging.InBottles(20, 2.4, 22, PrimingSugar.TableSugar);

        Assert.True(warm.SugarG > cool.SugarG + 10);
        Assert.True(Packaging.InBottles(20, 2.4, 22, PrimingSugar.Dextrose).SugarG > warm.SugarG);
        // the trade's tables: 10 psi for 2.4 volumes at 39 °F
        Assert.Equal(0.69e5, Packaging.InKeg(19, 2.4, 4).PressurePa!.Value, 0.03e5);
    }

    /// <summary>Half a batch in bottles, the rest in a keg: both are kept and summed, and the rest is due until as good as all is packaged.</summary>
    [Fact]
    public void Lots_are_summed_and_packaging_is_due_until_as_good_as_all_is_packaged()
    {
        Fermented();
        var litres = _day.State.Ferment.PitchedL;
        Accepted(Packaging.InBottles(0.5 * litres, 2.4, 20, PrimingSugar.TableSugar));
        Assert.Contains(DueDates.Of(_day.State.Ferment), d => d.Kind == DueKind.Packaging);
        Accepted(Packaging.InKeg(0.45 * litres, 2.4, 4));

        var beer = _day.State.Ferment;
        Assert.Equal([PackageKind.Bottles, PackageKind.Keg], beer.Lots.Select(l => l.How.Kind));
        Assert.Equal(0.95 * litres, beer.PackagedL, 1e-9);
        Assert.Equal(0.05 * litres, beer.LeftL, 1e-9);
        Assert.Equal(beer.LeftL, beer.Lots[^1].LeftL!.Value, 1e-9);
        Assert.Empty(DueDates.Of(beer));
        Assert.Equal(beer.Lots, FermentFold.Of(_day.Events).Lots);

        _day.Do(new RunCommand.Undo());
        Assert.Equal([PackageKind.Bottles], _day.State.Ferment.Lots.Select(l => l.How.Kind));
        Assert.Contains(DueDates.Of(_day.State.Ferment), d => d.Kind == DueKind.Packaging);
    }

    [Fact]
    public void The_brewer_may_say_that_the_rest_is_lees_once_something_is_packaged()
    {
        Fermented();
        Assert.Equal(new Decision.Refused("nothing_packaged"), _day.Do(new RunCommand.After.EndPackaging()));
        Accepted(Packaging.InKeg(20, 2.4, 4));
        Assert.IsType<Decision.Accepted>(_day.Do(new RunCommand.After.EndPackaging()));
        Assert.Empty(DueDates.Of(_day.State.Ferment));
        _day.Do(new RunCommand.Undo());
        Assert.False(_day.State.Ferment.IsPackaged);
    }

    /// <summary>Before a batch had several lots, the one that was written down was all of it.</summary>
    [Fact]
    public void A_lot_of_an_old_record_is_all_of_the_batch()
    {
        Fermented();
        RunEvent[] old = [.. _day.Events, new BeerPackaged(_day.NowMs, Packaging.InKeg(19, 2.4, 4))];
        Assert.True(FermentFold.Of(old).IsPackaged);
        Assert.Empty(DueDates.Of(FermentFold.Of(old)));
    }

    [Fact]
    public void A_stranger_record_that_ends_a_packaging_which_never_began_still_folds()
    {
        Fermented();
        Assert.True(FermentFold.Of([.. _day.Events, new PackagingEnded(_day.NowMs)]).IsPackaged);
    }

    [Fact]
    public void More_beer_than_there_is_is_asked_again_and_taken_when_confirmed()
    {
        Fermented();
        Accepted(Packaging.InKeg(30, 2.4, 4));
        var keg = new RunCommand.After.Package(Packaging.InKeg(30, 2.4, 4));
        Assert.Equal(_day.State.Ferment.PitchedL - 30, Assert.IsType<Decision.MoreThanThereIs>(_day.Do(keg)).LeftL, 1e-9);
        Assert.Single(_day.State.Ferment.Lots);
        Assert.IsType<Decision.Accepted>(_day.Do(keg with { Confirmed = true }));
        Assert.Equal(0, _day.State.Ferment.LeftL);
    }

    /// <summary>Ranges of the formulas, as the reckoner states them; what no bottle holds: common practice, no source.</summary>
    [Theory]
    [InlineData(PackageKind.Bottles, 2.4, 25, null)]
    [InlineData(PackageKind.Bottles, 2.4, 25.1, "priming_temperature")]
    [InlineData(PackageKind.Bottles, 2.4, -0.1, "priming_temperature")]
    [InlineData(PackageKind.Bottles, 4.5, 20, null)]
    [InlineData(PackageKind.Bottles, 4.6, 20, "packaging_co2_bottles")]
    [InlineData(PackageKind.Bottles, double.NaN, 20, "packaging_co2_bottles")]
    [InlineData(PackageKind.Keg, 2.4, 30, null)]
    [InlineData(PackageKind.Keg, 2.4, 40, "keg_temperature")]
    [InlineData(PackageKind.Keg, 4.6, 4, null)]
    [InlineData(PackageKind.Keg, 5.1, 4, "packaging_co2")]
    public void What_no_bottle_or_keg_holds_and_what_no_formula_reaches_is_refused(PackageKind kind, double volumes, double celsius, string? code)
    {
        Fermented();
        var decision = _day.Do(new RunCommand.After.Package(new Packaging(kind, 10, volumes, celsius)));
        Assert.Equal(code, (decision as Decision.Refused)?.Code);
    }

    [Fact]
    public void A_reading_of_another_day_counts_as_taken_then()
    {
        Fermented();
        var pitched = _day.State.Ferment.PitchedMs!.Value;
        _day.Do(Gravity(1.012));
        Assert.IsType<Decision.Accepted>(_day.Do(Gravity(1.020, pitched + 2 * DayMs)));

        Assert.Equal([1.020, 1.012], _day.State.Ferment.Readings.Select(r => r.Reading.Value));
        Assert.Equal(pitched + 2 * DayMs, _day.State.Ferment.Readings[0].AtMs);
        Assert.Equal(1.012, FermentFigures.Of(_day.State.Ferment)!.GravitySg.P50);
        Assert.Equal(new Decision.Refused("reading_before_pitch"), _day.Do(Gravity(1.020, pitched - 1)));
        Assert.Equal(new Decision.Refused("reading_in_future"), _day.Do(Gravity(1.011, _day.NowMs + 1)));
        // two days apart by their own days, not by when they were written down
        _day.Do(Gravity(1.012, _day.NowMs - 3 * DayMs));
        Assert.True(FermentFigures.Of(_day.State.Ferment)!.Steady);
    }

    /// <summary>Common practice, no source: no yeast ferments more than half within twelve hours.</summary>
    [Theory]
    [InlineData(1, 1.020, true)]
    [InlineData(1, 1.030, false)]
    [InlineData(13, 1.020, false)]
    public void A_gravity_too_low_too_soon_is_asked_about_once(double hours, double sg, bool asked)
    {
        _day.RunToEnd();
        _day.WaitUntil(_day.State.SecondsAt(_day.State.Ferment.PitchedMs!.Value) + 3600 * hours);
        var decision = _day.Do(Gravity(sg));
        Assert.Equal(asked, decision is Decision.TooSoon);
        if (decision is Decision.TooSoon soon)
        {
            Assert.Equal(hours, soon.Hours, 1e-3);
            Assert.InRange(soon.Attenuation, 0.5, 0.7);
            Assert.IsType<Decision.Accepted>(_day.Do(Gravity(sg) with { Confirmed = true }));
        }
        Assert.Single(_day.State.Ferment.Readings);
    }

    /// <summary>Common practice, no source.</summary>
    [Theory]
    [InlineData(19, 1.048, 14)]
    [InlineData(19, 1.071, 28)]
    [InlineData(15, 1.048, 14)]
    [InlineData(12, 1.048, 42)]
    [InlineData(12, 1.086, 42)]
    public void A_lager_and_a_strong_ale_are_packaged_later(double pitchC, double og, int days)
    {
        var state = new FermentState { PitchedMs = 0, PlannedOriginalSg = og, PlannedL = 40, Recipe = Demo.Amber with { Yeast = Demo.Amber.Yeast with { PitchC = pitchC } } };
        Assert.Equal(days * DayMs, DueDates.Of(state).Single(d => d.Kind == DueKind.Packaging).DueMs);
    }

    private void Fermented()
    {
        _day.RunToEnd();
        _day.Wait(15 * 1440);
    }

    private void Accepted(Packaging lot) => Assert.IsType<Decision.Accepted>(_day.Do(new RunCommand.After.Package(lot)));

    private static RunCommand.After.ReadFermenter Gravity(double sg, long takenMs) =>
        new(new FermenterReading(FermenterFigure.Gravity, sg, "typed") { TakenMs = takenMs });

    private static RunCommand.After.ReadFermenter Gravity(double sg) => new(new FermenterReading(FermenterFigure.Gravity, sg, "typed"));

    private static Recipe WithDryHops()
    {
        var recipe = Demo.Amber;
        return recipe with { Hops = recipe.Hops.Add(new HopAddition("Cascade", 80, 0.06, HopForm.Pellet, HopUse.DryHop, 4 * 1440)) };
    }
}
