using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Runs;

/// <summary>A reading held against what it should be: a mash against its rest, all else against what was expected.</summary>
internal static class Verdict
{
    /// <summary>"5.5 °C under, 66.5 °C wanted", "0.6 L over", "as expected"; empty when nothing was expected.</summary>
    public static string Of(RunState state, TakenReading taken, Notation notation) =>
        taken.Reading.Kind == ReadingKind.Temperature
        && RestReadings.OffK(state, taken.Reading.Vessel, taken.Reading.Value, taken.AtMs) is var (off, wanted)
        && Math.Abs(off) >= ReadingWords.NearK
            ? notation.Text($"{notation.Kelvin(Math.Abs(off))} {(off < 0 ? notation.Text("under") : notation.Text("over"))}, {notation.Target(wanted)} wanted")
            : ReadingWords.Against(taken.Reading.Kind, taken.Reading.Value, taken.Expected, notation);
}
