using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Planning;

/// <summary>What is refused before anything is worked out.</summary>
public class RefusalTests
{
    private static Refusal Only(string code, Recipe? recipe = null, DayChoices? choices = null, Brewhouse? house = null)
    {
        var result = Planner.Draw(house ?? Demo.House, recipe ?? Demo.Amber, choices ?? new DayChoices());
        var refusal = Assert.Single(Assert.IsType<PlanResult.Refused>(result).Refusals);
        Assert.Equal(code, refusal.Code);
        return refusal;
    }

    [Fact]
    public void A_recipe_without_rests_is_no_mash() => Only("no_mash", Demo.Amber with { Rests = [] });

    [Fact]
    public void A_recipe_of_sugar_alone_is_no_mash() =>
        Only("no_mash", Demo.Amber with { Grist = [new GristLine("sugar", 5, 1, 0, 0, GristUse.Kettle)] });

    [Theory]
    [InlineData(0)]
    [InlineData(4)]
    public void Sockets_that_the_brewhouse_does_not_have(int circuits)
    {
        var refusal = Only("circuits", choices: new DayChoices { Circuits = circuits });
        Assert.Equal((circuits, 3), (refusal.Value, refusal.Bound));
        Assert.Equal(new Mend("circuits_in_use", 3, ""), refusal.Mends[0]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(double.NaN)]
    public void A_batch_of_nothing(double litres) => Only("batch_volume", choices: new DayChoices { BatchL = litres });

    /// <summary>A chiller is throttled to its target, so a limit that holds grows no wider with colder water: the search once went past it to 2 °C.</summary>
    [Theory]
    [InlineData(12, 16)]
    [InlineData(13, 16)]
    [InlineData(14, 16)]
    [InlineData(12, 14)]
    public void Water_is_asked_no_colder_than_the_chiller_needs_it(double pitchC, double sourceC)
    {
        var recipe = Demo.Amber with { Yeast = Demo.Amber.Yeast with { PitchC = pitchC } };
        var refused = Assert.IsType<PlanResult.Refused>(Planner.Draw(Demo.House, recipe, new DayChoices { SourceWaterC = sourceC }));
        var colder = refused.Refusals.Single(r => r.Code == LimitName.PitchTemperature).Mends.Single(m => m.Code == MendCode.ColderWater).Value;
        Assert.InRange(colder, pitchC - 1, pitchC + 0.5);
        Assert.IsType<PlanResult.Drawn>(Planner.Draw(Demo.House, recipe, new DayChoices { SourceWaterC = colder }));
    }

    [Fact]
    public void A_recipe_for_nothing() => Only("batch_volume", Demo.Amber with { BatchL = 0 });

    [Fact]
    public void A_rest_below_the_last() =>
        Only("rest_below_the_last", Demo.Amber with { Rests = [new MashRest("one", 66, 30), new MashRest("two", 60, 30)] });

    [Fact]
    public void Two_rests_in_a_tun_that_cannot_heat()
    {
        var house = Demo.House with { Vessels = [.. Demo.House.Vessels.Select(v => v.Id == "tun" ? v with { Elements = [] } : v)] };
        Only("tun_cannot_heat", house: house);
        Demo.Plan(Demo.Amber with { Rests = [Demo.Amber.Rests[0]] }, house: house);
    }

    /// <summary>A single rest is kept by the coil too.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_coil_that_the_brewhouse_does_not_have(int rests)
    {
        var refusal = Only("no_coil", Demo.Amber with { Rests = [.. Demo.Amber.Rests.Take(rests)] }, new DayChoices { MashHeating = MashHeating.Coil });
        Assert.Equal("This brewhouse has no coil in a hot liquor tank to heat the mash through.", RefusalWords.Of(refusal, Notation.Metric));
        Assert.Equal("Heat the mash in another way: by its own heat, hot water or decoction.", RefusalWords.Mends(refusal, Notation.Metric));
    }

    [Fact]
    public void A_wort_that_is_only_brought_to_the_boil_can_be_planned()
    {
        var plan = Demo.Plan(Demo.Amber with { BoilMin = 0, BitternessIbu = null });
        Assert.DoesNotContain(plan.Steps, s => s.Spec.Kind == StepKind.Boil);
        Assert.InRange(plan.Totals.BitternessIbu, 0.1, 25);
    }
}
