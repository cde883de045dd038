using BrewDeck.Deck.Screens;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace BrewDeck.Terminal.Paint;

/// <summary>
/// The colours of the program: neutral, with a hue only for what is due or abnormal. Every pair of text and surface has a
/// contrast of at least 4.5 (WCAG AA), held by a test.
/// </summary>
internal sealed class Look
{
    public static readonly Look Dark = new()
    {
        Texts = Of(0xC9CED3, 0x96A0A8, 0xFFFFFF, 0x7CC4FF, 0xF2C14E, 0xFFF5F4),
        Urgent = new(Rgb(0xFF8A80), "31", ""),
        Surfaces = [Ground(0x14171A), Ground(0x22282E), Ground(0x14171A), Reversed(0x22374A), Underlined(0x0B0D0F)],
    };

    public static readonly Look Light = new()
    {
        Texts = Of(0x24292E, 0x555E66, 0x000000, 0x004E92, 0x744B00, 0xFFF5F4),
        Urgent = new(Rgb(0xB3261E), "31", ""),
        Surfaces = [Ground(0xF7F7F4), Ground(0xE8EAE6), Ground(0xF7F7F4), Reversed(0xCFE2F3), Underlined(0xFFFFFF)],
    };

    /// <summary>Every pair has a contrast of at least 7 (WCAG AAA).</summary>
    public static readonly Look Contrast = new()
    {
        Texts = Of(0xFFFFFF, 0xD8D8D8, 0xFFFFFE, 0x66E0FF, 0xFFD84D, 0xFFFFFD),
        Urgent = new(Rgb(0xFF9C94), "31", ""),
        Alarm = new(new Color(0x8F, 0x00, 0x00), "41", "7"),
        Surfaces = [Ground(0x000000), Ground(0x101010), Ground(0x000000), Reversed(0x003A66), Underlined(0x1A1A1A)],
    };

    /// <summary>The one coloured surface: behind what is urgent.</summary>
    private static readonly Swatch AlarmSurface = new(new Color(0xB3, 0x26, 0x1E), "41", "7");

    private static readonly Dictionary<Color, Swatch> AllTexts = ByColour(look => [.. look.Texts, look.Urgent]);

    private static readonly Dictionary<Color, Swatch> AllSurfaces = ByColour(look => [.. look.Surfaces, look.Alarm ?? AlarmSurface]);

    /// <summary>By <see cref="Tone"/>.</summary>
    private Swatch[] Texts { get; init; } = [];

    /// <summary>Large digits that are urgent.</summary>
    private Swatch Urgent { get; init; } = null!;

    /// <summary>Behind what is urgent, where it is not the usual one.</summary>
    private Swatch? Alarm { get; init; }

    /// <summary>By <see cref="Surface"/>.</summary>
    private Swatch[] Surfaces { get; init; } = [];

    public static Look Of(Theme theme) => theme switch
    {
        Theme.Light => Light,
        Theme.Contrast => Contrast,
        _ => Dark,
    };

    public Attribute Ink(Tone tone, Surface surface = Surface.Ground)
    {
        var style = tone is Tone.Normal or Tone.Muted ? TextStyle.None : TextStyle.Bold;
        return (tone, surface) switch
        {
            (Tone.Alarm, Surface.Digits) => new(Urgent.Rgb, Surfaces[(int)surface].Rgb, style),
            (Tone.Alarm, _) => new(Texts[(int)tone].Rgb, (Alarm ?? AlarmSurface).Rgb, style),
            _ => new(Texts[(int)tone].Rgb, Surfaces[(int)surface].Rgb, style),
        };
    }

    /// <summary>For the toolkit's own views: everything in the tone given, on the surface given.</summary>
    public Scheme Scheme(Surface surface)
    {
        var normal = Ink(Tone.Normal, surface);
        return new Scheme(normal)
        {
            Focus = normal,
            Active = Ink(Tone.Strong, Surface.Chosen),
            Editable = Ink(Tone.Strong, Surface.Field),
        };
    }

    /// <summary>How a text colour is said where there are fewer colours; null: not one of ours.</summary>
    public static Swatch? Text(Color colour) => AllTexts.GetValueOrDefault(colour);

    /// <summary>How a surface is said where there are fewer colours; null: not one of ours.</summary>
    public static Swatch? Behind(Color colour) => AllSurfaces.GetValueOrDefault(colour);

    private static Dictionary<Color, Swatch> ByColour(Func<Look, Swatch[]> some) =>
        new[] { Dark, Light, Contrast }.SelectMany(some).DistinctBy(swatch => swatch.Rgb).ToDictionary(swatch => swatch.Rgb);

    private static Swatch[] Of(int normal, int muted, int strong, int due, int warning, int alarm) =>
    [
        new(Rgb(normal), "39", ""), new(Rgb(muted), "39", ""), new(Rgb(strong), "39", ""),
        new(Rgb(due), "36", ""), new(Rgb(warning), "33", ""), new(Rgb(alarm), "37", ""),
    ];

    private static Swatch Ground(int rgb) => new(Rgb(rgb), "49", "");

    private static Swatch Reversed(int rgb) => new(Rgb(rgb), "7", "7");

    private static Swatch Underlined(int rgb) => new(Rgb(rgb), "4", "4");

    private static Color Rgb(int rgb) => new((rgb >> 16) & 0xFF, (rgb >> 8) & 0xFF, rgb & 0xFF);
}

/// <summary>A colour, and the SGR parameter that stands for it where there are fewer colours.</summary>
/// <param name="Sixteen">With 16 colours: the terminal's own where possible, so that its own theme stays legible.</param>
/// <param name="Plain">Without colour; empty: nothing.</param>
internal sealed record Swatch(Color Rgb, string Sixteen, string Plain);
