using System.Text.Json.Nodes;
using Json.Schema;

namespace BrewDeck.SystemTests.Profiles;

/// <summary>The copied BeerJSON schema and example documents.</summary>
internal static class BeerJsonFiles
{
    private static readonly string Root = Path.Combine(AppContext.BaseDirectory, "Profiles", "BeerJson");

    private static readonly Lazy<JsonSchema> Schema = new(LoadSchema);

    public static IEnumerable<string> Documents => Directory.EnumerateFiles(Path.Combine(Root, "documents")).Order(StringComparer.Ordinal).Select(Path.GetFileName)!;

    public static string Document(string name) => File.ReadAllText(Path.Combine(Root, "documents", name));

    public static IEnumerable<string[]> Rows(string quantity) =>
        File.ReadLines(Path.Combine(Root, "conformance.csv")).Select(Fields).Where(f => f[0] == quantity);

    public static JsonNode SchemaFile(string name) => JsonNode.Parse(File.ReadAllText(Path.Combine(Root, "schema", name)))!;

    public static bool IsValid(string json)
    {
        using var document = System.Text.Json.JsonDocument.Parse(json);
        return Schema.Value.Evaluate(document.RootElement).IsValid;
    }

    private static JsonSchema LoadSchema()
    {
        var all = Directory.EnumerateFiles(Path.Combine(Root, "schema")).Select(f => (File: f, Schema: JsonSchema.FromFile(f))).ToArray();
        foreach (var (_, schema) in all)
            SchemaRegistry.Global.Register(schema);
        return all.Single(s => Path.GetFileName(s.File) == "beer.json").Schema;
    }

    /// <summary>One line of a comma-separated file with quoted fields and doubled quotes.</summary>
    private static string[] Fields(string line)
    {
        var fields = new List<string> { "" };
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
                fields[^1] += line[i++];
            else if (line[i] == '"')
                quoted = !quoted;
            else if (line[i] == ',' && !quoted)
                fields.Add("");
            else
                fields[^1] += line[i];
        return [.. fields];
    }
}
