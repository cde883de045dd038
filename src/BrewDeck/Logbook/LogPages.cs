using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Logbook;

/// <summary>How the logbook is written out.</summary>
internal enum LogFormat
{
    Text,

    /// <summary>JSON Lines.</summary>
    Json,

    /// <summary>RFC 4180, for a spreadsheet.</summary>
    Csv,
}

/// <summary>The list and a batch's page as lines, without their ends, safe to show.</summary>
internal static class LogPages
{
    public static IEnumerable<string> List(IReadOnlyList<BatchHead> heads, LogFormat format) => format switch
    {
        LogFormat.Json => heads.Select(JsonOf),
        LogFormat.Csv => heads.Select(CsvOf).Prepend("batch,opened_utc,recipe,brewhouse,status,events,rehearsed"),
        _ => heads.Select(TextOf).Prepend("batch  opened (UTC)       state     events  recipe, brewhouse"),
    };

    public static IEnumerable<string> Batch(BatchHead head, IEnumerable<RunEvent> events, LogFormat format)
    {
        var rows = events.Select((happened, seq) => EventRow.Of(seq, happened));
        return format == LogFormat.Csv
            ? rows.Select(CsvOf).Prepend("seq,at_utc,kind,step_id,vessel,quantity,value,text,by")
            : rows.Select(TextOf).Prepend("").Prepend($"batch {head.Number}: {Titles(head)}; {Names.Status(head.Status, Notation.Metric)}");
    }

    private static string Titles(BatchHead head) =>
        $"{SafeText.OneLine(head.Recipe)}, {SafeText.OneLine(head.Brewhouse)}{(head.Rehearsed ? ", rehearsed" : "")}";

    private static string TextOf(BatchHead head) => string.Create(
        CultureInfo.InvariantCulture,
        $"{head.Number,5}  {Minute(head.OpenedMs),-17}  {Names.Status(head.Status, Notation.Metric),-8}  {head.Events,6}  {Titles(head)}");

    private static string TextOf(EventRow row)
    {
        var line = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"{row.Seq,5}  {row.AtUtc}  {row.Kind,-13}"));
        foreach (var part in (string[])[row.StepId, row.Vessel, row.Quantity, Number(row.Value), Quoted(row.Text)])
        {
            if (part.Length > 0)
                line.Append("  ").Append(SafeText.OneLine(part));
        }

        return line.ToString();
    }

    private static string CsvOf(BatchHead head) => string.Join(
        ',',
        Number(head.Number),
        EventRow.IsoUtc(head.OpenedMs),
        SafeText.CsvField(head.Recipe),
        SafeText.CsvField(head.Brewhouse),
        BatchStatus.Name(head.Status),
        Number(head.Events),
        head.Rehearsed ? "true" : "false");

    private static string CsvOf(EventRow row) => string.Join(
        ',',
        Number(row.Seq),
        row.AtUtc,
        row.Kind,
        SafeText.CsvField(row.StepId),
        SafeText.CsvField(row.Vessel),
        row.Quantity,
        Number(row.Value),
        SafeText.CsvField(row.Text),
        row.By);

    private static string JsonOf(BatchHead head)
    {
        var utf8 = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(utf8))
        {
            json.WriteStartObject();
            json.WriteNumber("batch", head.Number);
            json.WriteString("opened_utc", EventRow.IsoUtc(head.OpenedMs));
            json.WriteString("recipe", head.Recipe);
            json.WriteString("brewhouse", head.Brewhouse);
            json.WriteString("status", BatchStatus.Name(head.Status));
            json.WriteNumber("events", head.Events);
            json.WriteBoolean("rehearsed", head.Rehearsed);
            json.WriteEndObject();
        }

        return Encoding.ASCII.GetString(utf8.WrittenSpan);
    }

    private static string Minute(long atMs) => EventRow.IsoUtc(atMs) is { Length: 24 } iso ? iso[..16] + "Z" : EventRow.IsoUtc(atMs);

    private static string Number(double? value) => value?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static string Quoted(string text) => text.Length > 0 ? $"\"{text}\"" : "";
}
