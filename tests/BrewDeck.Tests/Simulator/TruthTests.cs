using BrewDeck.Simulator.Truth;
using Xunit;

namespace BrewDeck.Tests.Simulator;

public sealed class TruthTests
{
    [Fact]
    public void ASeedIsADay()
    {
        Assert.Equal(Day(5), Day(5));
        Assert.NotEqual(Day(5), Day(6));
    }

    [Fact]
    public void DrawsLieAroundTheProfileByTheStatedSpread()
    {
        var losses = Enumerable.Range(0, 2000).Select(i => Quayside.Drawn(i).Bed.AbsorptionLPerKg).ToList();
        var mean = losses.Average();
        Assert.Equal(1, mean, 4 * Spreads.Absorption.Sd / Math.Sqrt(2000));
        var sd = Math.Sqrt(losses.Average(l => (l - mean) * (l - mean)));
        Assert.Equal(Spreads.Absorption.Sd, sd, 0.1 * Spreads.Absorption.Sd);
    }

    [Fact]
    public void ParametersAreDrawnApart()
    {
        var pairs = Enumerable.Range(0, 2000).Select(Quayside.Drawn)
            .Select(t => (X: t.TrubL / 1.5 - 1, Y: t.LineLossL - 1)).ToList();
        var correlation = pairs.Average(p => p.X * p.Y)
            / Math.Sqrt(pairs.Average(p => p.X * p.X) * pairs.Average(p => p.Y * p.Y));
        Assert.InRange(correlation, -0.09, 0.09);
    }

    [Fact]
    public void AHopNameHasOneLot()
    {
        var truth = Quayside.Drawn(3);
        Assert.Equal(truth.AlphaFactor("Saaz"), truth.AlphaFactor("Saaz"));
        Assert.NotEqual(truth.AlphaFactor("Saaz"), truth.AlphaFactor("Fuggle"));
    }

    [Fact]
    public void WithoutSpreadTheTruthIsTheProfile()
    {
        var truth = Quayside.Exact();
        Assert.Equal((5, 1.5, 900, 0), (truth.EvaporationKgPerH, truth.TrubL, truth.Chiller.UaWPerK, truth.Instruments.HydrometerBiasSg));
    }

    [Fact]
    public void EverySpreadHasItsOwnName() => Assert.Distinct(Spreads.All.Select(s => s.Name));

    private static (double Litres, double Sg, double Ibu, double Seconds) Day(int seed)
    {
        var day = new HandMadeDay(Quayside.Drawn(seed), steadiness: 1);
        day.DoAll(HandMadeDay.Whole());
        return (day.Plant.Fermenter.ColdL, day.Plant.Fermenter.GravitySg, day.Plant.BitternessIbu, day.Plant.NowS);
    }
}
