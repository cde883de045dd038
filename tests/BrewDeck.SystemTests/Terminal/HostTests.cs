using BrewDeck.Commands;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>
/// The real host on a real pseudo-terminal. Set BREWDECK_TEST_HOST to the path of a native build of BrewDeck.SystemTests.Host
/// to try that instead of the managed one.
/// </summary>
public sealed class HostTests
{
    private static readonly string Program = Environment.GetEnvironmentVariable("BREWDECK_TEST_HOST") is { Length: > 0 } native
        ? $"'{native}'"
        : $"dotnet '{Path.Combine(AppContext.BaseDirectory, "BrewDeck.SystemTests.Host.dll")}'";

    public static bool IsLinux => OperatingSystem.IsLinux();

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void The_end_of_the_session_gives_the_terminal_back()
    {
        using var terminal = Start();
        terminal.Type("q");
        Assert.Equal(0, terminal.WaitForExit());
        terminal.WaitForText("ended: SessionEnded");
        terminal.WaitUntilRestored();
    }

    [Theory(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    [InlineData("TERM")]
    [InlineData("HUP")]
    [InlineData("INT")]
    [InlineData("QUIT")]
    public void A_signal_to_end_gives_the_terminal_back(string signal)
    {
        using var terminal = Start();
        terminal.Signal(signal);
        Assert.Equal(0, terminal.WaitForExit());
        terminal.WaitForText("ended: Stopped");
        terminal.WaitUntilRestored();
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void Ctrl_c_stops_cleanly()
    {
        using var terminal = Start();
        terminal.Type("\u0003");
        Assert.Equal(0, terminal.WaitForExit());
        terminal.WaitForText("ended: Stopped");
        terminal.WaitUntilRestored();
    }

    /// <summary>The key is struck until the program has ended: those that come when the terminal is given back come as a signal.</summary>
    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void Ctrl_c_again_does_not_cut_off_the_end()
    {
        using var terminal = Start();
        terminal.Type("\u0003");
        terminal.WaitUntil(() => terminal.Output.Contains("\e[?1049l", StringComparison.Ordinal), "the terminal given back");
        terminal.Type("\u0003");
        Assert.Equal(0, terminal.WaitForExit());
    }

    [Theory(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    [InlineData("x", "thrown by the session")]
    [InlineData("t", "thrown on another thread")]
    public void An_exception_gives_the_terminal_back_and_is_told_in_one_line_and_a_note(string key, string message)
    {
        using var folder = new TempFolder();
        using var terminal = Start($"exec {Program} '{folder.Path}'");
        terminal.Type(key);
        Assert.Equal(ExitCode.Fault, terminal.WaitForExit());
        terminal.WaitUntil(() => terminal.Output.TrimEnd('\r', '\n').EndsWith("looks after the program", StringComparison.Ordinal) && terminal.Output.EndsWith('\n'), message);
        terminal.WaitUntilRestored();
        var told = After(terminal, "\e[?1049l");
        Assert.Contains($"brewdeck: a fault in the program ({message}); everything up to the last act is in the logbook; {folder.Path}/crash-", told, StringComparison.Ordinal);
        Assert.Equal(2, told.Split('\n').Length);
        var note = File.ReadAllText(Assert.Single(Directory.GetFiles(folder.Path, "crash-*.txt")));
        Assert.Contains($"System.InvalidOperationException: {message}", note, StringComparison.Ordinal);
        Assert.Contains("DemoSession", note, StringComparison.Ordinal);
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void A_line_that_is_cut_ends_the_program()
    {
        using var terminal = Start();
        terminal.HangUp();
        terminal.WaitForExit();
        Assert.True(terminal.HasExited);
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void Ctrl_z_stops_the_job_with_the_terminal_restored_and_goes_on_with_a_full_screen()
    {
        using var terminal = Start($"set -m; {Program}; echo job stopped; fg");
        terminal.Type("\u001a");
        terminal.WaitUntil(() => terminal.Output.Contains("job stopped", StringComparison.Ordinal), "the shell");
        // once by itself and once at the signal to go on; between the two the runtime sets the line modes that it found, and a key struck then was once lost
        terminal.WaitUntil(() => After(terminal, "job stopped").Split("\e[?1049h").Length > 2, "the screen taken again");
        terminal.WaitForText("wipe lock");
        terminal.WaitForText("HOLD 66 °C");
        var stopped = terminal.Output[..terminal.Output.IndexOf("job stopped", StringComparison.Ordinal)];
        Assert.True(new MiniTerminal(80, 24).Feed(stopped).IsRestored);
        terminal.Type("k");
        terminal.WaitForText("key Character k");
        terminal.Type("q");
        terminal.WaitForExit();
        terminal.WaitUntilRestored();
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void Ctrl_z_with_no_shell_to_wake_it_again_goes_on_at_once()
    {
        using var terminal = Start();
        terminal.Type("\u001a");
        terminal.WaitUntil(() => terminal.Output.Split("\e[?1049h").Length == 3, "the screen taken again");
        terminal.Type("k");
        terminal.WaitForText("key Character k");
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void A_program_that_was_stopped_from_outside_paints_all_again()
    {
        using var terminal = Start();
        terminal.Signal("STOP");
        terminal.Signal("CONT");
        terminal.WaitUntil(() => terminal.Output.Split("\e[?1049h").Length == 3, "the screen taken again");
        terminal.WaitForText("HOLD 66 °C");
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void A_new_size_is_drawn_and_told()
    {
        using var terminal = Start();
        terminal.Resize(120, 40);
        terminal.WaitForText("size 120x40");
        terminal.WaitForText("outlook");
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void A_character_that_arrives_in_two_halves_is_one()
    {
        using var terminal = Start();
        terminal.TypeBytes(0xC3);
        terminal.TypeBytes(0xA9);
        terminal.WaitForText("key Character é");
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void A_lone_escape_is_heard()
    {
        using var terminal = Start();
        terminal.Type("\e");
        terminal.WaitForText("key Escape");
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void A_reading_is_typed_and_taken()
    {
        using var terminal = Start();
        terminal.Type("67.2");
        terminal.WaitForText("understood as [67.2]");
        terminal.Type("\r");
        terminal.WaitForText("taken [67.2]");
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void The_clock_runs_and_the_bell_rings()
    {
        using var terminal = Start();
        var before = terminal.Screen;
        terminal.WaitUntil(() => terminal.Screen != before, "the next second");
        terminal.Type("b");
        terminal.WaitUntil(() => terminal.Bells == 1, "the bell");
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void No_mouse_report_and_no_application_keypad_is_switched_on()
    {
        using var terminal = Start();
        terminal.Type("q");
        terminal.WaitForExit();
        string[] unwanted = ["\e[?1000h", "\e[?1002h", "\e[?1003h", "\e=", "\e[?1h"];
        Assert.All(unwanted, sequence => Assert.DoesNotContain(sequence, terminal.Output, StringComparison.Ordinal));
    }

    [Theory(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    [InlineData("NO_COLOR", "1")]
    [InlineData("TERM", "dumb")]
    public void Without_colour_none_is_sent(string name, string value)
    {
        using var terminal = Start(Program, (name, value));
        terminal.Type("q");
        terminal.WaitForExit();
        Assert.DoesNotMatch(@"\e\[0(;[1-9])*;(3|4)\d", terminal.Output);
    }

    private static string After(PseudoTerminal terminal, string text) =>
        terminal.Output[terminal.Output.IndexOf(text, StringComparison.Ordinal)..];

    private static PseudoTerminal Start() => Start($"exec {Program}");

    private static PseudoTerminal Start(string shell, params (string Name, string Value)[] environment)
    {
        var terminal = new PseudoTerminal(80, 24, shell, environment);
        terminal.WaitForText("wipe lock");
        return terminal;
    }
}
