using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace BrewDeck.Deck.Wording;

/// <summary>
/// A text that stands in a table and is said later, in the brewer's language. Its words are constant; what an interpolated one puts in
/// is a phrase itself, a <see cref="Named"/> thing, or worded already.
/// </summary>
[InterpolatedStringHandler]
public readonly struct Phrase
{
    private readonly string? _whole;
    private readonly StringBuilder? _message;
    private readonly List<object>? _parts;

    public Phrase(string english) => _whole = english;

    public Phrase(int literalLength, int formattedCount)
    {
        _message = new StringBuilder(literalLength + (3 * formattedCount));
        _parts = new List<object>(formattedCount);
    }

    /// <summary>With numbered places for what is put in.</summary>
    public string Message => _whole ?? _message?.ToString() ?? "";

    public bool IsEmpty => (_whole?.Length ?? _message?.Length ?? 0) == 0;

    public static implicit operator Phrase(string english) => new(english);

    public void AppendLiteral(string value) => _message!.Append(value);

    public void AppendFormatted(string value) => Put(value);

    public void AppendFormatted(Phrase value) => Put(value);

    public void AppendFormatted(Named value) => Put(value);

    /// <summary>In English.</summary>
    public override string ToString() => Said(Notation.Metric);

    internal string Said(Notation notation)
    {
        var message = notation.Tongue.Find(Message) ?? Message;
        return _parts is null ? message : TextHandler.Filled(message, [.. _parts.Select(p => Worded(p, notation))]);
    }

    private static string Worded(object part, Notation notation) => part switch
    {
        Phrase phrase => phrase.Said(notation),
        Named thing => notation.Name(thing.English),
        _ => (string)part,
    };

    private void Put(object part)
    {
        _message!.Append(CultureInfo.InvariantCulture, $"{{{_parts!.Count}}}");
        _parts.Add(part);
    }
}

/// <summary>A thing in a phrase: each language has a name for the usual ones.</summary>
public readonly record struct Named(string English);
