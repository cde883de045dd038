using BrewDeck.Core.Physics;
using BrewDeck.Core.Waters;

namespace BrewDeck.Tests.Waters;

public class WaterIonsTests
{
    /// <summary>Salts are neutral: each brings as many mEq of cations as of anions.</summary>
    [Theory]
    [InlineData(BrewingSalt.Gypsum)]
    [InlineData(BrewingSalt.CalciumChlorideDihydrate)]
    [InlineData(BrewingSalt.CalciumChlorideAnhydrous)]
    [InlineData(BrewingSalt.EpsomSalt)]
    [InlineData(BrewingSalt.MagnesiumChlorideHexahydrate)]
    [InlineData(BrewingSalt.TableSalt)]
    [InlineData(BrewingSalt.BakingSoda)]
    [InlineData(BrewingSalt.Chalk)]
    [InlineData(BrewingSalt.SlakedLime)]
    public void Salts_are_neutral(BrewingSalt salt)
    {
        var ions = WaterIons.Of(salt, 1);
        Assert.True(ions.CationsMEqPerL > 5);
        Assert.Equal(ions.CationsMEqPerL, ions.AnionsMEqPerL, 1e-9);
    }

    [Fact]
    public void Potassium_is_refused_because_it_is_not_kept_account_of() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterIons.Of(BrewingSalt.PotassiumChloride, 1));

    /// <summary>Kolbach 1953, in ion form: alkalinity 100, Ca 50, Mg 10 give 58.44 mg/L as CaCO3.</summary>
    [Fact]
    public void Residual_alkalinity() =>
        Assert.Equal(58.44, new WaterIons(50, 10, 0, 0, 0, 100).ResidualAlkalinityAsCaCO3, 0.3);

    /// <summary>Alkalinity 123 as CaCO3 is 150 mg/L of bicarbonate.</summary>
    [Fact]
    public void Bicarbonate_is_alkalinity_in_another_unit_and_never_negative()
    {
        Assert.Equal(150, new WaterIons(0, 0, 0, 0, 0, 123).BicarbonateMgPerL, 0.2);
        Assert.Equal(0, WaterIons.OfAcid(1).BicarbonateMgPerL);
        Assert.Equal(-50.04, WaterIons.OfAcid(1).AlkalinityAsCaCO3, 0.01);
    }

    [Fact]
    public void Without_chloride_there_is_no_ratio() => Assert.Null(new WaterIons(0, 0, 0, 0, 50, 0).SulphateToChloride);

    /// <summary>Total strength of the reference rows: mass fraction times density over molar mass.</summary>
    [Theory]
    [InlineData(AcidKind.Lactic, 0.88, 11.78, 0.05)]
    [InlineData(AcidKind.Lactic, 0.80, 10.57, 0.05)]
    [InlineData(AcidKind.Lactic, 0.10, 1.13, 0.05)]
    [InlineData(AcidKind.Phosphoric, 0.10, 1.07, 0.03)]
    [InlineData(AcidKind.Phosphoric, 0.75, 12.08, 0.03)]
    [InlineData(AcidKind.Phosphoric, 0.85, 14.62, 0.03)]
    public void Strength_follows_from_the_label(AcidKind kind, double fraction, double mmolPerMl, double tolerance) =>
        Assert.Equal(mmolPerMl, new AcidOnHand(kind, fraction).MmolPerMl, tolerance);

    /// <summary>Protons at pH 5.4 of the reference rows.</summary>
    [Theory]
    [InlineData(AcidKind.Lactic, 0.88, 11.45, 0.08)]
    [InlineData(AcidKind.Phosphoric, 0.10, 1.09, 0.05)]
    [InlineData(AcidKind.Phosphoric, 0.75, 12.26, 0.05)]
    public void Protons_at_mash_pH(AcidKind kind, double fraction, double mEqPerMl, double tolerance) =>
        Assert.Equal(mEqPerMl, new AcidOnHand(kind, fraction).MEqPerMl(5.4), tolerance);

    [Fact]
    public void An_analysis_that_does_not_balance_is_told()
    {
        Assert.InRange(Given.Tap.Imbalance, 0, 0.05);
        Assert.InRange((Given.Tap with { Ions = Given.Tap.Ions with { AlkalinityAsCaCO3 = 20 } }).Imbalance, 0.2, 1);
    }
}
