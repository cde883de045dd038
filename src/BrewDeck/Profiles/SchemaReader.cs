using System.Globalization;
using BrewDeck.Core.Waters;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Checks a file against its schema: the first thing wrong is thrown as the one clear line.</summary>
internal sealed class SchemaReader(string file)
{
    /// <exception cref="ProfileException">The first thing wrong.</exception>
    public static SchemaEntry Read(string text, string file, SchemaKey[] schema) =>
        new SchemaReader(file).Table(TomlTree.Read(text, file), schema, "");

    private SchemaEntry Table(TomlNode.Table table, SchemaKey[] keys, string path)
    {
        foreach (var (name, entry) in table.Entries)
            if (keys.All(k => k.Name != name))
                throw Unknown(name, keys, path, entry.Line);
        var read = new SchemaEntry(file, table.Line);
        foreach (var key in keys)
            if (table.Entries.TryGetValue(key.Name, out var entry))
                read.Set(key.Name, Value(key, entry, path), entry.Line);
            else
                Missing(key, read, path);
        return read;
    }

    private ProfileException Unknown(string name, SchemaKey[] keys, string path, int line)
    {
        var near = NearestName.To(name, keys.Select(k => k.Name));
        var right = near is null ? $"known are {string.Join(", ", keys.Select(k => k.Name))}" : $"did you mean {near}?";
        return ProfileError.At(file, line, $"unknown key {path}{ProfileError.OneLine(name)}; {right}");
    }

    private void Missing(SchemaKey key, SchemaEntry read, string path)
    {
        if (key is SchemaKey.Quantity { Default: { } number })
            read.Set(key.Name, number, read.Line);
        else if (key is SchemaKey.Choice { Default: { } word } choice)
            read.Set(key.Name, choice.Many ? new[] { word } : word, read.Line);
        else if (key.Required)
            throw ProfileError.At(file, read.Line, $"{path}{key.Name} is missing; {SchemaExample.Of(key)}");
    }

    private object Value(SchemaKey key, TomlNode.Entry entry, string path) => key switch
    {
        SchemaKey.Quantity quantity => Quantity(quantity, entry.Value, path),
        SchemaKey.Span span => Span(span, entry.Value, path),
        SchemaKey.Text text => Text(text, entry.Value, path),
        SchemaKey.Choice { Many: true } choice => Words(choice, entry.Value, path),
        SchemaKey.Choice choice => Word(choice, entry.Value, path),
        SchemaKey.Texts texts => Listed(texts, entry.Value, path).Select(n => Plain(texts, n, path)).ToArray(),
        SchemaKey.Amount amount => Amount(amount, entry.Value, path),
        SchemaKey.Section section => Section(section, entry.Value, path),
        _ => throw new InvalidOperationException(key.Name),
    };

    private object Quantity(SchemaKey.Quantity key, TomlNode node, string path)
    {
        var written = node switch
        {
            TomlNode.Text text => text.Value,
            TomlNode.Number number => number.Written,
            _ => throw Wrong(key, node, path),
        };
        var read = QuantityReader.ReadIn(written, key.Dimension, key.Unit);
        if (!read.Ok)
            throw ProfileError.At(file, node.Line, $"{path}{key.Name}: {read.Why}");
        return read.Value >= key.Least && read.Value <= key.Most
            ? read.Value
            : throw ProfileError.At(file, node.Line,
                $"{path}{key.Name} is {Shown(read.Value, key)}; it must be {SchemaExample.Range(key)}");
    }

    private object Span(SchemaKey.Span key, TomlNode node, string path)
    {
        if (node is not TomlNode.Text { Value: var written })
        {
            var both = (double)Quantity(key.End, node, path);
            return new Band(both, both);
        }

        var ends = written.Split(" to ");
        if (ends.Length > 2)
            throw ProfileError.At(file, node.Line, $"{path}{key.Name} is '{ProfileError.OneLine(written)}'; {SchemaExample.Of(key)}");
        var (least, most) = (End(ends[0]), End(ends[^1]));
        return least <= most
            ? new Band(least, most)
            : throw ProfileError.At(file, node.Line, $"{path}{key.Name} goes from {Shown(least, key.End)} down to {Shown(most, key.End)}; write the smaller one first");

