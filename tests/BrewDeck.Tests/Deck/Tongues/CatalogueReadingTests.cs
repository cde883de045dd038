using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck.Tongues;

/// <summary>The reader of gettext catalogues, and texts said by one.</summary>
public sealed class CatalogueReadingTests
{
    private const string Text = """
        # a comment
        msgid ""
        msgstr "Language: xx\n"

        #: somewhere
        msgid "Fill {0} to {1}."
        msgstr "Bis {1} "
        "fülle {0}."

        msgctxt "name"
        msgid "left"
        msgstr "links"

        msgid "say \"{0}\""
        msgstr "sage \"{0}\""

        #, fuzzy
        msgid "gone"
        msgstr "weg"

        msgid "empty"
        msgstr ""
        """;

    private static readonly Notation Speaking = Notation.Metric with { Tongue = new("xx", ',', lowersNouns: false, Read(Text)) };

    [Fact]
    public void Places_may_change_their_order_and_lines_go_on()
    {
        Assert.Equal("Bis 7 fülle Pfanne.", Speaking.Text($"Fill {"Pfanne"} to {7}."));
        Assert.Equal("Fill Pfanne to 7.", Notation.Metric.Text($"Fill {"Pfanne"} to {7}."));
    }

    [Fact]
    public void A_name_is_no_message()
    {
        Assert.Equal("links", Speaking.Name("left"));
        Assert.Equal("left", Speaking.Text("left"));
        Assert.Equal("Bottich", Speaking.Name("bottich", "Bottich"));
    }

    [Fact]
    public void What_is_put_in_is_left_as_it_is_and_quotes_are_kept()
    {
        string[] typed = ["{1}"];
        Assert.Equal("sage \"{1}\"", Speaking.Text($"say \"{typed[0]}\""));
    }

    [Fact]
    public void What_is_fuzzy_or_not_translated_is_said_in_English()
    {
        Assert.Equal("gone", Speaking.Text("gone"));
        Assert.Equal("empty", Speaking.Text("empty"));
        Assert.Equal("no such 3,5", Speaking.Text($"no such {Speaking.Number(3.5, "0.0")}"));
    }

    [Theory]
    [InlineData("msgid \"a\"\nmsgstr \"b\"\n\nmsgid \"a\"\nmsgstr \"c\"", "twice")]
    [InlineData("msgid \"a\nmsgstr \"b\"", "line 1")]
    [InlineData("msgid \"a\"\nmsgsrt \"b\"", "line 2")]
    [InlineData("\"nothing before\"", "line 1")]
    public void What_is_no_catalogue_is_refused_with_its_line(string text, string says) =>
        Assert.Contains(says, Assert.Throws<FormatException>(() => Read(text)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("de", "de")]
    [InlineData("de_AT.UTF-8", "de")]
    [InlineData("DE-ch", "de")]
    [InlineData("en_GB", "en")]
    [InlineData("C.UTF-8", null)]
    [InlineData("POSIX", null)]
    [InlineData("", null)]
    public void A_locale_names_a_language(string locale, string? code) => Assert.Equal(code, Tongue.Of(locale)?.Code);

    private static Catalogue Read(string text)
    {
        using var reader = new StringReader(text);
        return Catalogue.Read(reader);
    }
}
