using BrewDeck.Core.Recipes;

namespace BrewDeck.Tests.Planning;

/// <summary>
/// Which hops are weighed anew so that the wanted bitterness is met: those that bitter, for the late ones are there for their aroma (common
/// practice, no source).
/// </summary>
public class HopFitTests
{
    [Theory]
    [InlineData(20)]
    [InlineData(30)]
    [InlineData(60)]
    public void Late_hops_keep_their_mass_for_each_litre(double ibu)
    {
        var recipe = Demo.Amber with { BitternessIbu = ibu };
        var plan = Demo.Plan(recipe);
        var litres = plan.Totals.FermenterL / recipe.BatchL;

        Assert.Equal(ibu, plan.Totals.BitternessIbu, 0.01);
        foreach (var (written, fitted) in recipe.Hops.Zip(plan.Recipe.Hops).Where(h => h.First.Minutes < 20))
            Assert.Equal(written.MassG * litres, fitted.MassG, 0.01);
        var bittering = plan.Recipe.Hops.Single(h => h is { Use: HopUse.Boil, Minutes: 60 }).MassG;
        var asWritten = Demo.Plan(recipe with { BitternessIbu = null }).Totals.BitternessIbu;
        Assert.Equal(ibu < asWritten, bittering < recipe.Hops[0].MassG * litres);
    }

    /// <summary>A beer that takes next to all its bitterness late has nothing else to weigh anew.</summary>
    [Theory]
    [InlineData(5, true)]
    [InlineData(30, false)]
    public void Where_the_late_hops_alone_bitter_too_much_all_are_weighed_alike(double ibu, bool bitters)
    {
        var recipe = Demo.Amber with
        {
            BitternessIbu = ibu,
            Hops = [.. Demo.Amber.Hops.Where(h => bitters || h.Minutes < 20)],
        };
        var plan = Demo.Plan(recipe);
        var factors = recipe.Hops.Zip(plan.Recipe.Hops, (written, fitted) => fitted.MassG / written.MassG).ToList();

        Assert.Equal(ibu, plan.Totals.BitternessIbu, 0.01);
        Assert.All(factors, f => Assert.Equal(factors[0], f, 1e-9 * factors[0]));
        Assert.NotEqual(plan.Totals.FermenterL / recipe.BatchL, factors[0], 0.1);
    }
}
