using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Tests.Planning;

/// <summary>Each limit is tripped by a plant a little too small for it, and holds on one a little larger.</summary>
public class LimitTests
{
    private static Limit Named(string name, Brewhouse? house = null, Recipe? recipe = null, DayChoices? choices = null) =>
        Planner.LimitsOf(house ?? Demo.House, recipe ?? Demo.Amber, choices ?? new DayChoices()).Single(l => l.Name == name);

    private static Brewhouse With(string id, Func<Vessel, Vessel> change) =>
        Demo.House with { Vessels = [.. Demo.House.Vessels.Select(v => v.Id == id ? change(v) : v)] };

    /// <summary>The plant is made to fit by a hair, then to miss by a hair.</summary>
    [Theory]
    [InlineData("strike_liquor_in_tank", "liquor")]
    [InlineData("sparge_liquor_in_tank", "liquor")]
    [InlineData("mash_in_tun", "tun")]
    [InlineData("wort_in_kettle", "kettle")]
    public void A_vessel_is_too_small_by_as_much_as_does_not_fit(string name, string vessel)
    {
        var needs = Named(name).Value;
        Brewhouse Holding(double litres) => With(vessel, v => v with { CapacityL = litres + v.HeadroomL });
        Assert.True(Named(name, Holding(needs + 0.01)).Ok);
        var tripped = Named(name, Holding(needs - 0.01));
        Assert.False(tripped.Ok);
        Assert.Equal(-0.01, tripped.Margin, 1e-3);
        Refused(name, Holding(needs - 0.01));
    }

    [Fact]
    public void A_fermenter_is_too_small_by_what_the_foam_needs()
    {
        var needs = Named("wort_in_fermenter").Value;
        Assert.InRange(needs, 39.9, 40.1);
        Brewhouse Holding(double litres) => Demo.House with { Fermenter = new Fermenter("tank", litres + 8, 8) };
        Assert.True(Named("wort_in_fermenter", Holding(needs + 0.01)).Ok);
        Refused("wort_in_fermenter", Holding(needs - 0.01));
    }

    [Theory]
    [InlineData("wort_covers_elements", "kettle")]
    [InlineData("mash_covers_elements", "tun")]
    public void An_element_that_stands_out_of_the_liquid_is_refused(string name, string vessel)
    {
        var least = Named(name).Value;
        Brewhouse Covered(double litres) =>
            With(vessel, v => v with { Elements = [v.Elements[0] with { CoverL = litres }] });
        Assert.True(Named(name, Covered(least - 0.5)).Ok);
        Refused(name, Covered(least + 0.5));
    }

    [Fact]
    public void A_circuit_carries_its_elements_or_not()
    {
        Brewhouse Wired(double amps) => Demo.House with { Circuits = [Demo.House.Circuits[0] with { Amps = amps }, .. Demo.House.Circuits[1..]] };
        // 5500 W over 240 V and a share of 0.8
        Assert.True(Named("circuit_A_for_liquor", Wired(28.7)).Ok);
        Refused("circuit_A_for_liquor", Wired(28.6));
    }

    [Fact]
    public void More_steam_than_the_element_raises_is_refused()
    {
        var most = Named("evaporation").Bound;
        Assert.InRange(most, 6, 9);
        Brewhouse Steaming(double kgPerH) => Demo.House with { Habits = Demo.House.Habits with { EvaporationKgPerH = kgPerH } };
        Assert.True(Named("evaporation", Steaming(most - 0.05)).Ok);
        Refused("evaporation", Steaming(most + 0.05));
    }

    [Fact]
    public void A_false_bottom_that_the_pump_can_crush_is_told_but_not_refused()
    {
        var load = Named("false_bottom_load").Value;
        Brewhouse Rated(double kg) => With("tun", v => v with { FalseBottom = new FalseBottom(0.39, kg) });
        Assert.True(Named("false_bottom_load", Rated(load + 1)).Ok);
        Assert.False(Demo.Plan(house: Rated(load - 1)).Limits.Single(l => l.Name == "false_bottom_load").Ok);
    }

    [Fact]
    public void A_mash_that_leaves_no_sparge_is_refused()
    {
        Brewhouse Thick(double litresPerKg) => Demo.House with { Habits = Demo.House.Habits with { MashThicknessLPerKg = litresPerKg } };
        Assert.True(Named("sparge_volume", Thick(4)).Ok);
        var soup = Planner.LimitsOf(Thick(9) with { Vessels = Roomy() }, Demo.Amber, new DayChoices()).Single(l => l.Name == "sparge_volume");
        Assert.InRange(soup.Value, -60, -1);
        Assert.False(soup.Ok);
    }

    [Fact]
    public void Tap_water_too_warm_for_the_yeast_is_refused()
    {
        Assert.True(Named("pitch_temperature", choices: new DayChoices { SourceWaterC = 14 }).Ok);
        Refused("pitch_temperature", choices: new DayChoices { SourceWaterC = 21 });
    }

    [Fact]
    public void A_coil_never_chills_below_its_water()
    {
        var coil = Demo.House with { Chiller = Demo.House.Chiller with { Kind = ChillerKind.Immersion } };
        Assert.DoesNotContain(Demo.Plan(house: coil).Limits, l => l.Name.StartsWith("chills", StringComparison.Ordinal));
        Refused("chills_to_target:cool.chill", coil, choices: new DayChoices { SourceWaterC = 19.3 });
    }

    [Fact]
    public void Strike_liquor_hotter_than_water_gets_is_refused()
    {
        Brewhouse Heavy(double joulePerK) => With("tun", v => v with { HeatCapacityJPerK = joulePerK });
        Assert.True(Named("strike_temperature", Heavy(7000)).Ok);
        Refused("strike_temperature", Heavy(70_000));
    }

    [Fact]
    public void An_element_too_weak_to_get_there_is_refused()
    {
        Brewhouse Weak(double watts) => With("kettle", v => v with { Elements = [v.Elements[0] with { PowerW = watts }] });
        Refused("heats_to_target:boil.heat", Weak(300));
    }



    private static System.Collections.Immutable.ImmutableArray<Vessel> Roomy() => [.. Demo.House.Vessels.Select(v => v with { CapacityL = 400 })];

    private static void Refused(string code, Brewhouse? house = null, DayChoices? choices = null)
    {
        var refused = Assert.IsType<PlanResult.Refused>(Planner.Draw(house ?? Demo.House, Demo.Amber, choices ?? new DayChoices()));
        var refusal = Assert.Single(refused.Refusals, r => r.Code == code);
        Assert.NotEmpty(refusal.Mends);
    }
}
