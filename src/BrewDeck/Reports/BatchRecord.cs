namespace BrewDeck.Reports;

/// <summary>
/// A batch record in the sense of ISA-88, in the order in which it is read: what was brewed, what came of it, step by step, what
/// happened beside the steps, and every event.
/// </summary>
internal static class BatchRecord
{
    public static IReadOnlyList<RecordTable> Of(RecordSource source) =>
    [
        RecordHead.Batch(source),
        RecordHead.Figures(source),
        RecordRecipe.Of(source),
        .. new[] { RecordWentIn.Of(source) }.Where(table => table.Rows.Length > 0),
        RecordSteps.Of(source),
        .. new[]
        {
            RecordHappenings.Readings(source),
            RecordHappenings.Remedies(source),
            RecordAlarms.Of(source),
            RecordHappenings.Notes(source),
            RecordHappenings.Corrections(source),
            RecordHead.AfterTheDay(source),
            RecordHead.Limits(source),
            RecordHappenings.Events(source),
            RecordHead.Seal(source),
        }.Where(table => table.Rows.Length > 0),
    ];
}
