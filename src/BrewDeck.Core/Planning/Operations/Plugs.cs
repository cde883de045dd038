using System.Collections.Immutable;

namespace BrewDeck.Core.Planning.Operations;

/// <summary>Circuits that are handed from vessel to vessel.</summary>
internal static class Plugs
{
    /// <summary>What the plug leaves is no longer kept at its temperature.</summary>
    /// <param name="spec">Circuit id in <see cref="StepSpec.Label"/>, vessel that it goes to in <see cref="StepSpec.To"/>.</param>
    public static Progress Move(Workbench bench, StepSpec spec, double limitS)
    {
        int circuit = CircuitOf(bench.Setting, spec), to = bench.Setting.IndexOf(spec.To);
        if (circuit >= 0 && bench.PlugAt[circuit] != to)
        {
            var from = bench.PlugAt[circuit];
            bench.PlugAt = bench.PlugAt.SetItem(circuit, to);
            if (from >= 0 && bench.NetHeatW(from) <= 0)
                bench.Vessels[from] = bench.Vessels[from] with { HoldC = double.NaN };
        }
        return Progress.ByClock(spec, limitS);
    }

    /// <summary>Index of the circuit whose plug a step moves; -1: none.</summary>
    public static int CircuitOf(PlantSetting setting, StepSpec spec)
    {
        for (var i = 0; i < setting.Circuits.Length; i++)
        {
            if (spec.Kind == StepKind.MovePlug && setting.Circuits[i].Id == spec.Label)
                return i;
        }
        return -1;
    }

    /// <summary>One of two steps moves a plug that the other heats with or moves too: they go one after the other.</summary>
    public static bool Meet(PlantSetting setting, StepSpec a, StepSpec b) => Meets(setting, a, b) || Meets(setting, b, a);

    private static bool Meets(PlantSetting setting, StepSpec moves, StepSpec other)
    {
        if (CircuitOf(setting, moves) is not (>= 0 and var circuit))
            return false;
        return CircuitOf(setting, other) == circuit
            || (PlantModel.HeatedVessel(setting, other) is >= 0 and var v && setting.Wiring.LoadW(v, circuit) > 0);
    }

    /// <summary>Circuits handed on between vessels that a step heats from, or whose plug it moves.</summary>
    public static ImmutableArray<int> UsedBy(PlantSetting setting, StepSpec spec, PlantState state)
    {
        if (spec.Kind == StepKind.MovePlug)
            return CircuitOf(setting, spec) is >= 0 and var moved ? [moved] : [];
        if (PlantModel.HeatedVessel(setting, spec) is not (>= 0 and var vessel))
            return [];
        var used = ImmutableArray<int>.Empty;
        foreach (var lead in setting.Wiring.Leads[vessel])
        {
            if (setting.Wiring.IsShared(lead.Circuit) && setting.Wiring.Feeds(lead, state.PlugAt) && !used.Contains(lead.Circuit))
                used = used.Add(lead.Circuit);
        }
        return used;
    }
}
