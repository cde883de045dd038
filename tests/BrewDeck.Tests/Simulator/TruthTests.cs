using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Truth;

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
    public void ABrewhouseStaysWhileItsDaysDiffer()
    {
        var same = Enumerable.Range(0, 1500).Select(i => (A: OnHouse(i, 1), B: OnHouse(i, 2))).ToList();

        // each share of the variance that stays is the correlation between two days
        Assert.Equal(1 - Spreads.ConversionYield.DayShare, Correlation(same.Select(p => (p.A.ConversionYield, p.B.ConversionYield))), 0.05);
        Assert.Equal(1 - Spreads.RunoffFlow.DayShare, Correlation(same.Select(p => (p.A.RunoffLPerMin, p.B.RunoffLPerMin))), 0.06);
        Assert.Equal(0, Correlation(same.Select(p => (p.A.AirPa, p.B.AirPa))), 0.08);
        Assert.Equal(OnHouse(3, 1).Tanks.Select(t => t.DeadSpaceL), OnHouse(3, 2).Tanks.Select(t => t.DeadSpaceL));
    }

    [Fact]
    public void ADayOfABrewhouseIsSpreadLikeAnyDay()
    {
        var draws = Enumerable.Range(0, 2000).Select(i => OnHouse(i, i).Bed.AbsorptionLPerKg).ToList();
        var sd = Math.Sqrt(draws.Average(d => (d - draws.Average()) * (d - draws.Average())));
        Assert.Equal(Spreads.Absorption.Sd, sd, 0.1 * Spreads.Absorption.Sd);
    }

    [Fact]
    public void AHopNameHasOneLot()
    {
        var truth = Quayside.Drawn(3);
        Assert.Equal(truth.AlphaFactor("Saaz"), truth.AlphaFactor("Saaz"));
        Assert.NotEqual(truth.AlphaFactor("Saaz"), truth.AlphaFactor("Fuggle"));
        Assert.Equal(1, HiddenTruth.AsProfile(truth.Profile, new DayChoices()).AlphaFactor("Saaz"));
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

    private static HiddenTruth OnHouse(int house, int day) =>
        HiddenTruth.Draw(Quayside.Brewhouse, new Core.Planning.DayChoices(), house, 10_000 * day + house);

    private static double Correlation(IEnumerable<(double X, double Y)> pairs)
    {
        var all = pairs.ToList();
        double x = all.Average(p => p.X), y = all.Average(p => p.Y);
        return all.Average(p => (p.X - x) * (p.Y - y))
            / Math.Sqrt(all.Average(p => (p.X - x) * (p.X - x)) * all.Average(p => (p.Y - y) * (p.Y - y)));
    }
}
