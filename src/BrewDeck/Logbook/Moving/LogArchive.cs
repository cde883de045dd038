using System.Text;
using System.Text.Json;
using BrewDeck.Deck;

namespace BrewDeck.Logbook.Moving;

/// <summary>
/// A whole logbook as one plain text, JSON Lines: a line that says what follows, then each batch under a line with its number and count,
/// its lines as they stand on the tape; last the brewer's own profile files.
/// </summary>
internal static class LogArchive
{
    private const int Format = 1;

    public static void Write(TextWriter output, ILogReader logbook, string folder)
    {
        var heads = logbook.List().OrderBy(h => h.Number).ToList();
        var files = OwnFiles.In(folder).Select(name => (name, Text: OwnFiles.Text(folder, name))).Where(f => f.Text is not null).ToList();
        Line(output, json =>
        {
            json.WriteNumber("brewdeck_logbook", Format);
            json.WriteNumber("batches", heads.Count);
            json.WriteNumber("files", files.Count);
        });
        foreach (var head in heads)
            Batch(output, head.Number, logbook.Lines(head.Number));
        foreach (var (name, text) in files)
        {
            Line(output, json =>
            {
                json.WriteString("file", name);
                json.WriteString("text", text);
            });
        }
    }

    /// <summary>Reads all of it before anything is done with it.</summary>
    /// <param name="path">For messages.</param>
    /// <exception cref="LogbookException">Damaged, cut short or no logbook; the message names the line.</exception>
    public static LogArchiveContent Read(TextReader input, string path) => new LogArchiveReader(input, path, Format).Read();

    private static void Batch(TextWriter output, int number, IReadOnlyList<TapeLine> lines)
    {
        Line(output, json =>
        {
            json.WriteNumber("batch", number);
            json.WriteNumber("events", lines.Count);
        });
        foreach (var line in lines)
            output.Write(Encoding.ASCII.GetString(line.ToUtf8()));
    }

    private static void Line(TextWriter output, Action<Utf8JsonWriter> write)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        output.Write(Encoding.ASCII.GetString(buffer.ToArray()));
        output.Write('\n');
    }
}

/// <summary>What an archive holds.</summary>
internal sealed record LogArchiveContent(
    IReadOnlyList<(int Number, IReadOnlyList<TapeLine> Lines)> Batches, IReadOnlyList<(string Name, string Text)> Files);
