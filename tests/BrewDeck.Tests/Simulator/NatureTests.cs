using BrewDeck.Simulator.Nature;

namespace BrewDeck.Tests.Simulator;

/// <summary>The rehearsal's own fits against tables that they were not made from.</summary>
public sealed class NatureTests
{
    [Theory]
    [InlineData(4, 0.99997)]
    [InlineData(20, 0.99820)]
    [InlineData(60, 0.98320)]
    [InlineData(80, 0.97179)]
    [InlineData(100, 0.95835)]
    public void WaterWeighsWhatTheSteamTablesSay(double celsius, double kgPerL) =>
        Assert.Equal(kgPerL, Liquids.WaterKgPerL(celsius), 3e-4);

    [Theory]
    [InlineData(5, 1.0197)]
    [InlineData(10, 1.0400)]
    [InlineData(12, 1.0484)]
    [InlineData(20, 1.0830)]
    public void WortHasTheGravityOfItsExtract(double percent, double sg) =>
        Assert.Equal(sg, Liquids.GravitySg(100 - percent, percent), 3e-4);

    [Fact]
    public void GravityIsWeighedInAirAsEveryInstrumentHasIt()
    {
        var ofMasses = 100 / Liquids.ColdL(88, 12) / Liquids.WaterKgPerL(Liquids.ReferenceC);
        Assert.Equal(0.00006, Liquids.GravitySg(88, 12) - ofMasses, 0.000005);
    }

    [Theory]
    [InlineData(20, 2339)]
    [InlineData(60, 19_946)]
    [InlineData(90, 70_182)]
    [InlineData(100, 101_418)]
    public void SaturationFollowsTheSteamTables(double celsius, double pascal) =>
        Assert.InRange(Vapours.SaturationPa(celsius) / pascal, 0.99, 1.01);

    [Theory]
    [InlineData(0, 100.0)]
    [InlineData(1500, 94.9)]
    [InlineData(3000, 90.0)]
    public void WaterBoilsLowerUpTheMountain(double altitudeM, double celsius) =>
        Assert.Equal(celsius, Vapours.BoilingC(Vapours.AirPa(altitudeM)), 0.25);

    /// <summary>Hot as cold: a sight glass of boiling wort is read by this. ICUMSA SPS-4 (Bubnik, Kadlec, Urban, Bruhns 1995), kg/m³.</summary>
    [Theory]
    [InlineData(5, 60, 1002.21)]
    [InlineData(10, 40, 1031.39)]
    [InlineData(10, 80, 1010.25)]
    [InlineData(12, 75, 1021.41)]
    [InlineData(20, 80, 1051.63)]
    public void WortIsAsLightAsTheSugarTablesSay(double percent, double celsius, double kgPerM3) =>
        Assert.Equal(kgPerM3, 100_000 / Liquids.VolumeL(100 - percent, percent, celsius), 0.4);

    /// <summary>Radiation between 100 and 20 °C: a black surface emits 1,099.4 and 418.7 W/m² then (CODATA 2018, by hand); the film is the rest.</summary>
    [Fact]
    public void AnOpenSurfaceGivesOffWhatItRadiatesAndWhatTheAirTakes() =>
        Assert.Equal(0.96 * (1099.4 - 418.7) + 8 * 80, Vapours.SurfaceWPerM2(100, 20), 1.0);

    [Fact]
    public void WortShrinksByAboutFourPercentOnCooling()
    {
        var shrinks = 1 - Liquids.ColdL(88, 12) / Liquids.VolumeL(88, 12, 100);
        Assert.InRange(shrinks, 0.035, 0.045);
    }
}
