using BrewDeck.Simulator.Plant;

namespace BrewDeck.Tests.Simulator;

public sealed class MashTests
{
    [Theory]
    [InlineData(66, 60, 0.975, 1.0)]
    [InlineData(66, 30, 0.90, 0.98)]
    [InlineData(72, 30, 0.90, 1.0)]
    [InlineData(50, 30, 0.20, 0.40)]
    [InlineData(85, 60, 0.20, 0.75)]
    public void ConversionTakesHalfAnHourToAnHourInTheUsualRange(double celsius, double minutes, double low, double high)
    {
        var grist = new Grist();
        grist.Add(10, 7);
        for (var i = 0; i < minutes; i++)
            grist.Pass(60, celsius, 1);
        Assert.InRange(1 - grist.UndissolvedKg / 7, low, high);
    }

    [Fact]
    public void StrikeLiquorMeetsAColdTunAndColdGrain()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(HandMadeDay.UntilRest());
        // 30 L at 74.4 °C, 10 kg of malt at 18 °C, 6 kJ/K of steel: 66 °C within a degree
        Assert.InRange(day.Plant.Tun.TempC, 65, 67);
    }

    [Fact]
    public void AThermostatHoldsTheRestWhereTheTunHasItsOwnSocket()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.DoAll(HandMadeDay.UntilRest());
        day.Do(HandMadeDay.Step("rest", Core.Planning.StepKind.Rest, Quayside.Mash) with { Minutes = 60, TargetC = 66 });
        Assert.Equal(66, day.Plant.Tun.TempC, 0.25);
    }
}
