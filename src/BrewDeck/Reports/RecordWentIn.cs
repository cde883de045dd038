using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Reports;

/// <summary>What really went in, of all that was weighed and of water: to brew it again from.</summary>
internal static class RecordWentIn
{
    public static RecordTable Of(RecordSource source) => new(
        "What went in", ["at", "what", "went in", "planned", "step"],
        [.. WentIn.Of(source.State).Where(w => w.Step.Spec.Kind != StepKind.Pitch).Select(w => (w.Step.EndedMs ?? 0, Row(w, source)))
            .Concat(source.State.Steps.Where(IsWater).Select(s => (s.EndedMs ?? 0, Water(s, source))))
            .Concat(source.State.Done(s => s.Kind == StepKind.Pitch).Select(s => (s.EndedMs ?? 0, Yeast(s, source))))
            .OrderBy(r => r.Item1).Select(r => r.Item2)])
    {
        Wide = "step",
    };

    private static bool IsWater(RunStep step) => step is { Status: RunStatus.Complete, Spec: { Kind: StepKind.Fill or StepKind.AddWater, VolumeL: > 0 } };

    private static ImmutableArray<string> Row(WentIn went, RecordSource source) =>
    [
        Clock(went.Step, source),
        Charges.Name(went.Charge, source.Notation),
        WentInWords.Amount(went, source.Notation),
        WentInWords.Planned(went, source.Notation),
        source.Title(went.Step.Spec.Id),
    ];

    private static ImmutableArray<string> Water(RunStep step, RecordSource source) =>
    [
        Clock(step, source),
        "water",
        source.Notation.Volume(step.Spec.VolumeL!.Value),
        source.Plan.Step(step.Spec.Id)?.Spec.VolumeL is { } planned ? source.Notation.Volume(planned) : "not planned",
        source.Title(step.Spec.Id),
    ];

    // nobody is asked how much yeast it was
    private static ImmutableArray<string> Yeast(RunStep step, RecordSource source) =>
        [Clock(step, source), source.Plan.Recipe.Yeast.Name, "", YeastWords.Amount(source.Plan, source.Notation), source.Title(step.Spec.Id)];

    private static string Clock(RunStep step, RecordSource source) => step.EndedMs is { } at ? source.Notation.Clock(at) : "";
}
