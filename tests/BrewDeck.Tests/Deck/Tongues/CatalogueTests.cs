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

        Assert.Equal("", string.Join("\n", Messages(language).Keys.Where(k => !k.StartsWith(NameMark, StringComparison.Ordinal) && !said.Contains(k))));
    }

    [Theory, MemberData(nameof(Languages))]
    public void A_translation_puts_in_the_same(string language) => Assert.All(
        Messages(language), m => Assert.Equal(Places(m.Key), Places(m.Value)));

    /// <summary>Where texts still stand as they are: everything off the brew day. Falls with each page that is put through <c>Text</c>.</summary>
    private static readonly string[] NotYet =
    [
        "Reckoning/", "RecipeMaking/", "SetUp/", "Training/", "Trends/", "Readings/FermenterTyping", "Readings/DateTyping", "Asks/SearchAsk", "Wording/BatchText",
        "Wording/BatchWords", "Wording/FermentWords", "Wording/LessonWords", "Wording/ScalingWords", "Wording/TrendWords", "Wording/PlanText", "Pages/AfterDayPage",
        "Pages/Batch", "Pages/Catalogue", "Pages/Exercises", "Pages/Lessons", "Pages/PackagingAsks", "Pages/ReckonerPage", "Pages/Recipe", "Pages/Scale",
        "Pages/SetUp", "Pages/SideBySide", "Pages/SumPage", "Pages/Trends", "Pages/Trial", "BatchSearch",
    ];

    /// <summary>Units, keys of the key table and of JSON: not words, or said by <c>Name</c>.</summary>
    private static readonly string[] Codes = ["QuantityUnits", "Keys/KeyMap", "Probes/ProbeLine", "Wording/Tongue.cs"];

    private static readonly string[] Ids = ["fermenter", "grain", "source", "room", "bx", "brix", "store_trouble", "water_", "target_c:", "fullest_", "{0} pump", "probe {0}", ", by rule"];

    [Fact]
    public void No_text_of_the_brew_day_stands_as_it_is() => Assert.Equal("", string.Join("\n", SourceTexts.Deck.Unsaid.Where(
        t => !Ids.Contains(t.Text) && !NotYet.Concat(Codes).Any(f => t.File.StartsWith(f, StringComparison.Ordinal)))));

    /// <summary>May only fall: then lower it here.</summary>
    [Fact]
    public void Texts_that_are_said_in_English_only_grow_no_more() => Assert.InRange(
        SourceTexts.Deck.Unsaid.Count(t => NotYet.Any(f => t.File.StartsWith(f, StringComparison.Ordinal))), 0, MostUnsaid);

    private const int MostUnsaid = 1141;

    private static IReadOnlyDictionary<string, string> Messages(string language) => Tongue.Of(language)!.Messages;

    private static string Places(string message) => string.Join(" ", Place().Matches(message).Select(m => m.Value).Order().Distinct());

    internal static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Place();
}
