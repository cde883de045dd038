using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;

namespace BrewDeck.Core.Planning;

/// <summary>Other orders of heating the liquor that may end the day earlier than heating it while the mash rests.</summary>
internal static class LiquorOrders
{
    /// <param name="steps">The day with the usual order.</param>
    public static IEnumerable<LiquorOrder> WorthTrying(PlantSetting setting, Batch usual, ImmutableArray<PlanStep> steps)
    {
        var way = setting.Habits.MashHeating;
        var rises = usual.Recipe.Rests.Length > 1;
        if (usual.SpargeL <= 0 || (rises && way == MashHeating.HotWater))
            yield break;
        var mashWaits = rises && (way == MashHeating.Coil || SharesWithTank(setting));
        if (mashWaits || LauterWaits(steps))
            yield return LiquorOrder.BeforeDoughIn;
        if (!mashWaits)
            yield break;
        var fits = FitsInTank(setting, usual);
        if (fits)
            yield return LiquorOrder.AllFirst;
        // with one circuit the water comes first: a plug that goes to and fro saves minutes and costs care
        if (way == MashHeating.Coil || (fits && setting.Circuits.Length == 1))
            yield break;
        if (fits)
            yield return LiquorOrder.AllFirstThenLongestRest;
        yield return LiquorOrder.LongestRest;
        yield return LiquorOrder.AfterLastRamp;
    }

    /// <summary>The mash is ready before the sparge liquor is.</summary>
    private static bool LauterWaits(ImmutableArray<PlanStep> steps)
    {
        var heated = steps.FirstOrDefault(s => s.Spec.Kind == StepKind.HeatSparge);
        var clear = steps.FirstOrDefault(s => s.Spec.Kind == StepKind.Vorlauf);
        return heated is not null && clear is not null && heated.EndS > clear.StartS;
    }

    private static bool FitsInTank(PlantSetting setting, Batch usual) =>
        RunSheet.TankFillL(setting, usual.StrikeL + usual.SpargeL) <= setting.Brewhouse.HotLiquorTank.WorkingL
        && !(setting.Habits.MashHeating == MashHeating.Coil && usual.SpargeL < setting.Brewhouse.Coil?.CoverL);

    /// <summary>Tank and tun cannot heat at the same time.</summary>
    private static bool SharesWithTank(PlantSetting setting)
    {
        int tank = setting.IndexOf(setting.Brewhouse.HotLiquorTank.Id), tun = setting.IndexOf(setting.Brewhouse.MashTun.Id);
        return tank != tun && setting.Wiring.Leads[tun].Any(l =>
            setting.Wiring.IsShared(l.Circuit) && setting.Wiring.LoadW(tank, l.Circuit) > 0);
    }
}
