using System.Diagnostics;
using BrewDeck.Commands;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>The command for a louder sound, really run.</summary>
public sealed class BellCommandTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public static bool IsLinux => OperatingSystem.IsLinux();

    public void Dispose() => _folder.Dispose();

    [Fact(Skip = "needs mkfifo", SkipUnless = nameof(IsLinux))]
    public void It_is_run_and_told_what_is_wanted()
    {
        var heard = Path.Combine(_folder.Path, "heard");
        Process.Start("mkfifo", heard).WaitForExit();
        using var bell = new BellCommand($"printf %s \"$BREWDECK_BELL\" > '{heard}'");

        bell.Ring("Add 45 g Perle");

        Assert.Equal("Add 45 g Perle", File.ReadAllText(heard));
    }

    [Fact(Skip = "needs mkfifo", SkipUnless = nameof(IsLinux))]
    public void While_it_sounds_it_is_not_started_again()
    {
        var (started, end) = (Path.Combine(_folder.Path, "started"), Path.Combine(_folder.Path, "end"));
        Process.Start("mkfifo", end).WaitForExit();
        using var bell = new BellCommand($"echo \"$BREWDECK_BELL\" >> '{started}'; cat '{end}'");
        bell.Ring("first");
        bell.Ring("second");

        // opening the other end waits until the command has come to it: by then it has said that it was started
        File.WriteAllText(end, "");

        Assert.Equal("first\n", File.ReadAllText(started));
    }

    [Theory]
    [InlineData("exit 3")]
    [InlineData("/no/such/command")]
    public void Its_failure_is_nobodys_trouble(string command)
    {
        using var bell = new BellCommand(command);
        var fault = Record.Exception(() => bell.Ring("anything"));
        Assert.Null(fault);
    }
}
