using System.Collections.Immutable;

namespace BrewDeck.Core.Planning;

/// <summary>Folds the model over a run sheet: each step as early as its vessels, circuit and the hands allow.</summary>
public static class DayFold
{
    /// <param name="notBeforeS">No step starts earlier, seconds since the start of the day.</param>
    /// <param name="going">Steps that go on already, which others follow: they come first in the answer.</param>
    public static ImmutableArray<PlanStep> Over(
        PlantSetting setting, IEnumerable<StepSpec> specs, PlantState from, double notBeforeS = 0, IReadOnlyList<PlanStep>? going = null)
    {
        var steps = ImmutableArray.CreateBuilder<PlanStep>();
        steps.AddRange(going ?? []);
        var state = from;
        foreach (var spec in specs)
        {
            var outcome = PlantModel.After(setting, spec, state, Math.Max(notBeforeS, EndOf(steps, spec.AfterStepId) - spec.LeadS));
            steps.Add(Step(setting, spec, state, outcome));
            state = outcome.State;
        }
        return steps.ToImmutable();
    }

    /// <summary>The last state only: what the solver of a plan needs.</summary>
    public static PlantState End(PlantSetting setting, IEnumerable<StepSpec> specs, PlantState from)
    {
        var state = from;
        var ends = new List<(string Id, double EndS)>();
        foreach (var spec in specs)
        {
            var after = spec.AfterStepId.Length == 0 ? 0 : ends.FindLast(e => e.Id == spec.AfterStepId).EndS;
            var outcome = PlantModel.After(setting, spec, state, after - spec.LeadS);
            ends.Add((spec.Id, outcome.EndS));
            state = outcome.State;
        }
        return state;
    }

    /// <summary>0 for a step that is over already and no longer on the sheet.</summary>
    private static double EndOf(ImmutableArray<PlanStep>.Builder steps, string id)
    {
        if (id.Length == 0)
            return 0;
        for (var i = steps.Count - 1; i >= 0; i--)
        {
            if (steps[i].Spec.Id == id)
                return steps[i].EndS;
        }
        return 0;
    }

    internal static PlanStep Step(PlantSetting setting, StepSpec spec, PlantState before, StepOutcome outcome)
    {
        var loads = PlantModel.LoadsW(setting, spec, before);
        var ids = string.Join(", ", loads.Select((w, i) => w > 0 ? setting.Circuits[i].Id : "").Where(id => id.Length > 0));
        return new(
            spec, outcome.StartS, outcome.DurationS, outcome.TargetC, outcome.VolumeL, ids.Length > 0 ? loads.Sum() : null,
            ids.Length > 0 ? ids : null, Expectations.After(setting, spec, outcome), outcome.State);
    }
}
