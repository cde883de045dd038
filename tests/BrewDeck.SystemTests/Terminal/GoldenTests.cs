using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal.Paint;
using Terminal.Gui.Drawing;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>
/// Whole screens as text and tones, the same in every theme, and what each theme makes of a tone. After a wanted change: set BREWDECK_REMAKE_GOLDENS=1, run these tests, look at the difference.
/// </summary>
public sealed class GoldenTests
{
    private const string Colours = "colours.txt";
    private const string Remake = "BREWDECK_REMAKE_GOLDENS";

    private static readonly (int Columns, int Rows)[] Sizes = [(80, 24), (100, 30), (120, 40), (200, 60), (50, 14)];

    public static TheoryData<string, int, int> Screens() => new(
        from sample in SampleScreens.All
        from size in Sizes
        select new TheoryDataRow<string, int, int>(sample.Name, size.Columns, size.Rows));

    [Theory]
    [MemberData(nameof(Screens))]
    public void A_screen_looks_as_it_did(string name, int columns, int rows)
    {
        var screen = SampleScreens.All.Single(sample => sample.Name == name).Screen;
        var seen = ToneMap.Of(screen, columns, rows);
        var file = $"{name}-{columns}x{rows}.txt";
        if (Environment.GetEnvironmentVariable(Remake) == "1") Write(file, seen);
        Assert.Equal(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Terminal", "Goldens", file)), seen);
    }

    /// <summary>With the tones of the screens this says what every theme shows, cell by cell.</summary>
    [Fact]
    public void A_theme_wears_the_colours_it_did()
    {
        var table = new StringBuilder();
        foreach (var theme in Enum.GetValues<Theme>())
        {
            foreach (var surface in Enum.GetValues<Surface>())
            {
                foreach (var tone in Enum.GetValues<Tone>())
                {
                    var ink = Look.Of(theme).Ink(tone, surface);
                    table.Append(CultureInfo.InvariantCulture, $"{theme,-8} {surface,-6} {tone,-7} {Hex(ink.Foreground)} on {Hex(ink.Background)}{(ink.Style.HasFlag(TextStyle.Bold) ? " bold" : "")}\n");
                }
            }
        }
        if (Environment.GetEnvironmentVariable(Remake) == "1") Write(Colours, table.ToString());
        Assert.Equal(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Terminal", "Goldens", Colours)), table.ToString());
    }

    private static string Hex(Color colour) => $"#{colour.R:x2}{colour.G:x2}{colour.B:x2}";

    [Fact]
    public void No_golden_is_left_of_a_screen_that_is_gone()
    {
        var kept = Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Terminal", "Goldens")).Select(Path.GetFileName);
        var wanted = SampleScreens.All.SelectMany(s => Sizes.Select(size => $"{s.Name}-{size.Columns}x{size.Rows}.txt")).Append(Colours);
        Assert.Equal(wanted.Order(StringComparer.Ordinal), kept.Order(StringComparer.Ordinal));
    }

    /// <summary>Both beside the sources and where this run reads them.</summary>
    private static void Write(string file, string text, [CallerFilePath] string here = "")
    {
        string[] folders =
            [Path.Combine(Path.GetDirectoryName(here)!, "Goldens"), Path.Combine(AppContext.BaseDirectory, "Terminal", "Goldens")];
        foreach (var folder in folders)
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, file), text);
        }
    }
}
