namespace BrewDeck.Tests.Simulator;

public sealed class ConservationTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(77)]
    public void AWholeDayLosesNoWaterExtractOrHeat(int seed)
    {
        var day = new HandMadeDay(Quayside.Drawn(seed), steadiness: 1);
        foreach (var spec in HandMadeDay.Whole())
        {
            day.Do(spec);
            Assert.Equal(0, day.Plant.WaterResidualKg, 1e-9);
            Assert.Equal(0, day.Plant.DryResidualKg, 1e-9);
            // of some 40 MJ that pass through
            Assert.Equal(0, day.Plant.HeatResidualJ, 1.0);
        }
        Assert.True(day.Plant.Ledger.ElementsJ > 2e7 && day.Plant.Fermenter.ColdL > 30);
    }

    [Fact]
    public void ABatchSpargeAndACoilLoseNothingEither()
    {
        var coil = Quayside.Brewhouse with { Chiller = new(Core.Brewhouses.ChillerKind.Immersion, 700, 10, 6) };
        var day = new HandMadeDay(Quayside.Exact(coil));
        day.DoAll(HandMadeDay.UntilRunOff());
        day.DoAll(LauterTests.BatchSparge());
        day.DoAll(HandMadeDay.FromBoil()[..^1]);
        day.Do(HandMadeDay.Step("chill", Core.Planning.StepKind.ChillInKettle, Quayside.Boil) with { TargetC = 20 });
        day.Do(HandMadeDay.FromBoil()[^1]);
        Assert.InRange(day.Plant.Fermenter.TempC, 18.5, 20.3);
        Assert.Equal(0, day.Plant.WaterResidualKg, 1e-9);
        Assert.Equal(0, day.Plant.DryResidualKg, 1e-9);
        Assert.Equal(0, day.Plant.HeatResidualJ, 1.0);
    }

    [Fact]
    public void ExtractEndsInWortSpentGrainAndLosses()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(HandMadeDay.Whole());
        var plant = day.Plant;
        var dissolved = plant.Tun.ExtractKg + plant.Kettle.ExtractKg + plant.Fermenter.ExtractKg + plant.Ledger.LinesExtractKg;
        Assert.InRange(dissolved, 0.98 * 7.68 * 0.96, 7.68 * 0.96 + 1e-9);
        Assert.Equal(10 - 0.4 - dissolved, plant.Tun.GrainKg, 1e-9);
    }
}
