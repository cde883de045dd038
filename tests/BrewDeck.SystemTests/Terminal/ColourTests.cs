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

    [Theory]
    [MemberData(nameof(Inks))]
    public void Text_stands_out_from_what_it_lies_on(string theme, string tone, string surface)
    {
        var ink = Look.Of(Enum.Parse<Theme>(theme)).Ink(Enum.Parse<Tone>(tone), Enum.Parse<Surface>(surface));
        var (one, other) = (Luminance(ink.Foreground), Luminance(ink.Background));
        var contrast = (Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05);
        Assert.True(contrast >= (theme == nameof(Theme.Contrast) ? 7 : 4.5), $"{contrast:0.00}");
    }

    /// <summary>Relative luminance, WCAG 2.</summary>
    private static double Luminance(Color colour)
    {
        static double Linear(int value) =>
            value / 255.0 is var c && c <= 0.04045 ? c / 12.92 : Math.Pow((value / 255.0 + 0.055) / 1.055, 2.4);
        return 0.2126 * Linear(colour.R) + 0.7152 * Linear(colour.G) + 0.0722 * Linear(colour.B);
    }
}
