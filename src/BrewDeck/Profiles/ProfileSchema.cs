using System.Text;
using static BrewDeck.Profiles.SchemaKey;

namespace BrewDeck.Profiles;

/// <summary>Describes the files from the same tables that read them, so that the description cannot go stale.</summary>
public static class ProfileSchema
{
    /// <summary>Markdown: one heading a file, one table of keys a TOML table.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder();
        File(text, "Brewhouse file", "brewhouses/*.toml", BrewhouseSchema.Keys);
        File(text, "Recipe file", "recipes/*.toml", RecipeSchema.Keys);
        File(text, "Water file", "waters/*.toml", WaterFile.Keys);
        File(text, "Water target file", "water-targets/*.toml", WaterTargetFile.Keys);
        File(text, "Catalogue file", "catalogue.toml", CatalogueFile.Keys);
        return text.ToString();
    }

    private static void File(StringBuilder text, string title, string where, SchemaKey[] keys)
    {
        text.Append($"### {title} (`{where}`)\n\n");
        Keys(text, keys, "");
    }

    private static void Keys(StringBuilder text, SchemaKey[] keys, string path)
    {
        var plain = keys.Where(k => k is not Section).ToArray();
        if (plain.Length > 0)
        {
            text.Append("| key | example | limits | meaning |\n| --- | --- | --- | --- |\n");
            foreach (var key in plain)
                text.Append($"| `{key.Name}` | {Example(key)} | {Limits(key)} | {key.Meaning} |\n");
            text.Append('\n');
        }

        foreach (var section in keys.OfType<Section>())
            Table(text, section, path);
    }

    private static void Table(StringBuilder text, Section section, string path)
    {
        var name = path + section.Name;
        var count = (section.Many, section.Least) switch
        {
            (true, 0) => "any number",
            (true, _) => "one or more",
            (_, 0) => "may be left out",
            _ => "once",
        };
        text.Append($"`{(section.Many ? $"[[{name}]]" : $"[{name}]")}` ({count}): {section.Meaning}\n\n");
        Keys(text, section.Keys, name + ".");
    }

    private static string Example(SchemaKey key) => key switch
    {
        Quantity quantity => $"`\"{quantity.Example}\"`",
        Span span => $"`\"{span.End.Example}\"`",
        Text text => $"`\"{text.Example}\"`",
        Choice { Many: true } choice => $"`[\"{choice.Words[0]}\"]`",
        Choice choice => $"`\"{choice.Words[0]}\"`",
        Texts texts => $"`[\"{string.Join("\", \"", texts.Example)}\"]`",
        Amount amount => $"`\"5 {amount.Units[0]}\"`",
        _ => "",
    };

    private static string Limits(SchemaKey key) => key switch
    {
        Quantity quantity => SchemaExample.Range(quantity) + Otherwise(quantity),
        Span span => SchemaExample.Range(span.End) + Otherwise(span.End),
        Text text => $"up to {text.Longest} characters{(text.Required ? "" : "; optional")}",
        Choice { Default: "" } choice => $"{SchemaExample.Words(choice)}; else as the catalogue says",
        Choice { Default: { } word } choice => $"{SchemaExample.Words(choice)}; else {word}",
        Choice choice => SchemaExample.Words(choice),
        Amount amount => string.Join(", ", amount.Units),
        _ => "optional",
    };

    private static string Otherwise(Quantity key) => key switch
    {
        { Default: { } value } => $"; else {SchemaExample.Written(value, key.Unit)}",
        { Required: false } => "; optional",
        _ => "",
    };
}
