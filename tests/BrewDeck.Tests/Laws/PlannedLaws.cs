using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>A drawn plan gives what was asked for.</summary>
public class PlannedLaws
{
    [Fact]
    public void Most_sensible_days_can_be_brewed()
    {
        var (asked, drawn) = (0, 0);
        AnyDay.All.Sample(
            d =>
            {
                Interlocked.Increment(ref asked);
                if (d.Plan() is not null)
                    Interlocked.Increment(ref drawn);
            },
            iter: 100);
        Assert.InRange(drawn, asked / 2, asked);
    }

    [Fact]
    public void A_plan_gives_the_volume_the_gravity_and_the_bitterness_asked_for() => AnyDay.Brewable.Sample(
        p =>
        {
            var (day, totals) = (p.Day, p.Plan.Totals);
            Assert.Equal(day.Choices.BatchL!.Value, totals.FermenterL, 0.002);
            if (day.Recipe.OriginalGravitySg is { } sg)
                Assert.Equal(sg, totals.OriginalGravitySg, 0.00001);
            if (day.Recipe.BitternessIbu is { } ibu)
                Assert.Equal(ibu, totals.BitternessIbu, 0.01);
        },
        iter: 40);
}
