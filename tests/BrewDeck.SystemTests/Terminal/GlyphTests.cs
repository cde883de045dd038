using BrewDeck.Terminal.Paint;

namespace BrewDeck.SystemTests.Terminal;

public sealed class GlyphTests
{
    [Theory]
    [InlineData("xterm", "en_GB.UTF-8", null, "Full")]
    [InlineData("xterm", null, null, "Full")]
    [InlineData("xterm", "C.utf8", null, "Full")]
    [InlineData("linux", "en_GB.UTF-8", null, "Latin")]
    [InlineData("xterm", "C", null, "Ascii")]
    [InlineData("xterm", "en_GB.UTF-8", "POSIX", "Ascii")]
    [InlineData("linux", "de_DE.ISO-8859-1", null, "Ascii")]
    public void The_glyphs_are_those_that_the_terminal_can_show(string term, string? lang, string? all, string set) =>
        Assert.Equal(
            Enum.Parse<GlyphSet>(set),
            GlyphSets.From(name => name switch { "TERM" => term, "LANG" => lang, "LC_ALL" => all, _ => null }));

    [Fact]
    public void Everything_on_every_screen_can_be_said_in_ascii_cell_for_cell()
    {
        foreach (var (_, screen) in SampleScreens.All)
        {
            var plain = Shown(screen, GlyphSet.Ascii);
            Assert.DoesNotContain(plain, c => c is not '\n' and (< ' ' or > '~'));
            Assert.DoesNotContain('?', plain.Replace("? keys", "", StringComparison.Ordinal).Replace("back?", "", StringComparison.Ordinal));
            Assert.Equal(Shown(screen, GlyphSet.Full).Length, plain.Length);
        }
    }

    [Fact]
    public void The_large_digits_are_legible_in_ascii() =>
        Assert.Contains("######  ######      ##  ##    ##", Shown(SampleScreens.Rest, GlyphSet.Ascii), StringComparison.Ordinal);

    [Fact]
    public void A_linux_console_keeps_its_degree_signs() =>
        Assert.Contains("HOLD 66 °C", Shown(SampleScreens.Rest, GlyphSet.Latin), StringComparison.Ordinal);

    private static string Shown(BrewDeck.Deck.Screens.Screen screen, GlyphSet glyphs)
    {
        using var bench = new Bench(new RecordingSession(screen), new SteppedTime());
        var terminal = new MiniTerminal(80, 24);
        terminal.Feed(new FramePainter(ColourDepth.None, glyphs).Paint(bench.Toolkit.Cells, bench.Toolkit.Cursor));
        return terminal.Text();
    }
}
