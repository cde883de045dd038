using System.Text.RegularExpressions;
using System.Xml.Linq;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.SystemTests.Terminal;

public sealed partial class PictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void A_picture_says_the_words_of_the_screen()
    {
        var words = Texts(StillScreen.Of(SampleScreens.Rest, 80, 24));
        Assert.Contains("14:32:07", words);
        Assert.Contains("°C", words);
        Assert.Contains("(1.046..1.050)", words);
    }

    [Fact]
    public void No_block_or_line_is_left_to_the_font()
    {
        foreach (var (_, screen) in SampleScreens.All)
            Assert.DoesNotContain(Texts(StillScreen.Of(screen, 120, 40)), text => Drawn().IsMatch(text));
    }

    [Fact]
    public void The_same_screen_gives_the_same_picture() =>
        Assert.Equal(StillScreen.Of(SampleScreens.Rest, 80, 24).ToSvg(), StillScreen.Of(SampleScreens.Rest, 80, 24).ToSvg());

    [Fact]
    public void A_light_picture_differs_in_colour_only()
    {
        var (dark, light) = (StillScreen.Of(SampleScreens.Rest, 80, 24), StillScreen.Of(SampleScreens.Rest, 80, 24, Theme.Light));
        Assert.Equal(dark.ToText(), light.ToText());
        Assert.Contains("#f7f7f4", light.ToSvg(), StringComparison.Ordinal);
        Assert.DoesNotContain("#f7f7f4", dark.ToSvg(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_rectangles_of_the_ground_cover_the_screen()
    {
        var area = XDocument.Parse(StillScreen.Of(SampleScreens.Rest, 80, 24).ToSvg()).Root!.Elements(Svg + "rect")
            .Where(r => (string)r.Attribute("height")! == "18" && (double)r.Attribute("y")! % 18 == 0 && (double)r.Attribute("x")! % 9 == 0)
            .Sum(r => (double)r.Attribute("width")! * 18);
        Assert.True(area >= 80 * 9 * 24 * 18, $"{area}");
    }

    [Fact]
    public void The_coloured_text_is_the_text()
    {
        var still = StillScreen.Of(SampleScreens.Overdue, 100, 30);
        var plain = Colours().Replace(still.ToAnsi(), "");
        Assert.Equal(still.ToText(), string.Join('\n', plain.Split('\n').Select(row => row.TrimEnd())));
    }

    private static List<string> Texts(StillScreen still) =>
        [.. XDocument.Parse(still.ToSvg()).Descendants(Svg + "text").Select(text => text.Value)];

    [GeneratedRegex("[─━│┃┬┯╭╮╰╯█▀▄▌╸]")]
    private static partial Regex Drawn();

    [GeneratedRegex(@"\e\[[\d;]*m")]
    private static partial Regex Colours();
}
