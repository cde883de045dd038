using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Reports;

/// <summary>What was last read of each figure of a day, as it was read: a hot volume says so. Empty: nobody took one.</summary>
internal sealed class RecordReadings(RecordSource source)
{
    private string Kettle => source.Plan.Brewhouse.Kettle.Id;

    private long? Boils => source.State.Steps.FirstOrDefault(s => s.Spec.Kind == StepKind.HotBreak)?.StartedMs
        ?? source.State.LastDone(s => s.Kind == StepKind.HeatToBoil)?.EndedMs;

    private long? Over => source.State.Steps.LastOrDefault(s => s.Spec.Kind == StepKind.Boil)?.EndedMs;

    public string PreBoilL => Hot(Last(ReadingKind.Volume, Kettle, Runs, Boils));

    public string PreBoilGravity => Said(Last(ReadingKind.Gravity, Kettle, Runs, Boils));

    public string PostBoilL => Over is { } over ? Hot(Last(ReadingKind.Volume, Kettle, over, null)) : "";

    public string FermenterL => Said(Last(ReadingKind.Volume, Places.Fermenter, null, null));

    public string OriginalGravity => source.State.Ferment.MeasuredOriginalSg is { } sg
        ? source.Notation.Gravity(sg)
        : Over is { } over ? Said(Last(ReadingKind.Gravity, Kettle, over, null)) : "";

    public string PitchC => Said(Last(ReadingKind.Temperature, Places.Fermenter, null, null));

    private long? Runs => source.State.Steps.FirstOrDefault(s => s.Spec.Kind.RunsOff())?.StartedMs;

    private TakenReading? Last(ReadingKind kind, string vessel, long? fromMs, long? toMs) => source.State.Readings.LastOrDefault(r =>
        r.Reading.Is(kind, vessel) && (fromMs is null || r.AtMs >= fromMs) && (toMs is null || r.AtMs <= toMs));

    private string Said(TakenReading? read) => read is null ? "" : ReadingWords.Value(read.Reading.Kind, read.Reading.Value, source.Notation);

    private string Hot(TakenReading? read) => read is null ? "" : Said(read) + (read.Reading.AtC is { } at ? $" at {source.Notation.Target(at)}" : " hot");
}
