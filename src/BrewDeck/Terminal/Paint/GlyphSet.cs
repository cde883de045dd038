using BrewDeck.Terminal.Compose;

namespace BrewDeck.Terminal.Paint;

/// <summary>Which characters the terminal can be trusted to show.</summary>
internal enum GlyphSet
{
    /// <summary>Letters, digits and signs of ASCII only.</summary>
    Ascii,

    /// <summary>A bare Linux console: its fonts have the Latin letters and the degree sign, not every block and line.</summary>
    Latin,
    Full,
}

internal static class GlyphSets
{
    private static readonly Dictionary<char, char> Drawn = Pairs(
        "█#▉#▊#▋+▌+▍-▎-▏|▐+▕|▀\"▄_▁_▂_▃_▅#▆#▇#░.▒:▓#■#▪*",
        "─-━=│|┃|┌+┐+└+┘+├+┤+┬+┴+┼+┯+╭+╮+╰+╯+═=║|╸=╺-┄-┈.╌-",
        "●O○o◆*▸>▶>▹>▴^▾v▲^▼v•*…~✓x✗x↑^↓v←<→>☐ ☑x");

    private static readonly Dictionary<char, char> Lettered = Pairs(
        "° ·.×x±~²2³3µu½?¼?¾?–-—-−-’'‘'“\"”\"≤<≥>≈~äaöoüuÄAÖOÜUßséeèeêeëeáaàaâaíiìiîióoòoôoúuùuûuñnçcåaæaøoÅA");

    /// <param name="variable">Reads an environment variable.</param>
    public static GlyphSet From(Func<string, string?> variable)
    {
        string?[] asked = [variable("LC_ALL"), variable("LC_CTYPE"), variable("LANG")];
        var locale = asked.FirstOrDefault(v => !string.IsNullOrEmpty(v));
        if (locale is not null && !SaysUtf8(locale)) return GlyphSet.Ascii;
        return variable("TERM") == "linux" ? GlyphSet.Latin : GlyphSet.Full;
    }

    /// <summary>What to show in place of a grapheme; as wide as the grapheme.</summary>
    /// <param name="cells">1 or 2.</param>
    public static string Shown(this GlyphSet set, string grapheme, int cells)
    {
        if (set == GlyphSet.Full || grapheme is [< '\x7f']) return grapheme;
        if (grapheme is [var one])
        {
            if (one is >= DotGrid.FirstCell and <= DotGrid.LastCell) return DotGrid.Plainly(one).ToString();
            if (Drawn.TryGetValue(one, out var drawn)) return drawn.ToString();
            if (set == GlyphSet.Latin && one < '\u0100') return grapheme;
            if (Lettered.TryGetValue(one, out var letter)) return letter.ToString();
        }

        return cells == 2 ? "??" : "?";
    }

    private static bool SaysUtf8(string locale) =>
        locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);

    private static Dictionary<char, char> Pairs(params string[] texts) =>
        string.Concat(texts).Chunk(2).ToDictionary(pair => pair[0], pair => pair[1]);
}
