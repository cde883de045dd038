using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Waters;
using CsCheck;

namespace BrewDeck.Tests.Waters;

public class MashAcidityTests
{
    /// <summary>A brewing-guild course: 5.7 to 5.8.</summary>
    [Fact]
    public void Pilsner_malt_in_distilled_water() =>
        Assert.InRange(MashAcidity.Ph([Given.Malt(5, 3.5)], 15, default), 5.7, 5.8);

    /// <summary>Kolbach 1953: 10 German degrees of residual alkalinity, 0.3 of pH.</summary>
    [Fact]
    public void Ten_degrees_of_residual_alkalinity_raise_the_pH_as_Kolbach_found()
    {
        var water = new WaterIons(0, 0, 0, 0, 0, 10 * WaterChemistry.GermanDegreeAsCaCO3);
        var rise = MashAcidity.Ph([Given.Malt(5, 3.5)], 15, water) - MashAcidity.Ph([Given.Malt(5, 3.5)], 15, default);
        Assert.Equal(0.3, rise, 0.001);
    }

    /// <summary>Common practice: one per cent of acidulated malt lowers the pH by a tenth.</summary>
    [Fact]
    public void One_per_cent_of_acidulated_malt_lowers_the_pH_by_a_tenth()
    {
        var without = MashAcidity.Ph([Given.Malt(10, 3.5)], 30, default);
        var with = MashAcidity.Ph([Given.Malt(9.9, 3.5), Given.Malt(0.1, 3.5, MaltKind.Acidulated)], 30, default);
        Assert.Equal(0.1, without - with, 0.01);
    }

    [Theory]
    [InlineData(null, 6.0, 5.70)]
    [InlineData(null, 16.0, 5.50)]
    [InlineData(null, 28.0, 5.30)]
    [InlineData(null, 120.0, 4.94)]
    [InlineData(null, 1300.0, 4.70)]
    [InlineData(MaltKind.Wheat, 4.0, 5.95)]
    [InlineData(MaltKind.Crystal, 30.0, 5.21)]
    public void Malts_by_colour_or_as_stated(MaltKind? kind, double ebc, double ph) =>
        Assert.Equal(ph, MashAcidity.Ph([Given.Malt(3, ebc, kind)], 9, default), 0.005);

    [Fact]
    public void Residual_alkalinity_for_a_pH_gives_that_pH() =>
        Gen.Select(Gen.Double[5, 6], Gen.Double[10, 60], Gen.Double[0, 2], Gen.Double[2, 12]).Sample((ph, litres, dark, pale) =>
        {
            GristLine[] grist = [Given.Malt(pale, 5), Given.Malt(dark, 150), Given.Malt(0.2, 1200)];
            var residual = MashAcidity.ResidualAlkalinityFor(grist, litres, ph);
            Assert.Equal(ph, MashAcidity.Ph(grist, litres, new WaterIons(0, 0, 0, 0, 0, residual)), 1e-9);
        });

    [Fact]
    public void Kettle_sugar_does_not_count() => Assert.Equal(
        MashAcidity.Ph([Given.Malt(5, 3.5)], 15, default),
        MashAcidity.Ph([Given.Malt(5, 3.5), Given.Malt(1, 400) with { Use = GristUse.Kettle }], 15, default));

    [Fact]
    public void Calcium_lowers_and_dark_malt_lowers() => Gen.Select(Gen.Double[0, 200], Gen.Double[1, 100], Gen.Double[0.1, 2]).Sample((ca, more, dark) =>
    {
        GristLine[] pale = [Given.Malt(8, 6)];
        WaterIons Water(double calcium) => new(calcium, 5, 10, 20, 20, 150);
        var ph = MashAcidity.Ph(pale, 24, Water(ca));
        Assert.True(MashAcidity.Ph(pale, 24, Water(ca + more)) < ph);
        Assert.True(MashAcidity.Ph([.. pale, Given.Malt(dark, 120)], 24, Water(ca)) < ph);
    });
}
