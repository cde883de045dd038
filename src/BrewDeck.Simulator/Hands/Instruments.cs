using System.Globalization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running;
using BrewDeck.Simulator.Nature;
using BrewDeck.Simulator.Plant;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Hands;

/// <summary>
/// What the brewer can see of the plant: dials and glasses with the bias of the day, readings with noise and rounded as their scales
/// allow.
/// </summary>
public sealed class Instruments(VirtualPlant plant)
{
    private readonly Chance _noise = new(plant.Truth.Seed, "readings");

    private InstrumentTruth Truth => plant.Truth.Instruments;

    /// <summary>The thermometer of a vessel, °C.</summary>
    public double ShownC(string vesselId) => plant[vesselId].ProbeC;

    /// <summary>The sight glass of a vessel, litres as they stand, grain included.</summary>
    public double ShownL(string vesselId)
    {
        var tank = plant[vesselId];
        return tank.LiquidKg <= 0 ? 0 : Math.Max(0, tank.StandsL * tank.Truth.SightScale + tank.Truth.SightOffsetL);
    }

    /// <summary>The sight glass reckoned to 20 °C as for water.</summary>
    public double ShownColdL(string vesselId) =>
        ShownL(vesselId) * Liquids.WaterKgPerL(ShownC(vesselId)) / Liquids.WaterKgPerL(Liquids.ReferenceC);

    /// <summary>Takes a reading; null where there is nothing to read.</summary>
    public Reading? Read(ReadingKind kind, string vesselId)
    {
        var value = kind switch
        {
            ReadingKind.Temperature => Temperature(vesselId),
            ReadingKind.Ph => Acidity(vesselId),
            _ when !plant.Has(vesselId) || plant[vesselId].LiquidKg <= 0 => double.NaN,
            ReadingKind.Volume => Rounded(Math.Max(0, ShownL(vesselId) + Noise(Spreads.SightNoise)), 0.1),
            ReadingKind.Gravity => Gravity(vesselId),
            ReadingKind.Weight => Rounded(Mass(plant[vesselId]) * Truth.ScaleFactor + Noise(Spreads.ScaleNoise), 0.005),
            _ => double.NaN,
        };
        return double.IsNaN(value) ? null : Written(kind, vesselId, value);
    }

    private Reading Written(ReadingKind kind, string vesselId, double value) =>
        new(kind, vesselId, value, value.ToString(kind == ReadingKind.Gravity ? "0.0000" : "0.0##", CultureInfo.InvariantCulture))
        {
            AtC = kind == ReadingKind.Volume ? Rounded(ShownC(vesselId), 0.1) : null,
        };

    private double Temperature(string of) => Rounded(Noise(Spreads.ThermometerNoise) + of switch
    {
        Places.Grain => plant.Truth.GrainC,
        Places.Source => plant.Truth.SourceWaterC,
        Places.Room => plant.Truth.AmbientC,
        _ => plant.Has(of) ? ShownC(of) : double.NaN,
    }, 0.1);

    /// <summary>Cold wort goes into the hydrometer's jar, hot wort as drops on the refractometer.</summary>
    private double Gravity(string vesselId)
    {
        var tank = plant[vesselId];
        return vesselId == Places.Fermenter
            ? Rounded(tank.GravitySg + Truth.HydrometerBiasSg + Noise(Spreads.HydrometerNoise), 0.0005)
            : double.IsNaN(plant.Faults.SampleC) ? RefractometerSg(tank)
            : HotSampleSg(tank, plant.Faults.SampleC);
    }

    /// <summary>The hydrometer is made for 20 °C: hot wort carries it less, so it sinks and shows less.</summary>
    private double HotSampleSg(Tank tank, double sampleC) => Rounded(
        tank.GravitySg * Liquids.WaterKgPerL(sampleC) / Liquids.WaterKgPerL(Liquids.ReferenceC)
            + Truth.HydrometerBiasSg + Noise(Spreads.HydrometerNoise),
        0.0005);

    private double RefractometerSg(Tank tank)
    {
        var percent = tank.Plato + Truth.RefractometerBiasPercent + Noise(Spreads.RefractometerNoise);
        percent = Rounded(Math.Max(0, percent), 0.1);
        return Rounded(Liquids.GravitySg(100 - percent, percent), 0.0001);
    }

    /// <summary>Falls a little from mash to cold wort; tap water is common practice, no source.</summary>
    private double Acidity(string of)
    {
        var acidity = of == Places.Source ? 7.5
            : !plant.Has(of) ? double.NaN
            : plant[of] == plant.Tun ? plant.Truth.MashPh
            : plant.Truth.MashPh - 0.2;
        return Rounded(acidity + Truth.PhBias + Noise(Spreads.PhNoise), 0.01);
    }

    private static double Mass(Tank tank) => tank.LiquidKg + tank.GrainKg;

    private double Noise(Spread spread) => Truth.NoiseFactor * spread.Sd * _noise.Normal();

    private static double Rounded(double value, double to) => Math.Round(value / to) * to;
}
