using System.Text;
using BrewDeck.Deck;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BrewDeck.Profiles;

/// <summary>
/// Changes single values of a brewhouse file and leaves every other byte as it is: Tomlyn's syntax tree only says where the value stands.
/// </summary>
internal static class TomlEdit
{
    /// <param name="note">Comment line written above each changed key, without its #.</param>
    /// <exception cref="ProfileException">The key is not written in the usual way; the message says what to do by hand.</exception>
    public static string Replace(string text, string file, IEnumerable<LessonKey> keys, string note)
    {
        var document = SyntaxParser.Parse(text, file, validate: false);
        var edits = keys.Select(k => (Pair: Find(document, k), Key: k)).OrderByDescending(e => e.Pair?.Span.Start.Offset ?? int.MaxValue).ToList();
        var result = new StringBuilder(text);
        foreach (var (pair, key) in edits)
        {
            if (pair is null)
                Add(result, text, document, key.MayBeNew ? key : throw ByHand(file, key), note);
            else
                Change(result, text, pair, key, note);
        }
        return result.ToString();
    }

    private static void Change(StringBuilder result, string text, KeyValueSyntax pair, LessonKey key, string note)
    {
        var value = pair.Value!.Span;
        var from = value.Start.Offset;
        result.Remove(from, value.End.Offset - from + 1).Insert(from, $"\"{key.Value}\"");
        var line = text.LastIndexOf('\n', Math.Max(0, pair.Span.Start.Offset - 1)) + 1;
        var indent = text[line..pair.Span.Start.Offset];
        result.Insert(line, $"{(string.IsNullOrWhiteSpace(indent) ? indent : "")}# {note}{Ending(text)}");
    }

    /// <summary>At the end of the table, which is at the end of the file if it is new: what was written before it stays where it is.</summary>
    private static void Add(StringBuilder result, string text, DocumentSyntax document, LessonKey key, string note)
    {
        var ending = Ending(text);
        var table = document.Tables.FirstOrDefault(t => t.Name?.ToString().Trim() == key.Table);
        var at = table is null ? text.Length : Math.Min(text.Length, table.Span.End.Offset + 1);
        var fresh = at == 0 || text[at - 1] == '\n' ? "" : ending;
        var head = table is null ? $"{ending}[{key.Table}]{ending}" : "";
        result.Insert(at, $"{fresh}{head}# {note}{ending}{key.Key} = \"{key.Value}\"{ending}");
    }

    private static string Ending(string text) => text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    private static KeyValueSyntax? Find(DocumentSyntax document, LessonKey wanted)
    {
        string vessel = "";
        var seen = 0;
        foreach (var table in document.Tables)
        {
            var name = table.Name?.ToString().Trim() ?? "";
            if (name == "vessel")
                vessel = Pair(table, "id")?.Value is StringValueSyntax id ? id.Value ?? "" : "";
            if (name != wanted.Table || (wanted.Vessel.Length > 0 && vessel != wanted.Vessel) || seen++ != wanted.Nth)
                continue;
            return Pair(table, wanted.Key);
        }
        return null;
    }

    private static KeyValueSyntax? Pair(TableSyntaxBase table, string key) =>
        table.Items.FirstOrDefault(p => p.Key?.ToString().Trim() == key && p.Value is not null);

    private static ProfileException ByHand(string file, LessonKey key) => new(
        $"{file}: [{key.Table}] has no {key.Key} of its own line; write {key.Key} = \"{key.Value}\" by hand");
}
