using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running;

/// <summary>What the running steps draw from each circuit now.</summary>
public static class CircuitLoads
{
    /// <summary>W, in the order of the setting's circuits. Elements that stand dry are not on: the model waits for them to be covered, and so do the hands.</summary>
    public static double[] OfW(RunState state, Forecast forecast, PlantSetting setting)
    {
        var watts = new double[setting.Circuits.Length];
        foreach (var step in forecast.Rest.Where(s => state.Step(s.Spec.Id)?.Status == RunStatus.Running && Covered(setting, s.Spec, forecast.Now)))
        {
            var loads = PlantModel.LoadsW(setting, step.Spec, forecast.Now);
            for (var i = 0; i < watts.Length; i++)
                watts[i] += loads[i];
        }
        return watts;
    }

    private static bool Covered(PlantSetting setting, StepSpec spec, PlantState now) =>
        PlantModel.HeatedVessel(setting, spec) is >= 0 and var vessel
        && Contents.StandsL(now.Vessels[vessel]) >= setting.Brewhouse.Vessels[vessel].CoverL;
}
