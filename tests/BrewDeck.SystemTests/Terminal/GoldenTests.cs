using System.Runtime.CompilerServices;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>
/// Whole screens as text. After a wanted change: set BREWDECK_REMAKE_GOLDENS=1, run these tests, look at the difference.
/// </summary>
public sealed class GoldenTests
{
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
        var seen = StillScreen.Of(screen, columns, rows).ToText();
        var file = $"{name}-{columns}x{rows}.txt";
        if (Environment.GetEnvironmentVariable(Remake) == "1") Write(file, seen);
        Assert.Equal(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Terminal", "Goldens", file)), seen);
    }

    [Fact]
    public void No_golden_is_left_of_a_screen_that_is_gone()
    {
        var kept = Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Terminal", "Goldens")).Select(Path.GetFileName);
        var wanted = SampleScreens.All.SelectMany(s => Sizes.Select(size => $"{s.Name}-{size.Columns}x{size.Rows}.txt"));
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
