using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>What the running steps, and vessels whose heat is on between two steps, draw from each circuit now.</summary>
public static class CircuitLoads
{
    /// <summary>W, in the order of the setting's circuits. Elements that stand dry are not on: the model waits for them to be covered, and so do the hands.</summary>
    public static double[] OfW(RunState state, Forecast forecast, PlantSetting setting)
    {
        var watts = new double[setting.Circuits.Length];
        foreach (var vessel in Heated(state, forecast, setting).Where(v => IsCovered(setting, v, forecast.Now)))
        {
            var loads = PlantModel.LoadsW(setting, vessel, forecast.Now);
            for (var i = 0; i < watts.Length; i++)
                watts[i] += loads[i];
        }
        return watts;
    }

    private static IEnumerable<int> Heated(RunState state, Forecast forecast, PlantSetting setting) => forecast.Going
        .Where(s => state.Step(s.Spec.Id)?.Status == RunStatus.Running).Select(s => PlantModel.HeatedVessel(setting, s.Spec))
        .Union(Enumerable.Range(0, setting.Brewhouse.Vessels.Length).Where(v => PlantModel.HeatsOn(setting, forecast.Now.Vessels[v])));

    private static bool IsCovered(PlantSetting setting, int vessel, PlantState now) =>
        vessel >= 0 && Contents.StandsL(now.Vessels[vessel]) >= setting.Brewhouse.Vessels[vessel].CoverL;
}
