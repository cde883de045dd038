using System.Globalization;
using BrewDeck.Deck;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BrewDeck.Profiles;

/// <summary>
/// Turns TOML text into a <see cref="TomlNode.Table"/> by way of Tomlyn's syntax tree, which alone keeps the lines.
/// </summary>
internal sealed class TomlTree(string file)
{
    /// <exception cref="ProfileException">Not TOML, or a key given twice.</exception>
    public static TomlNode.Table Read(string text, string file) => new TomlTree(file).Document(Parsed(text, file));

    private static DocumentSyntax Parsed(string text, string file)
    {
        try
        {
            // validation is ours: the library's messages quote whole tables
            var document = SyntaxParser.Parse(text, file, validate: false);
            var first = document.Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error)
                .OrderBy(d => d.Span.Start.Line).ThenBy(d => d.Span.Start.Column).FirstOrDefault();
            return first is null
                ? document : throw ProfileError.At(file, first.Span.Start.Line + 1, NotToml(first.Message));
        }
        catch (TomlException)
        {
            throw ProfileError.At(file, 1, "nested too deeply; a profile needs two levels");
        }
        // the library lets what \ud800 throws through: half a character is no character
        catch (ArgumentOutOfRangeException)
        {
            throw ProfileError.At(file, 1, @"somewhere in it a \u stands for no character; write the character itself");
        }
    }

    private static string NotToml(string message) =>
        message.Contains("newline in a string", StringComparison.Ordinal)
            ? "a text is not closed on its line; end it with \""
            : $"not TOML ({ProfileError.OneLine(message)}); write key = \"value\", quantities in quotes";

    private TomlNode.Table Document(DocumentSyntax document)
    {
        var root = new TomlNode.Table(1);
        foreach (var pair in document.KeyValues)
            Put(root, pair);
        foreach (var table in document.Tables)
            Fill(Opened(root, table), table);
        return root;
    }

    private void Fill(TomlNode.Table table, TableSyntaxBase syntax)
    {
        foreach (var pair in syntax.Items)
            Put(table, pair);
    }

    private TomlNode.Table Opened(TomlNode.Table root, TableSyntaxBase syntax)
    {
        var line = syntax.Span.Start.Line + 1;
        var path = Path(syntax.Name!);
        var parent = path.SkipLast(1).Aggregate(root, (t, key) => Inside(t, key, line));
        var fresh = new TomlNode.Table(line);
        if (syntax is TableArraySyntax)
            return Appended(parent, path[^1], fresh);
        Add(parent, path[^1], fresh, line);
        return fresh;
    }

    private TomlNode.Table Appended(TomlNode.Table parent, string key, TomlNode.Table fresh)
    {
        if (!parent.Entries.TryGetValue(key, out var entry))
            parent.Entries[key] = entry = new(new TomlNode.Tables([], fresh.Line), fresh.Line);
        if (entry.Value is not TomlNode.Tables tables)
            throw ProfileError.At(file, fresh.Line,
                $"[[{key}]] was written as {entry.Value.Kind} before; use double brackets each time");
        tables.Items.Add(fresh);
        return fresh;
    }

    /// <summary>The table of that key, made when missing; the last one of a list of tables.</summary>
    private TomlNode.Table Inside(TomlNode.Table table, string key, int line)
    {
        if (!table.Entries.TryGetValue(key, out var entry))
            table.Entries[key] = entry = new(new TomlNode.Table(line), line);
        return entry.Value switch
        {
            TomlNode.Table inner => inner,
            TomlNode.Tables list => list.Items[^1],
            var other => throw ProfileError.At(file, line, $"{key} is {other.Kind}, not a table"),
        };
    }

    private void Put(TomlNode.Table table, KeyValueSyntax pair)
    {
        var line = pair.Span.Start.Line + 1;
        var path = Path(pair.Key!);
        var parent = path.SkipLast(1).Aggregate(table, (t, key) => Inside(t, key, line));
        Add(parent, path[^1], Node(pair.Value!, line), line);
    }

    private void Add(TomlNode.Table table, string key, TomlNode value, int line)
    {
        if (table.Entries.TryGetValue(key, out var before))
            throw ProfileError.At(file, line,
                $"{ProfileError.OneLine(key)} was given on line {before.Line} already; keep one");
        table.Entries[key] = new(value, line);
    }

    private TomlNode Node(ValueSyntax value, int line) => value switch
    {
        StringValueSyntax text => new TomlNode.Text(text.Value ?? "", line),
        IntegerValueSyntax whole => new TomlNode.Number(whole.Value.ToString(CultureInfo.InvariantCulture), line),
        FloatValueSyntax number => new TomlNode.Number(number.Value.ToString("R", CultureInfo.InvariantCulture), line),
        ArraySyntax list => new TomlNode.List([.. list.Items.Select(i => Node(i.Value!, i.Span.Start.Line + 1))], line),
        InlineTableSyntax inline => Inline(inline, line),
        BooleanValueSyntax => new TomlNode.Other("true or false", line),
        _ => new TomlNode.Other("a date", line),
    };

    private TomlNode.Table Inline(InlineTableSyntax inline, int line)
    {
        var table = new TomlNode.Table(line);
        foreach (var item in inline.Items)
            Put(table, item.KeyValue!);
        return table;
    }

    private static string[] Path(KeySyntax key) => [Name(key.Key!), .. key.DotKeys.Select(d => Name(d.Key!))];

    private static string Name(BareKeyOrStringValueSyntax key) => key switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? "",
        StringValueSyntax text => text.Value ?? "",
        _ => key.ToString(),
    };
}
