using System.Globalization;
using System.Text;
using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>
/// TOML being written along a schema: every key is known to it, and the first of each kind gets its comment.
/// </summary>
internal sealed class TomlText
{
    private readonly StringBuilder _text;
    private readonly SchemaKey[] _keys;
    private readonly HashSet<string> _begun;
    private readonly bool _comments;

    public TomlText(SchemaKey[] keys)
        : this(new(), keys, [], true)
    {
    }

    private TomlText(StringBuilder text, SchemaKey[] keys, HashSet<string> begun, bool comments) =>
        (_text, _keys, _begun, _comments) = (text, keys, begun, comments);

    public void PutUnlessEmpty(string key, string value)
    {
        if (value.Length > 0)
            Put(key, value);
    }

    public void Put(string key, string value) => Line(Known(key), Quoted(value));

    public void Put(string key, double? value)
    {
        var quantity = (SchemaKey.Quantity)Known(key);
        if (value is { } number)
            Line(quantity, $"\"{Written(quantity, number)}\"");
    }

    public void Put(string key, Core.Waters.Band? value)
    {
        var end = ((SchemaKey.Span)Known(key)).End;
        if (value is { } band)
            Line(Known(key), band.Least == band.Most ? $"\"{Written(end, band.Most)}\"" : $"\"{QuantityReader.Text(band.Least, "")} to {Written(end, band.Most)}\"");
    }

    /// <summary>Begins a table; its keys are commented the first time only.</summary>
    public TomlText Section(string key)
    {
        var section = (SchemaKey.Section)Known(key);
        var first = _begun.Add(key);
        _text.Append('\n');
        if (first)
            _text.Append("# ").Append(section.Meaning).Append('\n');
        _text.Append(section.Many ? $"[[{key}]]\n" : $"[{key}]\n");
        return new(_text, section.Keys, [], first);
    }

    public override string ToString() => _text.ToString();

    /// <summary>A share as per cent when that reads back to the same number, else plain.</summary>
    private static string Written(SchemaKey.Quantity key, double value)
    {
        var percent = $"{(100 * value).ToString("G12", CultureInfo.InvariantCulture)} %";
        return key.Dimension == Dimension.Fraction
            && QuantityReader.Read(percent, Dimension.Fraction) == QuantityRead.Of(value)
            ? percent
            : QuantityReader.Text(value, key.Unit is "SG" or "M/mL/°P" ? "" : key.Unit);
    }

    private SchemaKey Known(string key) => _keys.First(k => k.Name == key);

    private void Line(SchemaKey key, string value)
    {
        _text.Append(key.Name).Append(" = ").Append(value);
        if (_comments && !value.Contains('\n', StringComparison.Ordinal))
            _text.Append("  # ").Append(key.Meaning);
        _text.Append('\n');
    }

    /// <summary>
    /// A basic string: everything that is not plain is escaped, so that it reads back to the same text.
    /// </summary>
    private static string Quoted(string value)
    {
        var text = new StringBuilder("\"");
        foreach (var c in value)
            text.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                _ when char.IsControl(c) => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}"),
                _ => c.ToString(),
            });
        return text.Append('"').ToString();
    }
}
