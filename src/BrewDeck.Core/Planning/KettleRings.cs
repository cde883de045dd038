using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Core.Planning;

/// <summary>Extension rings of the kettle: no more are put on than the wort needs.</summary>
internal static class KettleRings
{
    public static PlanResult Fewest(Brewhouse house, Func<Brewhouse, PlanResult> draw) => Fewest(house, draw, LacksRoom);

    /// <param name="lacksRoom">Whether the kettle was too small.</param>
    public static T Fewest<T>(Brewhouse house, Func<Brewhouse, T> draw, Func<T, bool> lacksRoom)
    {
        var result = draw(house);
        for (var rings = 1; rings <= house.Kettle.Rings && lacksRoom(result); rings++)
            result = draw(With(house, rings));
        return result;
    }

    private static bool LacksRoom(PlanResult result) =>
        result is PlanResult.Refused refused && refused.Refusals.Any(r => r.Code == LimitName.WortInKettle);

    private static Brewhouse With(Brewhouse house, int rings)
    {
        var kettle = house.Kettle;
        var raised = kettle with { CapacityL = kettle.CapacityL + rings * kettle.RingL, Rings = kettle.Rings - rings, RingsOn = rings };
        return house with { Vessels = house.Vessels.Replace(kettle, raised) };
    }
}
