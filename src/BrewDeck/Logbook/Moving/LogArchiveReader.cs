using System.Text;
using System.Text.Json;
using BrewDeck.Deck;

namespace BrewDeck.Logbook.Moving;

/// <summary>Reads an archive line by line; what is not as it was written is refused with its place.</summary>
internal sealed class LogArchiveReader(TextReader input, string path, int format)
{
    private int _line;

    public LogArchiveContent Read()
    {
        var head = Next();
        if (Number(head, "brewdeck_logbook") is var written && written != format)
            throw Wrong($"is format {written} of a whole logbook, this version reads {format}; a newer brewdeck can read it");
        var (batches, files) = (Number(head, "batches"), Number(head, "files"));
        var content = new LogArchiveContent([.. Times(batches, Batch)], [.. Times(files, OneFile)]);
        return input.ReadLine() is null ? content : throw Wrong("should be the end: more follows than was announced");
    }

    private static IEnumerable<T> Times<T>(int times, Func<T> read) => Enumerable.Range(0, times).Select(_ => read());

    private (int Number, IReadOnlyList<TapeLine> Lines) Batch()
    {
        var head = Next();
        var (number, events) = (Number(head, "batch"), Number(head, "events"));
        if (number < 1 || events < 1)
            throw Wrong("should name a batch of 1 event or more");
        var lines = new List<TapeLine>();
        for (var i = 0; i < events; i++)
            lines.Add(Event(lines.Count > 0 ? lines[^1] : null));
        return (number, lines);
    }

    private TapeLine Event(TapeLine? before)
    {
        var text = NextText();
        return TapeLine.Parse(Encoding.UTF8.GetBytes(text)) is { } line && line.Follows(before)
            ? line
            : throw Wrong("does not match its checksum");
    }

    private (string, string) OneFile()
    {
        var line = Next();
        return Text(line, "file") is { } name && OwnFiles.IsOne(name) && Text(line, "text") is { } text
            ? (name, text)
            : throw Wrong("should be a profile file");
    }

    private static string? Text(JsonElement line, string name) =>
        Property(line, name) is { ValueKind: JsonValueKind.String } value ? Unescaped(value) : null;

    /// <returns>Null: there is none, or a name in the line holds half a character.</returns>
    private static JsonElement? Property(JsonElement line, string name)
    {
        try
        {
            return line.TryGetProperty(name, out var value) ? value : null;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    /// <returns>Null: it holds half a character.</returns>
    private static string? Unescaped(JsonElement text)
    {
        try
        {
            return text.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private int Number(JsonElement line, string name) =>
        Property(line, name) is { ValueKind: JsonValueKind.Number } value && value.TryGetInt32(out var number) && number >= 0
            ? number
            : throw Wrong($"should have \"{name}\"; \"brewdeck log export --all\" writes such a file");

    private JsonElement Next()
    {
        try
        {
            using var document = JsonDocument.Parse(NextText());
            return document.RootElement.ValueKind == JsonValueKind.Object ? document.RootElement.Clone() : throw Wrong("is no JSON object");
        }
        catch (JsonException)
        {
            throw Wrong("is no JSON; \"brewdeck log export --all\" writes such a file");
        }
    }

    private string NextText()
    {
        _line++;
        return input.ReadLine() ?? throw Wrong("is missing: the file was cut short");
    }

    private LogbookException Wrong(string what) => new($"{path}:{Math.Max(1, _line)}: {what}");
}
