using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;

namespace BrewDeck.Reports;

/// <summary>What happened: readings, remedies, notes, what was taken back, and every event.</summary>
internal static class RecordHappenings
{
    public static RecordTable Readings(RecordSource source) => new(
        "Readings", ["at", "step", "reading", "typed", "expected", "off", "what it changed"],
        [.. source.State.Readings.Select(r => ImmutableArray.Create(
            source.Clock(r.AtMs),
            r.StepId.Length > 0 ? source.Title(r.StepId) : "",
            ReadingWords.One(r.Reading, source.Plan.Brewhouse, source.Notation),
            r.Reading.AsTyped,
            double.IsFinite(r.Expected) ? ReadingWords.Value(r.Reading.Kind, r.Expected, source.Notation) : "",
            ReadingWords.Against(r.Reading.Kind, r.Reading.Value, r.Expected, source.Notation),
            FigureWords.Moved(r.Moved, source.Notation)))]);

    public static RecordTable Remedies(RecordSource source) => new(
        "Remedies taken", ["at", "remedy", "takes", "gives"],
        [.. source.State.Remedies.Select(r => ImmutableArray.Create(
            source.Clock(r.AtMs),
            RemedyWords.Title(r.Remedy, source.Plan.Brewhouse, source.Notation),
            RemedyWords.Cost(r.Remedy, source.Notation),
            RemedyWords.Gives(r.Remedy, source.Notation)))]);

    public static RecordTable Notes(RecordSource source) => new(
        "Notes", ["at", "note"], [.. source.State.Notes.Select(n => ImmutableArray.Create(source.Clock(n.AtMs), n.Text))]);

    /// <summary>What was entered and taken back; both stay among the events.</summary>
    public static RecordTable Corrections(RecordSource source) => new(
        "Corrections", ["at", "taken back", "entered at", "event"],
        [.. source.Events.OfType<Undone>()
            .Where(u => u.Seq > 0 && u.Seq < source.Events.Count)
            .Select(u => ImmutableArray.Create(
                source.Clock(u.AtMs), Words(source).Of(source.Events[u.Seq], source.Events), source.Clock(source.Events[u.Seq].AtMs), source.Notation.Number(u.Seq, "0")))]);

    public static RecordTable Events(RecordSource source) => new(
        "Every event", ["no.", "at (UTC)", "by", "what"],
        [.. source.Events.Select((e, seq) => ImmutableArray.Create(
            source.Notation.Number(seq, "0"), EventRow.IsoUtc(e.AtMs), EventActor.Of(e), Words(source).Of(e, source.Events)))]);

    private static EventWords Words(RecordSource source) => new(source.Plan.Brewhouse, source.Notation, source.Title);
}
