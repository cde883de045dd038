using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Runs;

/// <summary>A reading held against what it should be: a mash against its rest, all else against what was reckoned, and at the end of a step against the plan.</summary>
internal static class Verdict
{
    /// <summary>"5.5 °C under, 66.5 °C wanted", "0.6 L more than reckoned, 0.2 L under plan", "as expected"; empty when nothing was expected.</summary>
    public static string Of(RunState state, TakenReading taken, Notation notation) =>
        taken.Reading.Kind == ReadingKind.Temperature
        && RestReadings.OffK(state, taken.Reading.Vessel, taken.Reading.Value, taken.AtMs) is var (off, wanted)
        && Math.Abs(off) >= ReadingWords.NearK
            ? notation.Text($"{notation.Kelvin(Math.Abs(off))} {(off < 0 ? notation.Text("under") : notation.Text("over"))}, {notation.Target(wanted)} wanted")
            : string.Join(", ", new[] { ReadingWords.Against(taken.Reading.Kind, taken.Reading.Value, taken.Expected, notation), AgainstPlan(state, taken, notation), OfMashPh(state, taken, notation) }.Where(p => p.Length > 0));

    /// <summary>Of a mash whose pH nobody has predicted, so that no other word is said of it.</summary>
    private static string OfMashPh(RunState state, TakenReading taken, Notation notation) =>
        taken.Reading.Is(ReadingKind.Ph, state.Plan!.Brewhouse.MashTun.Id) && !double.IsFinite(taken.Expected) ? WaterWords.UsualPh(taken.Reading.Value, notation) : "";

    private static string AgainstPlan(RunState state, TakenReading taken, Notation notation) =>
        Planned(state, taken) is { } planned && double.IsFinite(taken.Expected) ? ReadingWords.AgainstPlan(taken.Reading.Kind, taken.Reading.Value, planned, notation) : "";

    /// <summary>What the plan has at the end of the step that was last at work on it, once that end has come; null: it is on the way, as a boil is between two levels, or the plan says nothing.</summary>
    private static double? Planned(RunState state, TakenReading taken)
    {
        var (reading, now) = (taken.Reading, state.SecondsAt(taken.AtMs));
        var last = state.Steps.Where(s => s.StartedMs <= taken.AtMs && (s.Spec.Vessel == reading.Vessel || s.Spec.To == reading.Vessel)
            && (s.Spec.Kind.EndsBy() == EndsBy.Level || s.Spec.Kind is StepKind.HotBreak or StepKind.Boil or StepKind.KnockOut or StepKind.AddWater or StepKind.AddExtract)).MaxBy(s => s.StartedMs);
        return reading.Kind is ReadingKind.Volume or ReadingKind.Gravity && last is not null && (last.EndedMs <= taken.AtMs || IsAtItsEnd(state, last, now))
            ? state.Plan!.Steps.FirstOrDefault(s => s.Spec.Id == last.Spec.Id)?.Expected.FirstOrDefault(e => e.Kind == reading.Kind && e.Vessel == reading.Vessel)?.Value
            : null;
    }

    private static bool IsAtItsEnd(RunState state, RunStep step, double now) =>
        state.Live!.CutAt(now).Running.Any(s => s.Left.Id == step.Spec.Id && s.EndedS is not null);
}
