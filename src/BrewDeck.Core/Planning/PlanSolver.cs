using BrewDeck.Core.Brewhouses;
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

    /// <summary>With each order in which the liquor may be heated, where that makes a difference.</summary>
    public static IEnumerable<Batch> Candidates(PlantSetting setting, Recipe recipe, Recipe written, DayChoices choices)
    {
        var usual = Solve(setting, recipe, written, choices, LiquorOrder.WhileMashing);
        yield return usual;
        var coil = setting.Habits.MashHeating == MashHeating.Coil;
        if (usual.SpargeL <= 0 || recipe.Rests.Length < 2 || setting.Habits.MashHeating == MashHeating.HotWater || !(coil || SharesWithTank(setting)))
            yield break;
        var all = Solve(setting, recipe, written, choices, LiquorOrder.AllFirst);
        if (RunSheet.TankFillL(setting, all.FirstFillL) <= setting.Brewhouse.HotLiquorTank.WorkingL
            && !(coil && all.SpargeL < setting.Brewhouse.Coil?.CoverL))
            yield return all;
        if (!coil)
            yield return Solve(setting, recipe, written, choices, LiquorOrder.AfterLastRamp);
    }

    /// <summary>Tank and tun cannot heat at the same time.</summary>
    private static bool SharesWithTank(PlantSetting setting)
    {
        int tank = setting.IndexOf(setting.Brewhouse.HotLiquorTank.Id), tun = setting.IndexOf(setting.Brewhouse.MashTun.Id);
        return tank != tun && setting.Wiring.Leads[tun].Any(l =>
            setting.Wiring.IsShared(l.Circuit) && setting.Wiring.LoadW(tank, l.Circuit) > 0);
    }

    private static Batch Solve(PlantSetting setting, Recipe recipe, Recipe written, DayChoices choices, LiquorOrder liquor)
    {
        var scale = recipe.BatchL / written.BatchL;
        double grist = scale, hops = scale;
        var batch = FirstGuess(setting, RecipeFit.Scaled(recipe, grist, hops, scale), choices) with { Liquor = liquor };
        for (var round = 0; round < Rounds; round++)
        {
            var end = DayFold.End(setting, RunSheet.Write(setting, batch, choices), PlantModel.Empty(setting));
            var miss = Miss(setting, recipe, end);
            if (VolumeStands(batch, miss.VolumeL, Close * recipe.BatchL) && Math.Abs(miss.Gravity - 1) < Close && Math.Abs(miss.Bitterness - 1) < Close)
                break;
            grist *= miss.Extract;
            hops *= miss.Bitterness;
            batch = Next(setting, RecipeFit.Scaled(recipe, grist, hops, scale), batch, miss.VolumeL, choices);
        }
        return batch;
    }

    /// <summary>
    /// True when the batch is full, or when the mash alone gives too much: then the negative sparge volume says by how many litres.
    /// </summary>
    private static bool VolumeStands(Batch batch, double missingL, double near) =>
        Math.Abs(missingL) < near || (batch.SpargeL < 0 && Math.Abs(batch.SpargeL - missingL) < 1000 * near);

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
        return last with { Recipe = recipe, StrikeL = strike, SpargeL = last.StrikeL + Math.Max(0, last.SpargeL) + moreL - strike };
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
