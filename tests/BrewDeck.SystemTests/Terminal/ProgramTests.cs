using System.Text.RegularExpressions;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>The program itself on a pseudo-terminal, from one deck to the next.</summary>
public sealed partial class ProgramTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public static bool IsLinux => OperatingSystem.IsLinux();

    /// <summary>The reader of the first deck once lived on and took every second key.</summary>
    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void Each_key_acts_on_the_deck_of_an_exercise_that_was_chosen_on_another_deck()
    {
        using var terminal = Start("");
        terminal.WaitForText("New brew day");
        terminal.Type("\e[B");
        terminal.WaitForText("\u25b8 Exercises");
        terminal.Type("\r");
        terminal.WaitForText("Water only");
        // another key than the one before: the same, so soon, would be a bounce
        terminal.Type(" ");
        terminal.WaitForText("Exercise 1: Water only");

        // the second key of each pair leaves what the first has opened
        foreach (var key in " ?qpqcqlqk")
        {
            var before = Title(terminal);
            terminal.Type(key.ToString());
            terminal.WaitUntil(() => Title(terminal) is { Length: > 0 } title && title != before, $"what '{key}' does");
        }
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void Options_that_do_not_count_where_a_rehearsal_is_taken_up_are_named()
    {
        using (var first = Start("rehearse --seed 3"))
        {
            first.WaitForText("rehearsal x60");
            first.Type("\u0003");
            Assert.Equal(0, first.WaitForExit());
        }

        using var again = Start("rehearse --seed 99 --recipe harbour-lager --theme light");
        again.WaitForText("taken up again");
        var said = Blanks().Replace(again.Screen, " ");
        Assert.Contains("Batch 1 is taken up again", said, StringComparison.Ordinal);
        Assert.Matches("does not count: (--seed, --recipe|--recipe, --seed)[.]", said);
        Assert.Contains("For a new one finish it, or give it up (x).", said, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private PseudoTerminal Start(string command) => new(
        80, 24, $"exec dotnet '{Path.Combine(AppContext.BaseDirectory, "brewdeck.dll")}' {command} --logbook '{_folder.Path}'");

    /// <summary>Without the corner, where a clock runs.</summary>
    private static string Title(PseudoTerminal terminal) => terminal.Screen.Split('\n')[0].TrimStart().Split("  ")[0];

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
