using System.Collections.Immutable;
using BrewDeck.Core.Planning.Operations;

namespace BrewDeck.Core.Planning;

/// <summary>
/// Puts the moves of plugs on a run sheet: none before it is due, so that what is heated keeps its heat as long as it can; as few as
/// the order of the heating allows.
/// </summary>
internal static class PlugMoves
{
    /// <summary>Off at the breaker, plug out, plug in, look, on: common practice, no source.</summary>
    private const double PlugMin = 2;

    /// <summary>A switch between two sockets of one circuit: common practice, no source.</summary>
    private const double SwitchMin = 0.5;

    /// <summary>The hands are done this long before the heat is wanted.</summary>
    private const double SpareS = 60;

    public static List<StepSpec> Into(PlantSetting setting, List<StepSpec> sheet)
    {
        if (!Enumerable.Range(0, setting.Circuits.Length).Any(setting.Wiring.IsShared))
            return sheet;
        var plugs = PlantModel.Empty(setting).PlugAt;
        var steps = sheet.ToList();
        for (var i = 0; i < steps.Count; i++)
        {
            foreach (var circuit in Wanted(setting, steps[i], plugs))
            {
                plugs = plugs.SetItem(circuit, PlantModel.HeatedVessel(setting, steps[i]));
                var (at, move) = Move(setting, steps, i, circuit);
                steps.Insert(at, move);
                i++;
            }
        }
        return steps;
    }

    /// <summary>The same sheet with the moves after the vorlauf: better when the liquor is hot later than the mash is ready.</summary>
    public static IEnumerable<List<StepSpec>> Later(List<StepSpec> sheet)
    {
        var at = sheet.FindIndex(s => s.Kind == StepKind.Vorlauf);
        if (at < 1 || sheet[at - 1].Kind != StepKind.MovePlug)
            yield break;
        var first = at;
        while (first > 0 && sheet[first - 1].Kind == StepKind.MovePlug)
            first--;
        var moves = sheet.GetRange(first, at - first).Select(m => m with { AfterStepId = "", LeadS = 0 });
        yield return [.. sheet.Take(first), sheet[at], .. moves, .. sheet.Skip(at + 1)];
    }

    /// <summary>Circuits whose plug must come to the vessel of a heating step. A kettle that has other heat can wait for more until the tun has run off.</summary>
    private static ImmutableArray<int> Wanted(PlantSetting setting, StepSpec spec, ImmutableArray<int> plugs)
    {
        if (PlantModel.HeatedVessel(setting, spec) is not (>= 0 and var vessel))
            return [];
        var leads = setting.Wiring.Leads[vessel];
        var missing = leads.Where(l => !setting.Wiring.Feeds(l, plugs)).Select(l => l.Circuit).Distinct().ToImmutableArray();
        var canWait = spec.Kind.RunsOff()
            && (leads.Any(l => setting.Wiring.Feeds(l, plugs)) || setting.Brewhouse.Vessels[vessel].Burner is not null);
        return canWait ? [] : missing;
    }

    /// <summary>After the last that heats from this circuit, towards the end of what runs by the clock before the heat is wanted.</summary>
    private static (int At, StepSpec Move) Move(PlantSetting setting, List<StepSpec> steps, int heats, int circuit)
    {
        var gate = Gate(steps, heats);
        var busy = steps.FindLastIndex(heats - 1, s => Loads(setting, s, circuit));
        var move = Of(setting, circuit, Id(setting, steps, circuit), steps[heats].Unit, setting.Brewhouse.Vessels[PlantModel.HeatedVessel(setting, steps[heats])].Id);
        if (gate >= 0)
            move = move with { AfterStepId = steps[gate].Id, LeadS = move.HandsS + SpareS };
        return (Math.Max(NextAfter(steps, gate, heats), busy + 1), move);
    }

    /// <summary>The plug of a circuit goes to a vessel.</summary>
    public static StepSpec Of(PlantSetting setting, int circuit, string id, UnitProcedure unit, string to)
    {
        var minutes = setting.Wiring.Leads.Sum(l => l.Count(x => x.Circuit == circuit)) > setting.Circuits[circuit].Sockets ? PlugMin : SwitchMin;
        return new()
        {
            Id = id,
            Kind = StepKind.MovePlug,
            Unit = unit,
            To = to,
            Label = setting.Circuits[circuit].Id,
            Minutes = minutes,
            HandsS = 60 * minutes,
            Cautions = Cautions.MainsNearWater | Cautions.DryFire,
        };
    }

    /// <summary>As late on the sheet as can be: what the hands do while the gate runs comes before it.</summary>
    private static int NextAfter(List<StepSpec> steps, int gate, int heats) =>
        gate < 0 ? heats : steps.FindIndex(gate + 1, s => s.Vessel == steps[gate].Vessel);

    /// <summary>The step by the clock that the vessel of a heating step is in before it, handwork left out; -1: none.</summary>
    private static int Gate(List<StepSpec> steps, int heats)
    {
        var vessel = steps[heats].Vessel;
        for (var i = heats - 1; i >= 0; i--)
        {
            if (steps[i].Vessel != vessel || steps[i].Kind.EndsBy() == EndsBy.Hands)
                continue;
            return steps[i].Kind.EndsBy() == EndsBy.Clock ? i : -1;
        }
        return -1;
    }

    private static bool Loads(PlantSetting setting, StepSpec spec, int circuit) =>
        Plugs.CircuitOf(setting, spec) == circuit
        || (PlantModel.HeatedVessel(setting, spec) is >= 0 and var v && setting.Wiring.LoadW(v, circuit) > 0);

    private static string Id(PlantSetting setting, List<StepSpec> steps, int circuit) =>
        $"plug.{setting.Circuits[circuit].Id}-{steps.Count(s => s.Kind == StepKind.MovePlug && s.Label == setting.Circuits[circuit].Id) + 1}";
}
