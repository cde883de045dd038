using System.Text;

namespace BrewDeck.Tests.Reference;

/// <summary>The embedded tables of check values.</summary>
internal static class ReferenceData
{
    private const string Folder = "Reference/";

    /// <summary>Rows of a table in file order; <paramref name="topic"/> is the file's name without ".csv".</summary>
    public static IReadOnlyList<ReferenceRow> Rows(string topic) =>
        [.. Records(Text(topic + ".csv")).Skip(1).Select(each => Row(topic, each.Line, each.Fields))];

    public static IEnumerable<string> TopicsOnFile() =>
        typeof(ReferenceData).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal)
                && name.EndsWith(".csv", StringComparison.Ordinal))
            .Select(name => name[Folder.Length..^".csv".Length])
            .Order(StringComparer.Ordinal);

    public static string Text(string file)
    {
        using var stream = typeof(ReferenceData).Assembly.GetManifestResourceStream(Folder + file)
            ?? throw new FileNotFoundException($"no embedded {file}");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private static ReferenceRow Row(string topic, int line, string[] fields) => fields.Length == 7
        ? new(topic, line, fields[0], fields[1], fields[2], fields[3], fields[4], fields[5], fields[6])
        : throw new FormatException($"{topic}.csv:{line}: {fields.Length} fields, 7 expected");

    // RFC 4180, one record a line: no field of these tables holds a line break
    private static IEnumerable<(int Line, string[] Fields)> Records(string text)
    {
        var line = 0;
        foreach (var record in text.Split('\n'))
        {
            line++;
            if (record.Trim().Length > 0) yield return (line, Fields(record.TrimEnd('\r')));
        }
    }

    private static string[] Fields(string record)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < record.Length; i++)
        {
            var c = record[i];
            if (c == '"' && quoted && i + 1 < record.Length && record[i + 1] == '"') field.Append(record[++i]);
            else if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) fields.Add(Take(field));
            else field.Append(c);
        }

        fields.Add(Take(field));
        return [.. fields];
    }

    private static string Take(StringBuilder field)
    {
        var text = field.ToString();
        field.Clear();
        return text;
    }
}
