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

    /// <summary>A round that finds next to no extract or bitterness would ask for a million times the grist or the hops.</summary>
    private const double LargestStep = 4;

    public static Batch Solve(PlantSetting setting, Recipe recipe, Recipe written, DayChoices choices, LiquorOrder liquor)
    {
        var scale = recipe.BatchL / written.BatchL;
        double grist = scale, hops = scale;
        var batch = FirstGuess(setting, RecipeFit.Scaled(recipe, grist, hops, scale), choices) with { Liquor = liquor };
        for (var round = 0; round < Rounds; round++)
        {
            var end = DayFold.End(setting, RunSheet.Write(setting, batch, choices), PlantModel.Empty(setting));
            var miss = Miss(setting, recipe, end);
            if (Math.Abs(miss.VolumeL) < Close * recipe.BatchL && Math.Abs(miss.Gravity - 1) < Close && Math.Abs(miss.Bitterness - 1) < Close)
                break;
            if (batch.SpargeL < 0 && miss.Extract > 1 && batch.Recipe.MashKg > RunawayKgPerL * recipe.BatchL)
                break;
            grist *= Math.Clamp(miss.Extract, 1 / LargestStep, LargestStep);
            hops *= Math.Clamp(miss.Bitterness, 1 / LargestStep, LargestStep);
            batch = Next(setting, RecipeFit.Scaled(recipe, grist, hops, scale), batch, miss.VolumeL, choices);
        }
        return batch;
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

    private static double StrikeL(PlantSetting setting, Recipe recipe) => setting.Habits.MashThicknessLPerKg * recipe.MashKg;

    private static (double VolumeL, double Gravity, double Extract, double Bitterness) Miss(PlantSetting setting, Recipe recipe, PlantState end)
    {
        var fermenter = end.Vessels[setting.FermenterIndex];
        var points = SugarSolution.SgFromPlato(fermenter.Plato) - 1;
        var ibu = WortFigures.BitternessIbu(setting, end);
        var gravity = recipe.OriginalGravitySg is { } wanted && points > 0 ? (wanted - 1) / points : 1;
        return (
            recipe.BatchL - Contents.CoolL(fermenter),
            gravity,
            recipe.OriginalGravitySg is null ? 1 : gravity * recipe.BatchL / Math.Max(1, Contents.CoolL(fermenter)),
            recipe.BitternessIbu is { } bitter && ibu > 0 ? bitter / ibu : 1);
    }
}
