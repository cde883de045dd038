using BrewDeck.Core.Planning;

namespace BrewDeck.Core.Running.Troubles;

/// <summary>What a trouble does to the model's plant.</summary>
internal static class TroubleFold
{
    public static RunState Reported(RunState state, TroubleReported e, int seq)
    {
        state = state with { Troubles = state.Troubles.Add(new(seq, e.AtMs, e.Trouble)) };
        return e.Trouble.Kind switch
        {
            TroubleKind.CircuitTripped or TroubleKind.ElementFailed => Rewired(state, e.AtMs),
            TroubleKind.AdditionMissed => WithoutAddition(state, e),
            _ => state,
        };
    }

    public static RunState Cleared(RunState state, TroubleCleared e)
    {
        var reported = state.Troubles.LastOrDefault(t => t.Stands && t.Trouble == e.Trouble);
        if (reported is null)
            return state;
        state = state with { Troubles = state.Troubles.Replace(reported, reported with { OverMs = e.AtMs }) };
        return e.Trouble.Kind is TroubleKind.CircuitTripped or TroubleKind.ElementFailed ? Rewired(state, e.AtMs) : state;
    }

    /// <summary>The wiring as it is with all that stands.</summary>
    /// <param name="takesOver">Id of the circuit that what tripped ones fed has been plugged into; null: none.</param>
    internal static Wiring WiringOf(PlantSetting setting, IEnumerable<Trouble> standing, string? takesOver)
    {
        var wiring = Wiring.Of(setting.Brewhouse, setting.Circuits);
        foreach (var tripped in standing.Where(t => t.Kind == TroubleKind.CircuitTripped && takesOver is not null))
            wiring = wiring.Onto(tripped.About, takesOver!);
        bool Dead(Lead lead, int number) => standing.Any(t => t.Kind == TroubleKind.CircuitTripped
            ? t.About == setting.Circuits[lead.Circuit].Id
            : t.Kind == TroubleKind.ElementFailed && t.About == Trouble.Element(setting.Brewhouse.Vessels[lead.Vessel].Id, number));
        return wiring.Without(Dead);
    }

    private static RunState Rewired(RunState state, long atMs)
    {
        var live = state.DayStartMs is null ? state.Live! : state.Live!.CutAt(state.SecondsAt(atMs));
        var setting = SlowHeat.Explained(live.Setting) with { Wiring = WiringOf(live.Setting, Possible.Standing(state), TakesOver(state)) };
        return state with { Live = live with { Setting = setting } };
    }

    /// <summary>The circuit that the last remedy for a dead one chose, while one is dead.</summary>
    private static string? TakesOver(RunState state) => state.Remedies.LastOrDefault(r => r.Remedy.CircuitId is not null)?.Remedy.CircuitId;

    /// <summary>Hops that are still in the bag are taken out of the wort; the step counts as left out.</summary>
    private static RunState WithoutAddition(RunState state, TroubleReported e)
    {
        if (state.Step(e.Trouble.About) is not { Status: RunStatus.Complete } step)
            return state;
        var live = state.Live!.CutAt(state.SecondsAt(e.AtMs));
        var plant = step.Spec.Charges.Aggregate(live.Plant, (p, charge) => Without(live.Setting, p, charge));
        return state with
        {
            Live = live with { Plant = plant },
            Steps = state.Steps.Replace(step, step with { Status = RunStatus.Skipped }),
        };
    }

    private static PlantState Without(PlantSetting setting, PlantState plant, Charge charge)
    {
        if (charge.Kind == ChargeKind.Hop && plant.Hops.FirstOrDefault(d => d.Name == charge.Name && d.AlphaG == charge.AlphaG) is { MassKg: > 0 } dose)
            return plant with { Hops = plant.Hops.Remove(dose) };
        if (charge.ExtractKg <= 0)
            return plant;
        var kettle = setting.IndexOf(setting.Brewhouse.Kettle.Id);
        var v = plant.Vessels[kettle];
        v = v with { WaterKg = Math.Max(0, v.WaterKg - charge.WaterKg), ExtractKg = Math.Max(0, v.ExtractKg - charge.ExtractKg) };
        return plant with
        {
            Vessels = plant.Vessels.SetItem(kettle, v),
            ColourKgEbc = Math.Max(0, plant.ColourKgEbc - charge.ColourKgEbc),
            ColouredKg = Math.Max(0, plant.ColouredKg - charge.ColouredKg),
        };
    }
}
