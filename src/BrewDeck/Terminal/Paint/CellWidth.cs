using Terminal.Gui.Text;

namespace BrewDeck.Terminal.Paint;

/// <summary>How many cells of the screen a text takes. What the deck writes most is counted by its length: the toolkit's tables took a fifth of a frame.</summary>
internal static class CellWidth
{
    public static int Of(string text) => AllNarrow(text) ? text.Length : text.GetColumns();

    /// <summary>Each character is a text element of one cell.</summary>
    public static bool AllNarrow(ReadOnlySpan<char> text)
    {
        foreach (var c in text)
        {
            if (!IsNarrow(c)) return false;
        }

        return true;
    }

    /// <summary>Latin letters and signs, arrows and the minus, lines, blocks, dots: no control character, none that combines with the one before it, none that is wide.</summary>
    private static bool IsNarrow(char c) => c
        is >= ' ' and <= '~'
        or >= '\u00a1' and <= '\u02ff' and not '\u00ad'
        or >= '\u2010' and <= '\u2027'
        or >= '\u2190' and <= '\u2193' or '\u2212'
        or >= '\u2500' and <= '\u25fc'
        or >= '\u2800' and <= '\u28ff';
}
