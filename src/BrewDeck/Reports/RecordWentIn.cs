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

    /// <summary>Nearer two alpha acids are the same bag; share.</summary>
    private const double SameAlpha = 0.0005;

    private static bool IsWater(RunStep step) => step is { Status: RunStatus.Complete, Spec: { Kind: StepKind.Fill or StepKind.AddWater, VolumeL: > 0 } };

    private static ImmutableArray<string> Row(WentIn went, RecordSource source) =>
    [
        Clock(went.Step, source),
        Charges.Name(went.Charge, source.Notation),
        WentInWords.Amount(went, source.Notation) + Alpha(went, source),
        WentInWords.Planned(went, source.Notation),
        source.Title(went.Step.Spec.Id),
    ];

    /// <summary>A bag with another alpha acid than the recipe's was weighed for it: without it nobody brews the beer again.</summary>
    private static string Alpha(WentIn went, RecordSource source)
    {
        var planned = source.Plan.Step(went.Step.Spec.Id)?.Spec.Charges.FirstOrDefault(c => c.Kind == ChargeKind.Hop && c.Name == went.Charge.Name);
        return went is { Amount: > 0, Charge: { Kind: ChargeKind.Hop, Amount: > 0 } hop } && planned is { Amount: > 0 } && Math.Abs(hop.AlphaG / hop.Amount - planned.AlphaG / planned.Amount) > SameAlpha
            ? $", alpha {source.Notation.Percent(hop.AlphaG / hop.Amount)} (planned {source.Notation.Percent(planned.AlphaG / planned.Amount)})"
            : "";
    }

    /// <summary>Of a fill the litres are the plan's until somebody reads the level; of what is poured in, they are measured.</summary>
    private static string Level(RunStep step, RecordSource source)
    {
        if (step is not { Spec.Kind: StepKind.Fill, StartedMs: { } from })
            return "";
        var drawn = source.State.Steps.Where(s => s.StartedMs > from && s.Spec.Kind.EndsBy() == EndsBy.Level && (s.Spec.Vessel == step.Spec.Vessel || s.Spec.To == step.Spec.Vessel || s.Spec.SpargeL > 0)).Min(s => s.StartedMs) ?? long.MaxValue;
        return source.State.Readings.LastOrDefault(r => r.AtMs >= from && r.AtMs <= drawn && r.Reading.Kind == ReadingKind.Volume && r.Reading.Vessel == step.Spec.Vessel) is { } read
            ? $", level read {source.Notation.Volume(read.Reading.Value)}"
            : ", level not read";
    }

    private static ImmutableArray<string> Water(RunStep step, RecordSource source) =>
    [
        Clock(step, source),
        "water",
        source.Notation.Volume(step.Spec.VolumeL!.Value) + Level(step, source),
        source.Plan.Step(step.Spec.Id)?.Spec.VolumeL is { } planned ? source.Notation.Volume(planned) : "not planned",
        source.Title(step.Spec.Id),
    ];

    // nobody is asked how much yeast it was, and an empty cell would read as none
    private static ImmutableArray<string> Yeast(RunStep step, RecordSource source) =>
        [Clock(step, source), source.Plan.Recipe.Yeast.Name, "not weighed", YeastWords.Amount(source.Plan, source.Notation), source.Title(step.Spec.Id)];

    private static string Clock(RunStep step, RecordSource source) => step.EndedMs is { } at ? source.Minute(at) : "";
}
