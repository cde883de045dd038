using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Tests.Planning;

/// <summary>Random three-vessel brewhouses, recipes and days around the invented Quayside; most of them can be brewed.</summary>
internal static class AnyDay
{
    public static (Brewhouse House, Recipe Recipe, DayChoices Choices) Of(int seed)
    {
        var random = new Random(seed);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        var circuits = random.Next(1, 4);
        var house = Demo.House with
        {
            Vessels =
            [
                .. Demo.House.Vessels.Select(v => v with
                {
                    CapacityL = v.CapacityL * Between(1.1, 1.5), LossWPerK = Between(2, 9), DeadSpaceL = Between(0.2, 3),
                    Elements = [.. v.Elements.Select(e => e with { PowerW = Between(2800, 5700), CoverL = Between(4, 12) })],
                }),
            ],
            Circuits = [.. "ABC".Select(c => new Circuit(c.ToString(), 240, random.Next(2) == 0 ? 30 : 32, 0.8, random.Next(1, 3)))],
            Habits = Demo.House.Habits with
            {
                MashThicknessLPerKg = Between(2.5, 3.5),
                RunoffLPerMin = Between(0.8, 3),
                EvaporationKgPerH = Between(1.5, 3.5),
                SpargeStages = Between(1, 4),
            },
        };
        var recipe = Demo.Amber with
        {
            OriginalGravitySg = Between(1.040, 1.058),
            BoilMin = random.Next(30, 91),
            Rests = [.. Rests(random)],
            Hops = [.. Demo.Amber.Hops.Select(h => h with { Minutes = h.Use == HopUse.Boil ? random.Next(0, 60) : random.Next(5, 30) })],
        };
        return (house, recipe, new DayChoices
        {
            Circuits = circuits,
            BatchL = Between(22, 42),
            Sparge = random.Next(3) == 0 ? SpargeMethod.Batch : SpargeMethod.Fly,
            SourceWaterC = Between(5, 15),
        });
    }

    private static IEnumerable<MashRest> Rests(Random random)
    {
        double[] usual = [52, 63, 68, 72, 77];
        var from = random.Next(0, 3);
        var count = random.Next(1, 4);
        for (var i = from; i < Math.Min(usual.Length, from + count); i++)
            yield return new MashRest($"rest {i}", usual[i], random.Next(10, 61));
    }
}
