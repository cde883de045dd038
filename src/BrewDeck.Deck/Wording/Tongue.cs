using System.Collections.ObjectModel;

namespace BrewDeck.Deck.Wording;

/// <summary>
/// A language that the deck speaks. A message is known by its English text with numbered places for what is put in
/// (<c>Fill {0} to {1}</c>), as gettext does; what a catalogue does not have is said in English.
/// </summary>
/// <param name="code">ISO 639-1, such as <c>de</c>.</param>
/// <param name="decimalMark">Between whole and tenths.</param>
/// <param name="lowersNouns">Whether a noun within a sentence begins with a small letter.</param>
/// <param name="catalogue">The messages; null: English itself.</param>
public sealed class Tongue(string code, char decimalMark, bool lowersNouns, Catalogue? catalogue)
{
    /// <summary>Says each message as it stands in the source.</summary>
    public static Tongue English { get; } = new("en", '.', lowersNouns: true, null);

    private static readonly Lazy<Tongue> German = new(() => new("de", ',', lowersNouns: false, Catalogue.Embedded("de.po")));

    public string Code => code;

    public char DecimalMark => decimalMark;

    public bool LowersNouns => lowersNouns;

    public bool IsEnglish => catalogue is null;

    /// <summary>The codes of all languages, English first.</summary>
    public static IReadOnlyList<string> Codes { get; } = ["en", "de"];

    /// <summary>By a code or a locale: <c>de</c>, <c>de_AT.UTF-8</c>, <c>de-CH</c>.</summary>
    /// <returns>Null: it is not spoken here.</returns>
    public static Tongue? Of(string locale)
    {
        var end = locale.AsSpan().IndexOfAny('_', '-', '.');
        return (end < 0 ? locale : locale[..end]).ToLowerInvariant() switch
        {
            "en" => English,
            "de" => German.Value,
            _ => null,
        };
    }

    /// <summary>Translations by message; names of things after <c>name</c> and <see cref="Catalogue.ContextMark"/>.</summary>
    public IReadOnlyDictionary<string, string> Messages => catalogue?.Messages ?? ReadOnlyDictionary<string, string>.Empty;

    /// <returns>Null: the message is said in English.</returns>
    public string? Find(ReadOnlySpan<char> english) => catalogue?.Find(english);

    /// <summary>A name of a thing: kept apart from messages, for <c>left</c> is a key and also what time is.</summary>
    public string? Name(string english) => catalogue?.Find($"name{Catalogue.ContextMark}{english}");
}
