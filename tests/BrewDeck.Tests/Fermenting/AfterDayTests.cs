using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Planning;
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
        _day.ReadOff(ReadingKind.Volume, PlantSetting.FermenterId, 0);
        var read = _day.Expected(ReadingKind.Gravity, PlantSetting.FermenterId) + 0.004;
        _day.Read(ReadingKind.Gravity, PlantSetting.FermenterId, read);
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

        _day.Read(ReadingKind.Gravity, PlantSetting.FermenterId, 1.047);
        Assert.Equal((1.047, 0.0), (_day.State.Ferment.MeasuredOriginalSg!.Value, _day.State.Ferment.ThinnedByL));
    }

    [Fact]
    public void What_was_written_can_be_taken_back()
    {
        _day.RunToEnd();
        _day.Do(Gravity(1.014));
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

    private static RunCommand.After.ReadFermenter Gravity(double sg) => new(new FermenterReading(FermenterFigure.Gravity, sg, "typed"));

    private static Recipe WithDryHops()
    {
        var recipe = Demo.Amber;
        return recipe with { Hops = recipe.Hops.Add(new HopAddition("Cascade", 80, 0.06, HopForm.Pellet, HopUse.DryHop, 4 * 1440)) };
    }
}
