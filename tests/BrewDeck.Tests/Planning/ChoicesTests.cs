using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Tests.Planning;

public class ChoicesTests
{
    private static readonly Recipe AsWritten = Demo.Amber with { OriginalGravitySg = null, BitternessIbu = null };

    [Fact]
    public void A_stronger_bag_of_hops_is_weighed_lighter_for_bittering_and_not_for_aroma()
    {
        var choices = new DayChoices();
        choices = choices with { MeasuredAlpha = choices.MeasuredAlpha.Add("bittering", 0.08).Add("aroma", 0.07) };
        var (usual, strong) = (Demo.Plan(AsWritten).Recipe.Hops, Demo.Plan(AsWritten, choices).Recipe.Hops);
        Assert.Equal(usual[0].MassG * 0.06 / 0.08, strong[0].MassG, 6);
        Assert.Equal(usual[1].MassG, strong[1].MassG, 6);
    }

    [Fact]
    public void What_is_on_hand_brings_as_much_extract_as_what_it_replaces()
    {
        var choices = new DayChoices();
        var poorer = new GristLine("old malt", 0, 0.75, 0.06, 6, GristUse.Mash);
        choices = choices with { GristOnHand = choices.GristOnHand.Add("pale malt", poorer) };
        var (usual, other) = (Demo.Plan(AsWritten).Recipe.Grist[0], Demo.Plan(AsWritten, choices).Recipe.Grist[0]);
        Assert.Equal("old malt", other.Name);
        Assert.Equal(usual.ExtractKg, other.ExtractKg, 9);
        Assert.True(other.MassKg > usual.MassKg);
    }

    /// <summary>Dry hops are dosed in g/L (common practice, no source): neither a stronger bag nor a brewhouse that wants more bitter hops moves that.</summary>
    [Fact]
    public void Dry_hops_go_with_the_litres_alone()
    {
        var dry = Demo.Amber with { Hops = [.. Demo.Amber.Hops, new HopAddition("aroma", 80, 0.05, HopForm.Pellet, HopUse.DryHop, 0)] };
        var choices = new DayChoices { BatchL = 30 };
        choices = choices with { MeasuredAlpha = choices.MeasuredAlpha.Add("bittering", 0.03).Add("aroma", 0.12) };

        var plan = Demo.Plan(dry, choices);

        Assert.Equal(80 / dry.BatchL, plan.Recipe.Hops[^1].MassG / 30, 1e-9);
        Assert.NotEqual(dry.Hops[1].MassG / dry.BatchL, plan.Recipe.Hops[1].MassG / 30, 0.1);
    }

    [Fact]
    public void The_day_s_formula_decides_the_hops_for_a_wanted_bitterness()
    {
        var bitterOnly = Demo.Amber with { Hops = [Demo.Amber.Hops[0]] };
        var rager = Demo.Plan(bitterOnly, new DayChoices { Bitterness = BitternessFormula.Rager });
        Assert.Equal(30, rager.Totals.BitternessIbu, 4);
        // Rager's utilisation for an hour is about 0.30, Tinseth's about 0.24: fewer grams give the same number
        Assert.InRange(rager.Recipe.Hops[0].MassG / Demo.Plan(bitterOnly).Recipe.Hops[0].MassG, 0.7, 0.9);
    }
}
