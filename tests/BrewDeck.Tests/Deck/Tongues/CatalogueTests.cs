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

        None(missing.Select(t => $"\n#: {t.First().File}\nmsgid {Quoted(t.Key)}\nmsgstr \"\""));
    }

    [Theory, MemberData(nameof(Languages))]
    public void Nothing_is_translated_that_is_not_said(string language)
    {
        var said = SourceTexts.Deck.Said.Select(t => t.Text).ToHashSet();

        None(Messages(language).Keys.Where(k => !k.StartsWith(NameMark, StringComparison.Ordinal) && !said.Contains(k)));
    }

    [Theory, MemberData(nameof(Languages))]
    public void A_translation_puts_in_the_same(string language) => Assert.All(
        Messages(language), m => Assert.Equal(Places(m.Key), Places(m.Value)));

    /// <summary>Units, keys of the key table and of JSON, what is written into files: not words of a screen, or said by <c>Name</c>.</summary>
    private static readonly string[] Codes = ["QuantityUnits", "Keys/KeyMap", "Probes/ProbeLine", "Wording/Tongue.cs", "SetUp/BrewhouseDraft", "SetUp/BrewhouseNotes", "SetUp/Largest"];

    /// <summary>Keys of answers and sums, words that may be typed, names that stand in files.</summary>
    private static readonly string[] Ids =
    [
        "fermenter", "grain", "source", "room", "bx", "brix", "target_c:", "{0} pump", "probe {0}", ", by rule",
        "whirlpool", "rest", "each", "table-sugar", "dextrose", "glucose", "gypsum", "calcium-chloride", "epsom-salt",
        "baking-soda", "table-salt", "lactic-80", "lactic-88", "phosphoric-10", "phosphoric-75", "conversion", "ale yeast", "brewhouse", "today", "tomorrow", "quayside-65",
        "quayside-amber", "harbour-lager", "kettle", ".dead", "evaporation", ".net", ".loss", "none", "gas", "steam",
    ];

    [Fact]
    public void No_text_stands_as_it_is() => None(SourceTexts.Deck.Unsaid.Where(
        t => !Ids.Contains(t.Text) && !Codes.Any(f => t.File.StartsWith(f, StringComparison.Ordinal))));

    /// <summary>Names all of them where there are some: <c>Assert.Empty</c> would cut them short.</summary>
    private static void None<T>(IEnumerable<T> found)
    {
        var all = string.Join("\n", found);
        Assert.True(all.Length == 0, all);
    }

    private static IReadOnlyDictionary<string, string> Messages(string language) => Tongue.Of(language)!.Messages;

    private static string Places(string message) => string.Join(" ", Place().Matches(message).Select(m => m.Value).Order().Distinct());

    internal static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Place();
}
