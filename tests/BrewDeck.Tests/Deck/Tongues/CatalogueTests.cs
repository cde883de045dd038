using System.Text.RegularExpressions;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck.Tongues;

/// <summary>Each language's catalogue against the messages of the source.</summary>
public sealed partial class CatalogueTests
{
    private static readonly string NameMark = "name" + Catalogue.ContextMark;

    public static TheoryData<string> Languages => [.. Tongue.Codes.Skip(1)];

    /// <summary>The failure says what to add, as it stands in a catalogue.</summary>
    [Theory, MemberData(nameof(Languages))]
    public void Every_message_is_translated(string language)
    {
        var tongue = Tongue.Of(language)!;
        var missing = SourceTexts.Deck.Said.Where(t => t.Text.Any(char.IsLetter) && tongue.Find(t.Text) is null).GroupBy(t => t.Text);

        Assert.Equal("", string.Join("\n", missing.Select(t => $"\n#: {t.First().File}\nmsgid {Quoted(t.Key)}\nmsgstr \"\"")));
    }

    [Theory, MemberData(nameof(Languages))]
    public void Nothing_is_translated_that_is_not_said(string language)
    {
        var said = SourceTexts.Deck.Said.Select(t => t.Text).ToHashSet();

        Assert.Empty(Messages(language).Keys.Where(k => !k.StartsWith(NameMark, StringComparison.Ordinal) && !said.Contains(k)));
    }

    [Theory, MemberData(nameof(Languages))]
    public void A_translation_puts_in_the_same(string language) => Assert.All(
        Messages(language), m => Assert.Equal(Places(m.Key), Places(m.Value)));

    private static IReadOnlyDictionary<string, string> Messages(string language) => Tongue.Of(language)!.Messages;

    private static string Places(string message) => string.Join(" ", Place().Matches(message).Select(m => m.Value).Order().Distinct());

    internal static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Place();
}
