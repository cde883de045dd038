using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Hands;
using BrewDeck.Simulator.Plant;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Tests.Simulator;

public sealed class InstrumentTests
{
    private const int Days = 1500;

    [Fact]
    public void ThermometersAreRightOnAverage() => Unbiased(
        ReadingKind.Temperature, Quayside.Boil, p => p.Kettle.TempC, Spreads.ThermometerBias.Sd, Spreads.ThermometerNoise.Sd);

    [Fact]
    public void SightGlassesAreRightOnAverage() => Unbiased(
        ReadingKind.Volume, Quayside.Boil, p => p.Kettle.StandsL, 40 * Spreads.SightScale.Sd, Spreads.SightOffset.Sd, Spreads.SightNoise.Sd);

    [Fact]
    public void RefractometersAreRightOnAverage() => Unbiased(
        ReadingKind.Gravity, Quayside.Boil, p => p.Kettle.GravitySg, 0.00415 * Spreads.RefractometerBias.Sd, 0.00415 * Spreads.RefractometerNoise.Sd);

    [Fact]
    public void HydrometersAreRightOnAverage() => Unbiased(
        ReadingKind.Gravity, Quayside.Fermenter, p => p.Fermenter.GravitySg, Spreads.HydrometerBias.Sd, Spreads.HydrometerNoise.Sd);

    [Fact]
    public void WithoutErrorTheyShowTheTruthToTheirScale()
    {
        var plant = Wort(Quayside.Exact());
        var dials = new Instruments(plant);
        Assert.Equal(plant.Kettle.TempC, dials.Read(ReadingKind.Temperature, Quayside.Boil)!.Value, 0.051);
        Assert.Equal(plant.Kettle.ColdL, dials.ShownColdL(Quayside.Boil), 0.05);
    }

    [Fact]
    public void AnEmptyVesselGivesNoReading()
    {
        var dials = new Instruments(new VirtualPlant(Quayside.Exact()));
        Assert.Null(dials.Read(ReadingKind.Volume, Quayside.Fermenter));
        Assert.Null(dials.Read(ReadingKind.Gravity, "nowhere"));
    }

    [Fact]
    public void RoomTapAndGrainHaveTheirTemperature()
    {
        var dials = new Instruments(new VirtualPlant(Quayside.Exact()));
        var usual = new DayChoices();
        Assert.Equal([usual.AmbientC, usual.SourceWaterC, usual.GrainC], new[] { "room", "source", "grain" }.Select(v => Math.Round(dials.Read(ReadingKind.Temperature, v)!.Value, 6)));
    }

    private static void Unbiased(ReadingKind kind, string vessel, Func<VirtualPlant, double> truth, params double[] spreads)
    {
        var errors = Enumerable.Range(0, Days).Select(seed =>
        {
            var plant = Wort(Quayside.Drawn(seed));
            return new Instruments(plant).Read(kind, vessel)!.Value - truth(plant);
        }).ToList();
        var sd = Math.Sqrt(spreads.Sum(s => s * s));
        Assert.InRange(errors.Average(), -4 * sd / Math.Sqrt(Days), 4 * sd / Math.Sqrt(Days));
        // rounding to the scale adds a little
        Assert.InRange(Math.Sqrt(errors.Average(e => e * e)), 0.9 * sd, 1.15 * sd);
    }

    private static VirtualPlant Wort(HiddenTruth truth)
    {
        var plant = new VirtualPlant(truth);
        foreach (var vessel in new[] { Quayside.Boil, Quayside.Fermenter })
        {
            plant.AddWater(vessel, 37, 60);
            plant.FinishPours();
            plant.AddExtract(vessel, 5, 0);
        }
        return plant;
    }
}
