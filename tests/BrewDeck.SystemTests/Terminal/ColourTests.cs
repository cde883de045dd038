using System.Text;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.Drawing;

namespace BrewDeck.SystemTests.Terminal;

public sealed class ColourTests
{
    [Theory]
    [InlineData("xterm", "", "", "Sixteen")]
    [InlineData("linux", "", "", "Sixteen")]
    [InlineData("xterm-256color", "", "", "Indexed")]
    [InlineData("tmux-256color", "", "", "Indexed")]
    [InlineData("xterm-256color", "truecolor", "", "Direct")]
    [InlineData("xterm", "24bit", "", "Direct")]
    [InlineData("xterm-direct", "", "", "Direct")]
    [InlineData("xterm-256color", "truecolor", "1", "None")]
    [InlineData("dumb", "truecolor", "", "None")]
    [InlineData("", "", "", "None")]
    public void The_depth_is_what_the_terminal_says(string term, string colorTerm, string noColor, string depth) =>
        Assert.Equal(
            Enum.Parse<ColourDepth>(depth),
            ColourDepths.From(name => name switch { "TERM" => term, "COLORTERM" => colorTerm, "NO_COLOR" => noColor, _ => null }));

    [Theory]
    [InlineData("Normal", "Ground", "Sixteen", "\e[0;39;49m")]
    [InlineData("Strong", "Ground", "Sixteen", "\e[0;1;39;49m")]
    [InlineData("Due", "Ground", "Sixteen", "\e[0;1;36;49m")]
    [InlineData("Warning", "Ground", "Sixteen", "\e[0;1;33;49m")]
    [InlineData("Alarm", "Ground", "Sixteen", "\e[0;1;37;41m")]
    [InlineData("Alarm", "Digits", "Sixteen", "\e[0;1;31;49m")]
    [InlineData("Normal", "Chosen", "Sixteen", "\e[0;39;7m")]
    [InlineData("Normal", "Field", "Sixteen", "\e[0;39;4m")]
    [InlineData("Normal", "Ground", "None", "\e[0m")]
    [InlineData("Due", "Ground", "None", "\e[0;1m")]
    [InlineData("Alarm", "Ground", "None", "\e[0;1;7m")]
    [InlineData("Normal", "Chosen", "None", "\e[0;7m")]
    [InlineData("Normal", "Field", "None", "\e[0;4m")]
    [InlineData("Warning", "Ground", "Direct", "\e[0;1;38;2;242;193;78;48;2;20;23;26m")]
    [InlineData("Warning", "Ground", "Indexed", "\e[0;1;38;5;215;48;5;234m")]
    public void A_tone_is_said_at_every_depth(string tone, string surface, string depth, string said)
    {
        var to = new StringBuilder();
        Sgr.Append(to, Look.Dark.Ink(Enum.Parse<Tone>(tone), Enum.Parse<Surface>(surface)), Enum.Parse<ColourDepth>(depth));
        Assert.Equal(said, to.ToString());
    }

    [Fact]
    public void Without_colour_no_screen_asks_for_one()
    {
        foreach (var (_, screen) in SampleScreens.All)
        {
            using var bench = new Bench(new RecordingSession(screen), new SteppedTime());
            var frame = new FramePainter(ColourDepth.None, GlyphSet.Full).Paint(bench.Toolkit.Cells, bench.Toolkit.Cursor);
            Assert.DoesNotMatch(@"\e\[0(;[1-9])*;(3|4)\d", frame);
        }
    }

    /// <summary>Every colour on every screen is one of ours: only those are known at 16 colours.</summary>
    [Fact]
    public void No_colour_of_the_toolkit_is_seen()
    {
        foreach (var (_, screen) in SampleScreens.All)
        {
            using var bench = new Bench(new RecordingSession(screen), new SteppedTime());
            foreach (var cell in bench.Toolkit.Cells)
            {
                Assert.NotNull(Look.Text(Cells.Ink(cell).Foreground));
                Assert.NotNull(Look.Behind(Cells.Ink(cell).Background));
            }
        }
    }

    public static TheoryData<string, string, string> Inks() => new(
        from theme in Enum.GetNames<Theme>()
        from tone in Enum.GetNames<Tone>()
        from surface in Enum.GetNames<Surface>()
        select new TheoryDataRow<string, string, string>(theme, tone, surface));

