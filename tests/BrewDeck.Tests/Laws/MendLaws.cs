using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>A refusal names the number that failed, and its advice is worth taking.</summary>
public class MendLaws
{
    /// <summary>Days that go beyond the plant in one way or another.</summary>
    private static readonly Gen<Day> TooMuch =
        from day in AnyDay.All
        from share in Gen.Double[0.25, 1.6]
        from points in Gen.Double[1, 1.8]
        from source in Gen.Double[4, 24]
        select day with
        {
            Recipe = day.Recipe with { OriginalGravitySg = 1 + points * ((day.Recipe.OriginalGravitySg ?? 1.048) - 1) },
            Choices = day.Choices with { BatchL = share * day.Choices.BatchL, SourceWaterC = source },
        };

    [Fact]
    public void Taking_the_first_mend_puts_an_end_to_that_refusal()
    {
        var tried = 0;
        TooMuch.Sample(
            day =>
            {
                if (day.Draw() is not PlanResult.Refused refused)
                    return;
                foreach (var refusal in refused.Refusals)
                {
                    Assert.NotEmpty(refusal.Mends);
                    Assert.True(double.IsFinite(refusal.Value) && double.IsFinite(refusal.Bound), refusal.ToString());
                    if (With(day, refusal.Mends[0]) is not { } mended)
                        continue;
                    Interlocked.Increment(ref tried);
                    if (mended.Draw() is PlanResult.Refused again)
                        Assert.DoesNotContain(again.Refusals, r => r.Code == refusal.Code);
                }
            },
            iter: 60);
        Assert.InRange(tried, 3, int.MaxValue);
    }

    /// <summary>A day on which each round asked for more grist and a sparge of less than nothing, until the lauter of such a sheet did not end.</summary>
    [Fact]
    public void A_sparge_of_less_than_nothing_is_refused_and_not_reckoned_on()
    {
        var refused = Assert.IsType<PlanResult.Refused>(TooMuch.Generate(new PCG(3, 12345), null, out _).Draw());
        var sparge = Assert.Single(refused.Refusals, r => r.Code == "sparge_volume");
        Assert.InRange(sparge.Value, -200, -1);
        Assert.Equal(0, sparge.Bound);
    }

    [Theory]
    [InlineData(SpargeMethod.Fly)]
    [InlineData(SpargeMethod.Batch)]
    [InlineData(SpargeMethod.None)]
    public void A_batch_beyond_the_kettle_is_refused_with_the_litres_that_fit(SpargeMethod sparge)
    {
        var day = new Day(Planning.Demo.House, Planning.Demo.Amber, new DayChoices { BatchL = 66, Sparge = sparge });
        var refused = Assert.IsType<PlanResult.Refused>(day.Draw());
        var kettle = Assert.Single(refused.Refusals, r => r.Code == "wort_in_kettle");
        Assert.Equal(65, kettle.Bound);
        Assert.InRange(kettle.Value, 65.1, 85);
        Assert.Equal("smaller_batch", kettle.Mends[0].Code);
        // nothing given away: a litre more would be refused again
        var more = day with { Choices = day.Choices with { BatchL = kettle.Mends[0].Value + 1 } };
        Assert.Contains(Assert.IsType<PlanResult.Refused>(more.Draw()).Refusals, r => r.Code == "wort_in_kettle");
    }

    private static Day? With(Day day, Mend mend) => mend.Code switch
    {
        "smaller_batch" or "larger_batch" => day with { Choices = day.Choices with { BatchL = mend.Value } },
        "thicker_mash" or "thinner_mash" => Habit(day, h => h with { MashThicknessLPerKg = mend.Value }),
        "lower_evaporation" => Habit(day, h => h with { EvaporationKgPerH = mend.Value }),
        "colder_water" => day with { Choices = day.Choices with { SourceWaterC = mend.Value } },
        "fly_sparge" => day with { Choices = day.Choices with { Sparge = SpargeMethod.Fly } },
        "no_sparge" => day with { Choices = day.Choices with { Sparge = SpargeMethod.None } },
        "circuits_in_use" => day with { Choices = day.Choices with { Circuits = (int)mend.Value } },
        _ => null,
    };

    private static Day Habit(Day day, Func<Habits, Habits> change) => day with { House = day.House with { Habits = change(day.House.Habits) } };
}
