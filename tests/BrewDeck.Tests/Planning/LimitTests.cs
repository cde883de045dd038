using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Planning;

/// <summary>Each limit tripped and just not tripped: the brewhouse is given a little more, then a little less than the day needs.</summary>
public sealed class LimitTests
{
    private static readonly Plan Usual = Demo.Plan();

    public static TheoryData<string> Names => ["mash_in_tun", "wort_in_kettle", "wort_in_fermenter", "sparge_liquor_in_tank", "mash_covers_elements", "wort_covers_elements", "evaporation", "circuit_A_for_liquor"];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_little_less_is_refused_by_name_and_a_little_more_is_not(string name)
    {
        var value = Usual.Limits.Single(l => l.Name == name).Value;
        var enough = Planner.Draw(With(name, value, 1.01), Demo.Amber, new DayChoices());
        var plan = Assert.IsType<PlanResult.Drawn>(enough).Plan;
        var limit = plan.Limits.Single(l => l.Name == name);
        Assert.InRange(limit.Margin, 0, 0.05 * Math.Max(1, limit.Bound));

        var little = Planner.Draw(With(name, value, 0.99), Demo.Amber, new DayChoices());
        var refusal = Assert.Single(Assert.IsType<PlanResult.Refused>(little).Refusals, r => r.Code == name);
        Assert.NotEmpty(refusal.Mends);
    }

