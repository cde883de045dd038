using BrewDeck.Core.Planning;

namespace BrewDeck.Tests.Simulator;

public sealed class ChillTests
{
    [Fact]
    public void ACapableChillerHitsThePitchingTemperature()
    {
        var day = Hot(Quayside.Choices);
        var seconds = day.Do(CastOut(19));
        Assert.Equal(19, day.Plant.Fermenter.TempC, 0.3);
        Assert.InRange(seconds, 36 / 5.2 * 60, 1800);
    }

    [Fact]
    public void NoChillerBeatsItsWater()
    {
        var day = Hot(Quayside.Choices with { SourceWaterC = 24, AmbientC = 24 });
        day.Do(CastOut(18));
        Assert.InRange(day.Plant.Fermenter.TempC, 24, 30);
    }

    [Fact]
    public void WarmWaterMakesItSlower()
    {
        var cold = Hot(Quayside.Choices with { SourceWaterC = 5 }).Do(CastOut(20));
        var warm = Hot(Quayside.Choices with { SourceWaterC = 17 }).Do(CastOut(20));
        Assert.True(warm > cold);
    }

    [Fact]
    public void KettleHosesAndTrubKeepTheirShare()
    {
        var day = Hot(Quayside.Choices);
        var before = day.Plant.Kettle.ColdL;
        day.Do(CastOut(19));
        Assert.Equal(1.5 + 1.5, day.Plant.Kettle.ColdL, 0.05);
        Assert.Equal(before - 3 - 1, day.Plant.Fermenter.ColdL, 0.1);
    }

    private static HandMadeDay Hot(DayChoices choices)
    {
        var day = new HandMadeDay(Quayside.Exact(choices: choices));
        day.Plant.AddWater(Quayside.Boil, 40, 98);
        day.Plant.FinishPours();
        day.Plant.AddExtract(Quayside.Boil, 5, 0);
        return day;
    }

    private static StepSpec CastOut(double targetC) =>
        HandMadeDay.Step("cast-out", StepKind.CastOut, Quayside.Boil, Quayside.Fermenter) with { TargetC = targetC };
}
