using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace BrewDeck.Deck.Wording;

/// <summary>
/// Takes an interpolated text apart into its message and what is put in. In English it is written down as it stands, at the cost of
/// any interpolated string.
/// </summary>
[InterpolatedStringHandler]
public ref struct TextHandler
{
    private readonly Tongue _tongue;
    private readonly string?[]? _parts;
    private DefaultInterpolatedStringHandler _text;
    private int _count;

    public TextHandler(int literalLength, int formattedCount, Notation notation)
    {
        _tongue = notation.Tongue;
        _parts = _tongue.IsEnglish ? null : new string?[formattedCount];
        _text = new DefaultInterpolatedStringHandler(literalLength, formattedCount, CultureInfo.InvariantCulture);
    }

    public void AppendLiteral(string value) => _text.AppendLiteral(value);

    public void AppendFormatted<T>(T value, int alignment = 0, string? format = null)
    {
        if (_parts is null)
        {
            _text.AppendFormatted(value, alignment, format);
            return;
        }
        var text = value is IFormattable number ? number.ToString(format, CultureInfo.InvariantCulture) : value?.ToString() ?? "";
        _parts[_count] = alignment < 0 ? text.PadRight(-alignment) : text.PadLeft(alignment);
        _text.AppendLiteral("{");
        _text.AppendFormatted(_count++);
        _text.AppendLiteral("}");
    }

    internal string Say()
    {
        if (_parts is null)
            return _text.ToStringAndClear();
        var message = _tongue.Find(_text.Text) ?? _text.ToString();
        _text.Clear();
        return _count == 0 ? message : Filled(message, _parts);
    }

    internal static string Filled(string message, string?[] parts)
    {
        var text = new StringBuilder(message.Length + (16 * parts.Length));
        for (var i = 0; i < message.Length; i++)
        {
            // no message has ten places
            if (message[i] == '{' && i + 2 < message.Length && message[i + 2] == '}' && message[i + 1] - '0' is var place && place >= 0 && place < parts.Length)
            {
                text.Append(parts[place]);
                i += 2;
            }
            else
            {
                text.Append(message[i]);
            }
        }
        return text.ToString();
    }
}
