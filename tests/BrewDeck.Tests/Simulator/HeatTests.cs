using BrewDeck.Core.Planning;
using BrewDeck.Simulator.Plant;
using CsCheck;

namespace BrewDeck.Tests.Simulator;

public sealed class HeatTests
{
    [Fact]
    public void HeatingTakesWhatTheMassTimesTheRiseAsksFor()
    {
        var plant = Filled(40);
        var start = plant[Quayside.Liquor].TempC;
        plant.Heat(Quayside.Liquor, 150, 3450);
        plant.Advance(1800);
        var ideal = 3450 * 0.97 * 1800 / (40 * 0.998 * 4190 + 6000);
        // the rest goes to the room: under 4 W/K over at most 35 K
        Assert.InRange(plant[Quayside.Liquor].TempC - start, 0.96 * ideal, ideal);
    }

    [Fact]
    public void MorePowerIsNeverSlower() =>
        Gen.Select(Gen.Double[500, 3400], Gen.Double[0, 1000], Gen.Double[12, 60]).Sample((watts, more, litres) =>
            Assert.True(SecondsTo(60, litres, watts + more) <= SecondsTo(60, litres, watts)), iter: 30);

    [Fact]
    public void NoElementIsOnBelowItsCover()
    {
        var plant = Filled(7);
        plant.Heat(Quayside.Liquor, 150, 3450);
        plant.Advance(600);
        Assert.Equal(0, plant.Ledger.ElementsJ);
    }

    [Fact]
    public void ABreakerLimitsWhatHangsOnIt()
    {
        var weak = Quayside.Brewhouse with { Circuits = [new("A", 230, 15, 1), new("B", 230, 10, 1)] };
        var plant = new VirtualPlant(Quayside.Exact(weak));
        plant.FillFromTap(Quayside.Mash, 20, 10);
        plant.Advance(180);
        plant.Heat(Quayside.Mash, 150, 3450);
        plant.Advance(60);
        Assert.Equal(230 * 10 * 60 * 0.97, plant.Ledger.ElementsJ, 1.0);
    }

    [Fact]
    public void CoolingEndsAtTheRoomAndNeverBelow() =>
        Gen.Select(Gen.Double[0, 35], Gen.Double[40, 95], Gen.Double[2, 60]).Sample((ambient, hot, litres) =>
        {
            var plant = new VirtualPlant(Quayside.Exact(choices: Quayside.Choices with { AmbientC = ambient }));
            plant.Lid(Quayside.Boil, 0);
            plant.AddWater(Quayside.Mash, litres, hot);
            for (var i = 0; i < 200; i++)
            {
                plant.Advance(1200);
                Assert.True(plant.Tun.TempC >= ambient - 1e-9 && plant.Tun.WallC >= ambient - 1e-9);
            }
        }, iter: 20);

    [Fact]
    public void TheProfilesLossIsCountedFromTheLiquid()
    {
        var plant = new VirtualPlant(Quayside.Exact());
        plant.AddWater(Quayside.Mash, 40, 70);
        plant.Advance(1200);
        double before = plant.Tun.TempC, vapour = plant.Ledger.VapourJ, stored = plant.Tun.HeatJ;
        plant.Advance(600);
        var lostW = (stored - plant.Tun.HeatJ - (plant.Ledger.VapourJ - vapour)) / 600;
        Assert.Equal(4, lostW / (0.5 * (before + plant.Tun.TempC) - 18), 0.1);
    }

    [Theory]
    [InlineData(0, 99.5, 100.6)]
    [InlineData(2000, 92.8, 93.9)]
    public void ABoilStaysAtTheBoilingPointOfTheAltitude(double altitudeM, double low, double high)
    {
        var plant = new VirtualPlant(Quayside.Exact(choices: Quayside.Choices with { AltitudeM = altitudeM }));
        plant.AddWater(Quayside.Boil, 40, 85);
        plant.AddExtract(Quayside.Boil, 5, 0);
        plant.Heat(Quayside.Boil, 150, 5500);
        plant.Advance(3600);
        Assert.InRange(plant.Kettle.TempC, low, high);
        Assert.True(plant.Ledger.VapourKg > 2);
    }

    [Fact]
    public void TheUsualBoilLosesWhatTheProfileSays()
    {
        var day = new HandMadeDay(Quayside.Exact());
        day.Plant.AddWater(Quayside.Boil, 40, 99);
        day.Plant.AddExtract(Quayside.Boil, 5, 0);
        day.Do(HandMadeDay.Step("heat", StepKind.HeatToBoil, Quayside.Boil));
        var before = day.Plant.Ledger.VapourKg;
        day.Do(HandMadeDay.Step("boil", StepKind.Boil, Quayside.Boil) with { Minutes = 60 });
        Assert.Equal(5, day.Plant.Ledger.VapourKg - before, 0.15);
    }

    private static double SecondsTo(double celsius, double litres, double watts)
    {
        var plant = Filled(litres);
        plant.Heat(Quayside.Liquor, 150, watts);
        while (plant[Quayside.Liquor].TempC < celsius && plant.NowS < 200_000)
            plant.Advance(VirtualPlant.StepS);
        return plant.NowS;
    }

    private static VirtualPlant Filled(double litres)
    {
        var plant = new VirtualPlant(Quayside.Exact());
        plant.FillFromTap(Quayside.Liquor, litres, 10);
        plant.FinishPours();
        return plant;
    }
}
