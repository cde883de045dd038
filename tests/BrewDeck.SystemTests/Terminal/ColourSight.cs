using Terminal.Gui.Drawing;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>
/// Colours as people see them who lack one kind of cone, or all: Machado, Oliveira and Fernandes, "A physiologically-based model for
/// simulation of color vision deficiency", IEEE TVCG 15 (2009), the matrices of severity 1.0 on linear RGB, from memory; without any
/// cones the relative luminance of WCAG 2 is left.
/// </summary>
internal static class ColourSight
{
    public static readonly Dictionary<string, double[]> All = new()
    {
        ["protanopia"] = [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
        ["deuteranopia"] = [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881],
        ["tritanopia"] = [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900],
        ["achromatopsia"] = [0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722],
    };

    public static Color Seen(Color colour, string sight)
    {
        var m = All[sight];
        var (r, g, b) = (Linear(colour.R), Linear(colour.G), Linear(colour.B));
        int Row(int at) => Coded(m[at] * r + m[at + 1] * g + m[at + 2] * b);
        return new Color(Row(0), Row(3), Row(6));
    }

    /// <summary>sRGB to linear light, 0..1 (IEC 61966-2-1).</summary>
    public static double Linear(int value) =>
        value / 255.0 is var c && c <= 0.04045 ? c / 12.92 : Math.Pow((value / 255.0 + 0.055) / 1.055, 2.4);

    private static int Coded(double linear)
    {
        var c = Math.Clamp(linear, 0, 1);
        return (int)Math.Round(255 * (c <= 0.0031308 ? 12.92 * c : 1.055 * Math.Pow(c, 1 / 2.4) - 0.055));
    }
}
