using BrewDeck.Core.Planning;
using CsCheck;

namespace BrewDeck.Tests.Laws;

/// <summary>Sensible days: winter and summer, the coast and the mountains, every way to sparge.</summary>
internal static class AnyChoices
{
    public static readonly Gen<DayChoices> All =
        from source in Gen.Double[4, 16]
        from ambient in Gen.Double[8, 28]
        from grain in Gen.Double[8, 25]
        from altitude in Gen.Double[0, 2000]
        from sparge in Gen.Enum<SpargeMethod>()
        select new DayChoices { SourceWaterC = source, AmbientC = ambient, GrainC = grain, AltitudeM = altitude, Sparge = sparge };
}
