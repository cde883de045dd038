using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;

namespace BrewDeck.Core.Running.Ensemble;

/// <summary>What a reading is off by chance: noise of the eye and the steps of the scale.</summary>
public static class ReadingErrors
{
    /// <summary>A step of the scale is an even spread.</summary>
    private static readonly double _evenSd = 1 / Math.Sqrt(12);

    /// <summary>Standard deviation in the canonical unit of the kind; NaN where no spread is stated.</summary>
    public static double SdOf(ReadingKind kind, string vessel, double value) => kind switch
    {
        ReadingKind.Volume => Both(UsualSpreads.SightNoise.Sd, 0.1),
        ReadingKind.Temperature => Both(UsualSpreads.ThermometerNoise.Sd, 0.1),
        ReadingKind.Gravity when vessel == Places.Fermenter => Both(UsualSpreads.HydrometerNoise.Sd, 0.0005),
        ReadingKind.Gravity => SgPerPercent(value) * Both(UsualSpreads.RefractometerNoise.Sd, 0.1),
        _ => double.NaN,
    };

    /// <summary>Change of SG with a percent of extract.</summary>
    public static double SgPerPercent(double sg)
    {
        var plato = SugarSolution.PlatoFromSg(sg);
        return SugarSolution.SgFromPlato(plato + 0.5) - SugarSolution.SgFromPlato(plato - 0.5);
    }

    private static double Both(double noise, double scaleStep) =>
        Math.Sqrt(UsualSpreads.CutSd * noise * UsualSpreads.CutSd * noise + _evenSd * scaleStep * _evenSd * scaleStep);
}
