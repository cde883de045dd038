using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Plant;
using BrewDeck.Tests.Planning;

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

    /// <summary>A large plate cooler would bring the wort down to its water: the tap is turned down, the wort runs on at its full flow.</summary>
    [Fact]
    public void AChillerThatIsTooLargeIsThrottledByItsWater()
    {
        var large = Quayside.Brewhouse with { Chiller = Quayside.Brewhouse.Chiller with { UaWPerK = 9000, WaterLPerMin = 20 } };
        var day = Hot(Quayside.Choices, large);
        var seconds = day.Do(CastOut(19));
        Assert.Equal(19, day.Plant.Fermenter.TempC, 0.3);
        Assert.InRange(seconds, 36 / 5.2 * 60, 42 / 5.0 * 60 + 60);
    }

    /// <summary>Wort weighs more than water: all of it but the dead space gets over, whatever its strength.</summary>
    [Fact]
    public void AllTheWortButTheDeadSpaceIsPumpedToTheWhirlpool()
    {
        var five = Demo.FiveVessels;
        var plant = new VirtualPlant(Quayside.Exact(five));
        plant.AddWater("kettle", 40, 98);
        plant.FinishPours();
        plant.AddExtract("kettle", 10, 0);
        var before = plant["kettle"].ColdL;

        plant.TransferWort("kettle", "whirlpool", 12);
        plant.Advance(600);

        Assert.Equal(five.Kettle.DeadSpaceL, plant["kettle"].ColdL, 0.05);
        Assert.Equal(before - five.Kettle.DeadSpaceL, plant["whirlpool"].ColdL, 0.2);
    }

    /// <summary>Round and round until it is pitchable: counterflow and coil alike, and the heat goes into the cooling water.</summary>
    [Theory]
    [InlineData(ChillerKind.Counterflow)]
    [InlineData(ChillerKind.Immersion)]
    public void WarmWortInTheFermenterIsChilledThere(ChillerKind kind)
    {
        var day = new HandMadeDay(Quayside.Exact(Quayside.Brewhouse with { Chiller = Quayside.Brewhouse.Chiller with { Kind = kind } }));
        day.Plant.AddWater(Quayside.Fermenter, 38, 26);
        day.Plant.FinishPours();
        var seconds = day.Do(HandMadeDay.Step("cool", StepKind.CoolInFermenter, Quayside.Fermenter) with { TargetC = 19 });
        Assert.InRange(seconds, 60, 3600);
        Assert.Equal(19, day.Plant.Fermenter.TempC, 0.5);
        Assert.Equal(0, day.Plant.HeatResidualJ, 1.0);
        day.Hands.Advance(600);
        Assert.Equal(19, day.Plant.Fermenter.TempC, 0.6);
    }

    [Fact]
    public void LeftToTheRoomItTakesHours()
    {
        var truth = Quayside.Exact();
        var day = new HandMadeDay(truth);
        day.Plant.AddWater(Quayside.Fermenter, 38, truth.AmbientC + 6);
        day.Plant.FinishPours();
        var step = HandMadeDay.Step("cool", StepKind.CoolInFermenter, Quayside.Fermenter) with { TargetC = truth.AmbientC + 4, Label = StepLabels.Room };
        Assert.True(day.Do(step) > 3600);
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

    private static HandMadeDay Hot(DayChoices choices, Brewhouse? house = null)
    {
        var day = new HandMadeDay(Quayside.Exact(house, choices));
        day.Plant.AddWater(Quayside.Boil, 40, 98);
        day.Plant.FinishPours();
        day.Plant.AddExtract(Quayside.Boil, 5, 0);
        return day;
    }

    private static StepSpec CastOut(double targetC) =>
        HandMadeDay.Step("cast-out", StepKind.CastOut, Quayside.Boil, Quayside.Fermenter) with { TargetC = targetC };
}
