using BrewDeck.Simulator.Plant;
using CsCheck;

namespace BrewDeck.Tests.Simulator;

public sealed class HopTests
{
    /// <summary>A constant boil in a full kettle must land on the curve that the scale is defined by.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(15)]
    [InlineData(60)]
    [InlineData(90)]
    public void AtTheBoilTheScaleIsTheTinsethCurve(double minutes)
    {
        var expected = 1.65 * Math.Pow(0.000125, 0.050) * (1 - Math.Exp(-0.04 * minutes)) / 4.15 * 3000 / 40;
        Assert.Equal(expected, Ibu(minutes, 100, 1.050), 0.01);
    }

    [Fact]
    public void CoolerWortAndStrongerWortAreNeverMoreBitter() =>
        Gen.Select(Gen.Double[1, 90], Gen.Double[70, 99], Gen.Double[0, 1], Gen.Double[1.03, 1.08], Gen.Double[0, 0.02]).Sample(
            (minutes, celsius, warmer, sg, more) =>
            {
                Assert.True(Ibu(minutes, celsius, sg) <= Ibu(minutes, celsius + warmer, sg) + 1e-9);
                Assert.True(Ibu(minutes, celsius, sg + more) <= Ibu(minutes, celsius, sg) + 1e-9);
            }, iter: 50);

    [Fact]
    public void WhatStaysInTheKettleBittersNothing()
    {
        var hops = Boiled(60, 100, 1.05);
        hops.Leave(0.5, 0.4);
        hops.Leave(0.5, 0.5);
        Assert.Equal(Ibu(60, 100, 1.05) * (0.4 + 0.25), hops.BitternessIbu(40), 1e-9);
    }

    [Fact]
    public void TheMountainTakesBitterness() => Assert.True(BrewedIbu(2500) < 0.9 * BrewedIbu(0));

    private static double BrewedIbu(double altitudeM)
    {
        var day = new HandMadeDay(Quayside.Exact(choices: Quayside.Choices with { AltitudeM = altitudeM }));
        day.Plant.AddWater(Quayside.Boil, 42, 85);
        day.Plant.AddExtract(Quayside.Boil, 6, 0);
        day.DoAll(HandMadeDay.FromBoil());
        return day.Plant.BitternessIbu;
    }

    private static double Ibu(double minutes, double celsius, double sg)
    {
        var hops = Boiled(minutes, celsius, sg);
        hops.Leave(1, 1);
        return hops.BitternessIbu(40);
    }

    private static HopBoil Boiled(double minutes, double celsius, double sg)
    {
        var hops = new HopBoil();
        hops.Add(0.04, 3);
        for (var i = 0; i < 100; i++)
            hops.Pass(minutes * 60 / 100, celsius, sg);
        return hops;
    }
}
