using BrewDeck.Core.Physics;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Core.Planning;

/// <summary>
/// Finds the waters and the masses that give the wanted volume, gravity and bitterness on this brewhouse: the model itself is run
/// over the run sheet and corrected until it does.
/// </summary>
internal static class PlanSolver
{
    private const int Rounds = 60;

    /// <summary>A litre in a million and a gravity in ten million: far below what can be read, so plans do not depend on the way there.</summary>
    private const double Close = 1e-7;

    /// <summary>
    /// Grist for each litre of the batch, twice what the strongest mashes of the trade take (common practice, no source). Where more
    /// than this would have to be sparged with less than nothing, each round asks for more of both, up to thousands of tonnes, and the
    /// lauter of such a day does not end. The limit on the sparge refuses the batch as it stands.
    /// </summary>
    private const double RunawayKgPerL = 1;

    /// <summary>
    /// A sparge of less than nothing takes water out of the mash. Past this share of the strike water the sheet asks for what no mash can do,
    /// and its days have no meaning left: seen a tun at 490 °C, and a lauter without an end.
    /// </summary>
    private const double TakenOutOfMash = 0.5;

    /// <summary>A round that finds next to no extract or bitterness would ask for a million times the grist or the hops.</summary>
    private const double LargestStep = 4;

    /// <summary>Late hops keep their mass, unless they bring more than this share of the wanted bitterness by themselves (common practice, no source).</summary>
    private const double MostFromLate = 0.75;

    /// <summary>A gravity that is further off would say too much of the hops' bitterness, or too little.</summary>
    private const double NearGravity = 0.05;

    /// <summary>What hose moves and plug moves shift on the finished sheet, at most: a day that is further off was not solved, and is refused.</summary>
    private const double Shifted = 0.01;

    /// <param name="hopsAlike">The bitterness is fitted with all hops, not with the bittering ones alone.</param>
    public static Batch Solve(PlantSetting setting, Recipe recipe, Recipe written, DayChoices choices, LiquorOrder liquor, bool hopsAlike)
    {
        hopsAlike |= !recipe.Hops.Any(h => RecipeFit.Bitters(h) && h.AlphaFraction > 0);
        var scale = recipe.BatchL / written.BatchL;
        var batch = FirstGuess(setting, RecipeFit.Scaled(recipe, scale, scale, scale, scale), choices) with { Liquor = liquor, HopsAlike = hopsAlike };
        for (var round = 0; round < Rounds; round++)
        {
            var end = DayFold.End(setting, RunSheet.Write(setting, batch, choices), PlantModel.Empty(setting));
            var miss = Miss(setting, recipe, batch, end);
            if (!hopsAlike && miss.LateIbu > MostFromLate * recipe.BitternessIbu && Math.Abs(miss.Gravity - 1) < NearGravity)
                return Solve(setting, recipe, written, choices, liquor, hopsAlike: true);
            if (miss.Largest < Close || RunsAway(recipe, batch, miss))
                break;
            var next = Corrected(setting, recipe, batch, miss, choices);
            if (next.SpargeL < -TakenOutOfMash * next.StrikeL)
                break;
            batch = next;
        }
        return batch;
    }

    /// <summary>One more round, from the end of the day on the finished sheet with its moves of hoses and plugs; null when there is nothing to correct.</summary>
    public static Batch? Finer(PlantSetting setting, Recipe recipe, Batch batch, PlantState end, DayChoices choices)
    {
        var miss = Miss(setting, recipe, batch, end);
        return miss.Largest is > Close and < Shifted ? Corrected(setting, recipe, batch, miss, choices) : null;
    }

    private static bool RunsAway(Recipe recipe, Batch batch, Misses miss) =>
        batch.SpargeL < 0 && miss.Extract > 1 && batch.Recipe.MashKg > RunawayKgPerL * recipe.BatchL;

    private static Batch Corrected(PlantSetting setting, Recipe recipe, Batch batch, Misses miss, DayChoices choices)
    {
        double grist = Math.Clamp(miss.Extract, 1 / LargestStep, LargestStep), hops = Math.Clamp(miss.Bitterness, 1 / LargestStep, LargestStep);
        return Next(setting, RecipeFit.Scaled(batch.Recipe, grist, hops, batch.HopsAlike ? hops : 1, 1), batch, miss.Volume * recipe.BatchL, choices);
    }

    private static Batch FirstGuess(PlantSetting setting, Recipe recipe, DayChoices choices)
    {
        var strike = StrikeL(setting, recipe);
        var need = recipe.BatchL + 10 + setting.Habits.AbsorptionLPerKg * recipe.MashKg;
        return choices.Sparge == SpargeMethod.None
            ? new(recipe, need, 0, double.PositiveInfinity)
            : new(recipe, strike, Math.Max(0, need - strike), double.PositiveInfinity);
    }

    private static Batch Next(PlantSetting setting, Recipe recipe, Batch last, double missingL, DayChoices choices)
    {
        // What the grain that is added will keep is asked for with it: without that the rounds double.
        var moreL = missingL + setting.Habits.AbsorptionLPerKg * (recipe.MashKg - last.Recipe.MashKg);
        if (choices.Sparge == SpargeMethod.None)
            return last with { Recipe = recipe, StrikeL = last.StrikeL + moreL };
        // A thicker or thinner mash shifts water between strike and sparge, so the sum is what is corrected.
        var strike = StrikeL(setting, recipe);
        return last with { Recipe = recipe, StrikeL = strike, SpargeL = last.StrikeL + last.SpargeL + moreL - strike };
    }

    private static double StrikeL(PlantSetting setting, Recipe recipe) =>
        (recipe.MashThicknessLPerKg ?? setting.Habits.MashThicknessLPerKg) * recipe.MashKg;

    private static Misses Miss(PlantSetting setting, Recipe recipe, Batch batch, PlantState end)
    {
        var fermenter = end.Vessels[setting.FermenterIndex];
        var points = SugarSolution.SgFromPlato(fermenter.Plato) - 1;
        // what bitters goes in first, addition by addition
        var fitted = WortFigures.BitternessIbu(setting, end, batch.HopsAlike ? end.Hops.Length : recipe.Hops.Count(RecipeFit.Bitters));
        var late = WortFigures.BitternessIbu(setting, end) - fitted;
        var gravity = recipe.OriginalGravitySg is { } wanted && points > 0 ? (wanted - 1) / points : 1;
        return new(
            (recipe.BatchL - Contents.CoolL(fermenter)) / recipe.BatchL,
            gravity,
            recipe.OriginalGravitySg is null ? 1 : gravity * recipe.BatchL / Math.Max(1, Contents.CoolL(fermenter)),
            recipe.BitternessIbu is { } bitter && fitted > 0 ? (bitter - late) / fitted : 1,
            late);
    }

    /// <summary>How far a day ends from what is wanted.</summary>
    /// <param name="Volume">Missing, as a share of the batch.</param>
    /// <param name="Gravity">Wanted over found, of the points.</param>
    /// <param name="Extract">The same of the extract.</param>
    /// <param name="Bitterness">The same of the bitterness of the hops that are fitted.</param>
    /// <param name="LateIbu">Bitterness of the others.</param>
    private readonly record struct Misses(double Volume, double Gravity, double Extract, double Bitterness, double LateIbu)
    {
        public double Largest => Math.Max(Math.Abs(Volume), Math.Max(Math.Abs(Gravity - 1), Math.Abs(Bitterness - 1)));
    }
}
