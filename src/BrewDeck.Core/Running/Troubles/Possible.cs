using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Troubles;

/// <summary>What can go wrong at this moment of the day: the short list that the brewer picks from.</summary>
public static class Possible
{
    /// <summary>That of the running steps first; what already stands is left out.</summary>
    public static IReadOnlyList<Trouble> At(RunState state)
    {
        if (state.Live is null || state.Status != RunStatus.Running)
            return [];
        IEnumerable<Trouble> all = [.. OfSteps(state), .. Missed(state), .. Circuits(state), .. Elements(state)];
        return [.. all.Where(t => !Standing(state).Contains(t))];
    }

    /// <summary>What has been reported and is not over.</summary>
    public static IEnumerable<Trouble> Standing(RunState state) => state.Troubles.Where(t => t.Stands).Select(t => t.Trouble);

    private static IEnumerable<Trouble> OfSteps(RunState state)
    {
        foreach (var step in state.Steps.Where(s => s.Status == RunStatus.Running))
        {
            if (step.Spec.Kind.RunsOff())
                yield return new(TroubleKind.RunoffStuck, step.Spec.Id);
            if (step.Spec.Kind is StepKind.HotBreak or StepKind.Boil)
                yield return new(TroubleKind.BoilInterrupted, step.Spec.Id);
            if (step.Spec.Kind is StepKind.HeatToBoil or StepKind.HotBreak or StepKind.Boil)
                yield return new(TroubleKind.BoiledOver, step.Spec.Id);
        }
    }

    /// <summary>Once the boil is over, nothing can be boiled any more.</summary>
    private static IEnumerable<Trouble> Missed(RunState state) => state.Live!.PostBoil is not null
        ? []
        : state.Steps.Where(s => s.Status == RunStatus.Complete && s.Spec.Kind is StepKind.AddToBoil or StepKind.AddFirstWortHops)
            .Reverse().Select(s => new Trouble(TroubleKind.AdditionMissed, s.Spec.Id));

    private static IEnumerable<Trouble> Circuits(RunState state)
    {
        var heated = StillHeated(state);
        var setting = state.Live!.Setting;
        for (var i = 0; i < setting.Circuits.Length; i++)
        {
            var circuit = i;
            if (heated.Any(v => setting.Wiring.LoadW(v, circuit) > 0))
                yield return new(TroubleKind.CircuitTripped, setting.Circuits[i].Id);
        }
    }

    private static IEnumerable<Trouble> Elements(RunState state)
    {
        var setting = state.Live!.Setting;
        var leads = Wiring.Of(setting.Brewhouse, setting.Circuits).Leads;
        return StillHeated(state).SelectMany(v => Enumerable.Range(1, leads[v].Length)
            .Select(n => new Trouble(TroubleKind.ElementFailed, Trouble.Element(setting.Brewhouse.Vessels[v].Id, n))));
    }

    /// <summary>Vessels that are or will be heated: those that hold a temperature and those of the running steps first.</summary>
    private static List<int> StillHeated(RunState state) =>
    [
        .. Enumerable.Range(0, state.Live!.Plant.Vessels.Length).Where(v => state.Live.Plant.Vessels[v].HoldsTemperature).Union(
            state.Steps.Where(s => s.Open).OrderBy(s => s.Status == RunStatus.Idle)
            .Select(s => HeatedVessel(state.Live!.Setting, s.Spec)).Where(v => v >= 0)),
    ];

    /// <summary>A rest in a tun with heat of its own is kept by it, though no step heats.</summary>
    private static int HeatedVessel(PlantSetting setting, StepSpec spec) =>
        spec.Kind == StepKind.Rest && setting.Habits.MashHeating == MashHeating.Direct ? setting.IndexOf(spec.Vessel) : PlantModel.HeatedVessel(setting, spec);
}