        double End(string text) => (double)Quantity(key.End, new TomlNode.Text(text, node.Line), path);
    }

    private static string Shown(double value, SchemaKey.Quantity key) => SchemaExample.Written(value, key.Unit);

    private string Text(SchemaKey.Text key, TomlNode node, string path)
    {
        var text = Plain(key, node, path);
        if (text.Length > key.Longest)
            throw ProfileError.At(file, node.Line,
                $"{path}{key.Name} has {text.Length} characters; at most {key.Longest}");
        return key.Required && string.IsNullOrWhiteSpace(text)
            ? throw ProfileError.At(file, node.Line, $"{path}{key.Name} is empty; {SchemaExample.Of(key)}")
            : text;
    }

    private string Plain(SchemaKey key, TomlNode node, string path)
    {
        var text = node is TomlNode.Text plain ? plain.Value : throw Wrong(key, node, path);
        return text.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t'))
            ? throw ProfileError.At(file, node.Line,
                $"{path}{key.Name} has a control character in it; write plain text")
            : text;
    }

    private string Word(SchemaKey.Choice key, TomlNode node, string path)
    {
        var written = Plain(key, node, path);
        var known = Array.Find(key.Words, w => w.Equals(written.Trim(), StringComparison.OrdinalIgnoreCase));
        if (known is not null)
            return known;
        var near = NearestName.To(written, key.Words) is { } word ? $" (did you mean {word}?)" : "";
        throw ProfileError.At(file, node.Line,
            $"{path}{key.Name} is '{ProfileError.OneLine(written)}'; it must be {SchemaExample.Words(key)}{near}");
    }

    private string[] Words(SchemaKey.Choice key, TomlNode node, string path) =>
        [.. Listed(key, node, path).Select(n => Word(key, n, path))];

    private IReadOnlyList<TomlNode> Listed(SchemaKey key, TomlNode node, string path) => node switch
    {
        TomlNode.List list when list.Items.Count > 0 => list.Items,
        TomlNode.Text => [node],
        _ => throw Wrong(key, node, path),
    };

    private (double, string) Amount(SchemaKey.Amount key, TomlNode node, string path)
    {
        var text = Plain(key, node, path).Trim();
        var split = text.AsSpan().LastIndexOfAnyInRange('0', '9') + 1;
        var unit = Array.Find(key.Units, u => u.Equals(text[split..].Trim(), StringComparison.OrdinalIgnoreCase));
        if (unit is null
            || !double.TryParse(text[..split], NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            throw ProfileError.At(file, node.Line,
                $"{path}{key.Name} is '{ProfileError.OneLine(text)}'; {SchemaExample.Of(key)}");
        return number > 0 && number <= key.Most
            ? (number, unit)
            : throw ProfileError.At(file, node.Line,
                $"{path}{key.Name} is '{ProfileError.OneLine(text)}'; it must be above 0 and at most {key.Most}");
    }

    private IReadOnlyList<SchemaEntry> Section(SchemaKey.Section key, TomlNode node, string path)
    {
        IReadOnlyList<TomlNode.Table> tables = node switch
        {
            TomlNode.Table table when !key.Many => [table],
            TomlNode.Tables list when key.Many => list.Items,
            TomlNode.List list when key.Many && list.Items.All(i => i is TomlNode.Table) =>
                [.. list.Items.Cast<TomlNode.Table>()],
            _ => throw Wrong(key, node, path),
        };
        return tables.Count >= key.Least
            ? [.. tables.Select(t => Table(t, key.Keys, $"{path}{key.Name}."))]
            : throw ProfileError.At(file, node.Line, $"{path}{key.Name} is empty; {SchemaExample.Of(key)}");
    }

    private ProfileException Wrong(SchemaKey key, TomlNode node, string path) =>
        ProfileError.At(file, node.Line, $"{path}{key.Name} is {node.Kind}; {SchemaExample.Of(key)}");
}
