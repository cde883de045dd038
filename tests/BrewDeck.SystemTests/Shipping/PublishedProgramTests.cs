using System.Diagnostics;
using System.Text.Json;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Terminal;

namespace BrewDeck.SystemTests.Shipping;

/// <summary>
/// The program as it is given to people, where nobody has .NET: no dotnet on the path, no DOTNET_ROOT, an empty home. BREWDECK_TEST_PROGRAM names it.
/// </summary>
public sealed class PublishedProgramTests
{
    private static readonly string? Program = Environment.GetEnvironmentVariable("BREWDECK_TEST_PROGRAM");

    public static bool IsPublished => Program is { Length: > 0 } && OperatingSystem.IsLinux();

    [Fact(Skip = "needs BREWDECK_TEST_PROGRAM on Linux", SkipUnless = nameof(IsPublished))]
    public void It_plans()
    {
        using var home = new TempFolder();
        using var plan = JsonDocument.Parse(Said(home, "plan --json"));
        Assert.True(plan.RootElement.GetProperty("plan").GetProperty("steps").GetArrayLength() > 20);
    }

    [Fact(Skip = "needs BREWDECK_TEST_PROGRAM on Linux", SkipUnless = nameof(IsPublished))]
    public void It_rehearses_without_a_screen()
    {
        using var home = new TempFolder();
        using var day = JsonDocument.Parse(Said(home, "rehearse --headless --log --seed 1 --json"));
        Assert.Equal("pitched", day.RootElement.GetProperty("ended").GetString());
        Assert.Contains("all whole", Said(home, "log verify"), StringComparison.Ordinal);
    }

    [Fact(Skip = "needs BREWDECK_TEST_PROGRAM on Linux", SkipUnless = nameof(IsPublished))]
    public void The_deck_runs_a_day_on_a_terminal_and_gives_it_back()
    {
        using var home = new TempFolder();
        using var terminal = new PseudoTerminal(120, 40, $"exec {Hidden(home)} rehearse --speed 3600");
        terminal.WaitForText("wipe lock");
        terminal.WaitForText("The day is done");
        terminal.Signal("TERM");
        Assert.Equal(0, terminal.WaitForExit());
        terminal.WaitUntilRestored();
    }

    private static string Hidden(TempFolder home) => $"env -i PATH=/nowhere TERM=xterm-256color HOME='{home.Path}' '{Program}'";

    private static string Said(TempFolder home, string arguments)
    {
        using var run = Process.Start(new ProcessStartInfo("sh", ["-c", $"exec {Hidden(home)} {arguments}"]) { RedirectStandardOutput = true })!;
        var said = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        Assert.Equal(0, run.ExitCode);
        return said;
    }
}
