using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;

namespace BrewDeck.Core.Fermenting;

/// <summary>Folds what happens to a batch from pitching on. It needs no model of the plant, so that many batches can be looked through at once.</summary>
public static class FermentFold
{
    /// <summary>The state after all events, the acts that were undone left out.</summary>
    public static FermentState Of(IReadOnlyList<RunEvent> events)
    {
        var undone = RunFold.UndoneIn(events);
        var state = new FermentState();
        var pitch = "";
        for (var i = 0; i < events.Count; i++)
        {
            if (undone.Contains(i))
                continue;
            if (events[i] is BatchOpened opened)
                pitch = opened.Plan.Steps.FirstOrDefault(s => s.Spec.Kind == StepKind.Pitch)?.Spec.Id ?? "";
            state = Then(state, events[i], i, pitch);
        }
        return state;
    }

    /// <param name="pitchStepId">Id of the step that pitches.</param>
    internal static FermentState Then(FermentState state, RunEvent happened, int seq, string pitchStepId) => happened switch
    {
        BatchOpened e when state.Recipe is null => state with { Recipe = e.Plan.Recipe, PlannedOriginalSg = e.Plan.Totals.OriginalGravitySg, PlannedL = e.Plan.Totals.FermenterL },
        RemedyChosen e => state with { WaterToCome = state.WaterToCome.SetItems(e.Remedy.Insert.Where(IsThinning).Select(s => KeyValuePair.Create(s.Id, s.VolumeL ?? 0))) },
        StepFinished e when state.WaterToCome.TryGetValue(e.StepId, out var litres) => Thinned(state, litres),
        StepFinished e when e.StepId == pitchStepId => state with { PitchedMs = e.AtMs },
        ReadingTaken { Reading: { Kind: ReadingKind.Gravity, Vessel: Places.Fermenter } reading } => state with { MeasuredOriginalSg = reading.Value, ThinnedByL = 0 },
        ReadingTaken { Reading: { Kind: ReadingKind.Volume, Vessel: Places.Fermenter } reading } => state with { MeasuredL = reading.Value },
        FermenterRead { Reading.TakenMs: { } taken } e => state with { Readings = [.. state.Readings.Add(new(seq, taken, e.Reading)).OrderBy(r => r.AtMs)] },
        FermenterRead e => state with { Readings = state.Readings.Add(new(seq, e.AtMs, e.Reading)) },
        AdditionMade e => state with { Additions = state.Additions.Add(new(seq, e.AtMs, e.Addition)) },
        DateSet e => state with { Dates = state.Dates.RemoveAll(d => d.Kind == e.Item.Kind && d.Name == e.Item.Name).Add(e.Item) },
        BeerPackaged e => state with { Lots = state.Lots.Add(new(seq, e.AtMs, e.Packaging, e.LeftL)) },
        PackagingEnded e => state with { RestIsLees = new(seq, e.AtMs) },
        BeerTasted e => state with { Tastings = state.Tastings.Add(new(seq, e.AtMs, e.Text, e.Rating)) },
        _ => state,
    };

    private static bool IsThinning(StepSpec spec) => spec is { Kind: StepKind.AddWater, Vessel: Places.Fermenter };

    /// <summary>The extract stays: what was measured before the water is not what ferments.</summary>
    private static FermentState Thinned(FermentState state, double waterL)
    {
        var litres = state.MeasuredL ?? state.PlannedL;
        var thinned = state with { MeasuredL = state.MeasuredL + waterL };
        if (state.MeasuredOriginalSg is not { } sg)
            return thinned;
        var plato = SugarSolution.PlatoFromSg(sg);
        var kg = SugarSolution.MassKg(litres, plato, 20);
        return thinned with { MeasuredOriginalSg = SugarSolution.SgFromPlato(plato * kg / (kg + Contents.WaterKg(waterL))), ThinnedByL = state.ThinnedByL + waterL };
    }

    /// <summary>Happens after the day: taken even when the run is complete.</summary>
    public static bool Belongs(RunEvent happened) => happened is FermenterRead or AdditionMade or DateSet or BeerPackaged or PackagingEnded or BeerTasted;
}
