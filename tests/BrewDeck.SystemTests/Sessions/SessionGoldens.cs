using System.Runtime.CompilerServices;

namespace BrewDeck.SystemTests.Sessions;

/// <summary>Whole stories as text. After a wanted change: set BREWDECK_REMAKE_GOLDENS=1, run these tests, look at the difference.</summary>
internal static class SessionGoldens
{
    public static void Same(string name, string seen, [CallerFilePath] string here = "")
    {
        var file = Path.Combine("Sessions", "Goldens", name + ".txt");
        var built = Path.Combine(AppContext.BaseDirectory, file);
        if (Environment.GetEnvironmentVariable("BREWDECK_REMAKE_GOLDENS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(built)!);
            File.WriteAllText(built, seen);
            var kept = Path.Combine(Path.GetDirectoryName(here)!, "Goldens", name + ".txt");
            Directory.CreateDirectory(Path.GetDirectoryName(kept)!);
            File.WriteAllText(kept, seen);
        }
        Assert.Equal(Screens(File.ReadAllText(built)), Screens(seen));
    }

    /// <summary>Screen by screen, so that a failure names the first one that differs.</summary>
    private static string[] Screens(string story) => story.ReplaceLineEndings("\n").Split("=== ");
}
