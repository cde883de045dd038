using BrewDeck.Core.Physics;
using static BrewDeck.Core.Learning.InstrumentErrors;

namespace BrewDeck.Core.Learning;

/// <summary>The kettle's volume falling over the boil: evaporation, by a straight line through its readings.</summary>
internal static class BoilEvidence
{
    /// <summary>What steams off between the end of the lauter and the boil is not known better, and much the same each time; L.</summary>
    private const double HeatUpSteamL = 0.1;

    public static IEnumerable<Evidence> Of(BatchTrace batch)
    {
        if (BoiledOff.Of(batch.Final) is not { } off)
            yield break;
        yield return batch.Says(
            LessonParameters.Evaporation, off.KgPerH, off.SdKgPerH,
            Root(VolumeScaleFraction * off.KgPerH / (Water.DensityKgPerM3(20) / 1000), HeatUpSteamL / off.OverH),
            new DrivingReading("kettle_before_l", off.BeforeL), new DrivingReading("kettle_after_l", off.AfterL), new DrivingReading("boiled_h", off.BoiledH))
            with
        { LeftOut = off.LeftOut };
    }
}
