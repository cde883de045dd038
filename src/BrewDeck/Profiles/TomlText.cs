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
    private readonly string _path;

    public TomlText(SchemaKey[] keys)
        : this(new(), keys, [], true, "")
    {
    }

    private TomlText(StringBuilder text, SchemaKey[] keys, HashSet<string> begun, bool comments, string path) =>
        (_text, _keys, _begun, _comments, _path) = (text, keys, begun, comments, path);

    /// <summary>A comment of its own, before anything else is written.</summary>
    public void Remark(string comment) => _text.Append("# ").Append(comment).Append('\n');

    public void PutUnlessEmpty(string key, string value)
    {
        if (value.Length > 0)
            Put(key, value);
    }

    public void Put(string key, string value) => Line(Known(key), Quoted(value));

    /// <param name="note">Where the number comes from; null: nothing is known of that.</param>
    public void Put(string key, double? value, string? note = null)
    {
        var quantity = (SchemaKey.Quantity)Known(key);
        if (value is { } number)
            Line(quantity, $"\"{Written(quantity, number)}\"", note);
    }

    public void Put(string key, IEnumerable<string> words) =>
        Line(Known(key), $"[{string.Join(", ", words.Select(Quoted))}]");

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
        var path = _path + key;
        var first = _begun.Add(path);
        _text.Append('\n');
        if (first)
            _text.Append("# ").Append(section.Meaning).Append('\n');
        _text.Append(section.Many ? $"[[{path}]]\n" : $"[{path}]\n");
        return new(_text, section.Keys, _begun, first, path + ".");
    }

    public override string ToString() => _text.ToString();

    /// <summary>A share as per cent when that reads back to the same number, else plain.</summary>
    private static string Written(SchemaKey.Quantity key, double value)
    {
        if (Handier(key, value) is { } handier)
            return handier;
        var percent = $"{(100 * value).ToString("G12", CultureInfo.InvariantCulture)} %";
        return key.Dimension == Dimension.Fraction
            && QuantityReader.Read(percent, Dimension.Fraction) == QuantityRead.Of(value)
            ? percent
            : QuantityReader.Text(value, key.Unit is "SG" or "M/mL/°P" ? "" : key.Unit);
    }

    /// <summary>Centimetres and kilowatts where they read better and back to the same number.</summary>
    private static string? Handier(SchemaKey.Quantity key, double value)
    {
        var (unit, factor) = key.Unit switch
        {
            "m" when value < 1 => ("cm", 100),
            "W" when value >= 1000 => ("kW", 0.001),
            "J/K" when value >= 1000 => ("kJ/K", 0.001),
            _ => ("", 0),
        };
        if (unit.Length == 0)
            return null;
        var text = QuantityReader.Text(QuantityUnits.Tidy(factor * value), unit);
        return QuantityReader.Read(text, key.Dimension) == QuantityRead.Of(value) ? text : null;
    }

    private SchemaKey Known(string key) => _keys.First(k => k.Name == key);

    private void Line(SchemaKey key, string value, string? note = null)
    {
        _text.Append(key.Name).Append(" = ").Append(value);
        var comment = (_comments, note) switch
        {
            (true, null) => key.Meaning,
            (true, _) => $"{key.Meaning} ({note})",
            (false, null) => null,
            (false, _) => $"({note})",
        };
        if (comment is not null)
            _text.Append("  # ").Append(comment);
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