    /// <summary>The house whose bound for a limit is so much of what the usual day needs.</summary>
    private static Brewhouse With(string name, double needs, double share) => name switch
    {
        "mash_in_tun" => Changed("tun", v => v with { CapacityL = v.HeadroomL + share * needs }),
        "wort_in_kettle" => Changed("kettle", v => v with { CapacityL = v.HeadroomL + share * needs }),
        "sparge_liquor_in_tank" => Changed("liquor", v => v with { CapacityL = v.HeadroomL + share * needs }),
        "wort_in_fermenter" => Demo.House with { Fermenter = Demo.House.Fermenter with { CapacityL = Demo.House.Fermenter.HeadspaceL + share * needs } },
        "mash_covers_elements" => Changed("tun", v => v with { Elements = [v.Elements[0] with { CoverL = needs / share }] }),
        "wort_covers_elements" => Changed("kettle", v => v with { Elements = [v.Elements[0] with { CoverL = needs / share }] }),
        "circuit_A_for_liquor" => Demo.House with { Circuits = [new Circuit("A", 240, share * 1000 * needs / 240, 1), .. Demo.House.Circuits.RemoveAt(0)] },
        // the bound is what the elements can raise: the habit is moved instead
        "evaporation" => Demo.House with { Habits = Demo.House.Habits with { EvaporationKgPerH = Bound("evaporation") * (2 - share) } },
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    [Fact]
    public void Strike_liquor_that_does_not_fit_is_refused()
    {
        // without a sparge all liquor is strike liquor
        var choices = new DayChoices { Sparge = SpargeMethod.None, BatchL = 25 };
        var needs = Demo.Plan(choices: choices).Limits.Single(l => l.Name == "strike_liquor_in_tank").Value;
        Assert.IsType<PlanResult.Drawn>(Planner.Draw(Changed("liquor", v => v with { CapacityL = v.HeadroomL + 1.01 * needs }), Demo.Amber, choices));
        var refused = Planner.Draw(Changed("liquor", v => v with { CapacityL = v.HeadroomL + 0.99 * needs }), Demo.Amber, choices);
        Assert.Contains(Assert.IsType<PlanResult.Refused>(refused).Refusals, r => r.Code == "strike_liquor_in_tank");
    }

    [Fact]
    public void A_mash_that_takes_all_the_water_is_refused() => Edge(
        thickness => Planner.Draw(Demo.House with { Habits = Demo.House.Habits with { MashThicknessLPerKg = thickness } }, Demo.Amber with { OriginalGravitySg = null }, new DayChoices { BatchL = 24 }),
        3, 8, "sparge_volume");

    [Fact]
    public void Wort_that_cannot_be_cooled_is_refused() =>
        Edge(celsius => Planner.Draw(Demo.House, Demo.Amber, new DayChoices { SourceWaterC = celsius }), 10, 25, "pitch_temperature");

    [Fact]
    public void A_vessel_that_loses_more_than_it_is_given_is_refused() => Edge(
        loss => Planner.Draw(Changed("liquor", v => v with { LossWPerK = loss }), Demo.Amber, new DayChoices()), 6, 300, "heats_to_target:liquor.heat-sparge");

    /// <summary>A stuck bed is a danger shown with its number, not a reason to send the brewer home.</summary>
    [Theory]
    [InlineData(1.01, true)]
    [InlineData(0.99, false)]
    public void A_weak_false_bottom_is_shown(double share, bool ok)
    {
        var needs = Usual.Limits.Single(l => l.Name == "false_bottom_load").Value;
        var plan = Demo.Plan(house: Changed("tun", v => v with { FalseBottom = v.FalseBottom! with { RatedLoadKg = share * needs } }));
        Assert.Equal(ok, plan.Limits.Single(l => l.Name == "false_bottom_load").Ok);
    }

    /// <summary>A house with five vessels: the mash is pumped to be lautered, the wort to settle.</summary>
    [Theory]
    [InlineData("mash_in_lauter_tun", "lauter")]
    [InlineData("wort_in_whirlpool", "whirlpool")]
    public void A_vessel_of_its_own_that_is_too_small_is_refused(string name, string vessel)
    {
        var needs = Demo.Plan(house: Demo.FiveVessels).Limits.Single(l => l.Name == name).Value;
        Brewhouse With(double share) => Demo.FiveVessels with
        {
            Vessels = [.. Demo.FiveVessels.Vessels.Select(v => v.Id == vessel ? v with { CapacityL = v.HeadroomL + share * needs } : v)],
        };
        Assert.InRange(Demo.Plan(house: With(1.01)).Limits.Single(l => l.Name == name).Margin, 0, 0.02 * needs);
        var refused = Assert.IsType<PlanResult.Refused>(Planner.Draw(With(0.99), Demo.Amber, new DayChoices()));
        Assert.NotEmpty(Assert.Single(refused.Refusals, r => r.Code == name).Mends);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void As_many_circuits_as_there_are_may_be_used(int circuits) =>
        Assert.Equal(circuits, Demo.Plan(choices: new DayChoices { Circuits = circuits }).Choices.Circuits);

    [Theory]
    [InlineData(0, "circuits")]
    [InlineData(4, "circuits")]
    public void There_are_as_many_circuits_as_there_are(int circuits, string code) =>
        Assert.Equal(code, Assert.Single(Refused(new DayChoices { Circuits = circuits })).Code);

    [Fact]
    public void Rests_that_the_tun_cannot_reach_are_refused()
    {
        var cold = Changed("tun", v => v with { Elements = [] });
        Assert.Contains(Assert.IsType<PlanResult.Refused>(Planner.Draw(cold, Demo.Amber, new DayChoices())).Refusals, r => r.Code == "tun_cannot_heat");
        Assert.IsType<PlanResult.Drawn>(Planner.Draw(cold, Demo.Amber with { Rests = [Demo.Amber.Rests[0]] }, new DayChoices()));
    }

    private static IEnumerable<Refusal> Refused(DayChoices choices) =>
        Assert.IsType<PlanResult.Refused>(Planner.Draw(Demo.House, Demo.Amber, choices)).Refusals;

    private static double Bound(string name) => Usual.Limits.Single(l => l.Name == name).Bound;

    private static Brewhouse Changed(string id, Func<Vessel, Vessel> change) =>
        Demo.House with { Vessels = [.. Demo.House.Vessels.Select(v => v.Id == id ? change(v) : v)] };

    /// <summary>Between what is drawn and what is refused lies one number, and it is refused for that reason alone.</summary>
    private static void Edge(Func<double, PlanResult> draw, double good, double bad, string code)
    {
        Assert.IsType<PlanResult.Drawn>(draw(good));
        for (var i = 0; i < 20; i++)
        {
            var middle = 0.5 * (good + bad);
            if (draw(middle) is PlanResult.Drawn)
                good = middle;
            else
                bad = middle;
        }
        var refused = Assert.IsType<PlanResult.Refused>(draw(bad));
        Assert.True(refused.Refusals.Any(r => r.Code == code), string.Create(CultureInfo.InvariantCulture, $"at {bad}: {string.Join(", ", refused.Refusals.Select(r => r.Code))}"));
    }
}
