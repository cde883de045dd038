using System.Text;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace BrewDeck.Terminal.Paint;

/// <summary>Says an attribute as a terminal sequence (ECMA-48, select graphic rendition), always from a clean start.</summary>
internal static class Sgr
{
    public static void Append(StringBuilder to, Attribute attribute, ColourDepth depth)
    {
        to.Append("\e[0");
        if (attribute.Style.HasFlag(TextStyle.Bold)) to.Append(";1");
        if (attribute.Style.HasFlag(TextStyle.Underline)) to.Append(";4");
        if (attribute.Style.HasFlag(TextStyle.Reverse)) to.Append(";7");
        AppendColours(to, attribute.Foreground, attribute.Background, depth);
        to.Append('m');
    }

    /// <summary>The nearest of the 256 colours: 6x6x6 cube or the grey ramp, whichever is closer.</summary>
    private static int Index(Color colour)
    {
        var (r, g, b) = (Step(colour.R), Step(colour.G), Step(colour.B));
        var grey = Math.Clamp(((colour.R + colour.G + colour.B) / 3 - 3) / 10, 0, 23);
        var byGrey = Distance(colour, 8 + 10 * grey, 8 + 10 * grey, 8 + 10 * grey);
        var byCube = Distance(colour, Level(r), Level(g), Level(b));
        return byGrey < byCube ? 232 + grey : 16 + 36 * r + 6 * g + b;
    }

    private static void AppendColours(StringBuilder to, Color text, Color behind, ColourDepth depth)
    {
        switch (depth)
        {
            case ColourDepth.Direct:
                to.Append($";38;2;{text.R};{text.G};{text.B};48;2;{behind.R};{behind.G};{behind.B}");
                break;
            case ColourDepth.Indexed:
                to.Append($";38;5;{Index(text)};48;5;{Index(behind)}");
                break;
            case ColourDepth.Sixteen:
                AppendPart(to, Look.Text(text)?.Sixteen);
                AppendPart(to, Look.Behind(behind)?.Sixteen);
                break;
            default:
                AppendPart(to, Look.Text(text)?.Plain);
                AppendPart(to, Look.Behind(behind)?.Plain);
                break;
        }
    }

    private static void AppendPart(StringBuilder to, string? parameter)
    {
        if (!string.IsNullOrEmpty(parameter)) to.Append(';').Append(parameter);
    }

    private static int Step(int value) => value < 48 ? 0 : value < 115 ? 1 : (value - 35) / 40;

    private static int Level(int step) => step == 0 ? 0 : 55 + 40 * step;

    private static int Distance(Color colour, int r, int g, int b) =>
        (r - colour.R) * (r - colour.R) + (g - colour.G) * (g - colour.G) + (b - colour.B) * (b - colour.B);
}
