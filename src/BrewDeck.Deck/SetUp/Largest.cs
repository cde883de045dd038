using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Deck.SetUp;

/// <summary>How much of a common wort a brewhouse makes.</summary>
internal static class Largest
{
    private const int Halvings = 7;

    private static readonly Recipe Yardstick = new()
    {
        Name = "a common pale wort",
        BatchL = 20,
        OriginalGravitySg = 1.048,
        BitternessIbu = 30,
        Grist = [new("pale ale malt", 4, 0.805, 0.04, 6, GristUse.Mash)],
        Rests = [new("conversion", 66, 60)],
        BoilMin = 60,
        Hops = [new("hops", 30, 0.07, HopForm.Pellet, HopUse.Boil, 60)],
        Yeast = new("ale yeast", 0.75, 20, 0.75),
    };

    /// <summary>Litres into the fermenter and what is full with a little more; 0 litres: nothing can be brewed, null: the fermenter is full.</summary>
    public static (double Litres, Limit? Bound) Of(Brewhouse house)
    {
        double fits = 0, fails = house.Fermenter.WorkingL;
        var bound = Failed(house, fails);
        if (bound is null)
            return (fails, null);
        for (var i = 0; i < Halvings; i++)
        {
            var between = (fits + fails) / 2;
            if (Failed(house, between) is { } fault)
                (fails, bound) = (between, fault);
            else
                fits = between;
        }
        return (fits, bound);
    }

    private static Limit? Failed(Brewhouse house, double litres) =>
        Planner.Figures(house, Yardstick, new DayChoices { BatchL = litres })?.Failed.FirstOrDefault();
}
