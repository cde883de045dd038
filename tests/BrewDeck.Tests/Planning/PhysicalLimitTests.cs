using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Tests.Planning;

/// <summary>What no plant can do: liquor hotter than the boil, wort colder than the water that cools it, less than no sparge.</summary>
public class PhysicalLimitTests
{
    [Theory]
    [InlineData(7_000, true)]
    [InlineData(70_000, false)]
    public void Strike_liquor_hotter_than_water_gets_is_refused(double tunJPerK, bool ok)
    {
        var house = Demo.House with
        {
            Vessels = [.. Demo.House.Vessels.Select(v => v.Id == "tun" ? v with { HeatCapacityJPerK = tunJPerK } : v)],
        };
        Assert.Equal(ok, Limit("strike_temperature", house).Ok);
        Assert.Equal(ok, !Codes(house).Contains("strike_temperature"));
    }

    [Theory]
    [InlineData(12, true)]
    [InlineData(19.3, false)]
    public void A_coil_never_chills_below_its_water(double sourceC, bool ok)
    {
        var coil = Demo.House with { Chiller = Demo.House.Chiller with { Kind = ChillerKind.Immersion } };
        Assert.Equal(ok, !Codes(coil, new DayChoices { SourceWaterC = sourceC }).Contains("chills_to_target:cool.chill"));
    }

    [Fact]
    public void An_element_too_weak_to_get_there_never_gets_there()
    {
        var weak = Demo.House with
        {
            Vessels = [.. Demo.House.Vessels.Select(v => v.Id == "kettle" ? v with { Elements = [v.Elements[0] with { PowerW = 300 }] } : v)],
        };
        var limit = Limit("heats_to_target:boil.heat", weak);
        // 285 W net against 7 W/K: some 40 K over the room
        Assert.InRange(limit.Value, 50, 75);
        Assert.Contains("heats_to_target:boil.heat", Codes(weak));
    }

    /// <summary>The number says by how many litres the mash alone gives too much.</summary>
    [Fact]
    public void A_mash_that_leaves_no_sparge_says_how_much_is_too_much()
    {
        var soup = Demo.House with
        {
            Habits = Demo.House.Habits with { MashThicknessLPerKg = 9 },
            Vessels = [.. Demo.House.Vessels.Select(v => v with { CapacityL = 400 })],
            Fermenter = new Fermenter("vat", 400, 10),
        };
        var surplus = -Limit("sparge_volume", soup).Value;
        Assert.InRange(surplus, 5, 60);
        var larger = Planner.LimitsOf(soup, AsWritten with { BatchL = 40 + surplus, Grist = [.. AsWritten.Grist] }, new DayChoices())
            .Single(l => l.Name == "sparge_volume");
        // the same grist for as much more wort
        Assert.InRange(larger.Value, -0.05 * surplus, 0.05 * surplus);
    }

    private static readonly Recipe AsWritten = Demo.Amber with { OriginalGravitySg = null };

    private static Limit Limit(string name, Brewhouse house) =>
        Planner.LimitsOf(house, AsWritten, new DayChoices()).Single(l => l.Name == name);

    private static IEnumerable<string> Codes(Brewhouse house, DayChoices? choices = null) =>
        Planner.Draw(house, Demo.Amber, choices ?? new DayChoices()) is PlanResult.Refused refused ? refused.Refusals.Select(r => r.Code) : [];
}