    /// <summary>WCAG 2.2, success criterion 1.4.3 (AA): text of any size at least 4.5:1; 1.4.6 (AAA): 7:1, which the contrast theme keeps.</summary>
    [Theory]
    [MemberData(nameof(Inks))]
    public void Text_stands_out_from_what_it_lies_on(string theme, string tone, string surface)
    {
        var contrast = Contrast(InkOf(theme, tone, surface));
        Assert.True(contrast >= (theme == nameof(Theme.Contrast) ? 7 : 4.5), $"{contrast:0.00}");
    }

    public static TheoryData<string, string> Sights() => new(
        from theme in Enum.GetNames<Theme>()
        from sight in ColourSight.All.Keys
        select new TheoryDataRow<string, string>(theme, sight));

    /// <summary>Simulated, colours lose hue, not legibility: the same bound holds for every tone on every surface, also where the ink is warmest.</summary>
    [Theory]
    [MemberData(nameof(Sights))]
    public void Text_stands_out_for_those_who_see_colours_otherwise(string theme, string sight)
    {
        foreach (var (tone, surface) in from t in Enum.GetNames<Tone>() from s in Enum.GetNames<Surface>() select (t, s))
        {
            var ink = InkOf(theme, tone, surface);
            var contrast = Contrast(ColourSight.Seen(ink.Foreground, sight), ColourSight.Seen(ink.Background, sight));
            Assert.True(contrast >= 4.5, $"{tone} on {surface}: {contrast:0.00}");
        }
    }

    /// <summary>
    /// What is due, abnormal or urgent differs from plain text by its weight in every theme, so that no tone is told by hue alone; words
    /// and shapes go with it (<c>Labels.Mark</c>).
    /// </summary>
    [Theory]
    [MemberData(nameof(Sights))]
    public void Tones_that_ask_for_something_are_told_apart_from_plain_text(string theme, string sight)
    {
        var plain = InkOf(theme, nameof(Tone.Normal), nameof(Surface.Ground));
        foreach (var tone in (string[])[nameof(Tone.Due), nameof(Tone.Warning), nameof(Tone.Alarm)])
        {
            var ink = InkOf(theme, tone, nameof(Surface.Ground));
            Assert.True(ink.Style.HasFlag(TextStyle.Bold) && !plain.Style.HasFlag(TextStyle.Bold), tone);
            Assert.NotEqual((ColourSight.Seen(plain.Foreground, sight), ColourSight.Seen(plain.Background, sight)), (ColourSight.Seen(ink.Foreground, sight), ColourSight.Seen(ink.Background, sight)));
        }
    }

    /// <summary>The simulation itself: greys stay greys; red and green of one lightness fall together for those who lack one of the two.</summary>
    [Fact]
    public void The_simulated_sights_do_what_they_are_for()
    {
        foreach (var sight in ColourSight.All.Keys)
            Assert.Equal(new Color(120, 120, 120), ColourSight.Seen(new Color(120, 120, 120), sight));
        var (red, green) = (new Color(200, 60, 60), new Color(110, 110, 40));
        Assert.True(Apart(red, green, "deuteranopia") < 0.6 * Distance(red, green), $"{Apart(red, green, "deuteranopia")}");
    }

    private static double Apart(Color one, Color other, string sight) => Distance(ColourSight.Seen(one, sight), ColourSight.Seen(other, sight));

    private static double Distance(Color a, Color b) =>
        Math.Sqrt(Math.Pow(a.R - b.R, 2) + Math.Pow(a.G - b.G, 2) + Math.Pow(a.B - b.B, 2));

    private static global::Terminal.Gui.Drawing.Attribute InkOf(string theme, string tone, string surface) =>
        Look.Of(Enum.Parse<Theme>(theme)).Ink(Enum.Parse<Tone>(tone), Enum.Parse<Surface>(surface));

    private static double Contrast(global::Terminal.Gui.Drawing.Attribute ink) => Contrast(ink.Foreground, ink.Background);

    /// <summary>Contrast ratio, WCAG 2.</summary>
    private static double Contrast(Color text, Color behind)
    {
        var (one, other) = (Luminance(text), Luminance(behind));
        return (Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05);
    }

    /// <summary>Relative luminance, WCAG 2.</summary>
    private static double Luminance(Color colour) =>
        0.2126 * ColourSight.Linear(colour.R) + 0.7152 * ColourSight.Linear(colour.G) + 0.0722 * ColourSight.Linear(colour.B);
}
