using System.CommandLine;
using System.Diagnostics;
using System.Text.Json;
using BrewDeck.Commands;
using BrewDeck.Commands.Shipping;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Readings;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;

namespace BrewDeck.SystemTests.Shipping;

public sealed class ShippingTests
{
    private static readonly RootCommand Root = CommandTable.Root(TimeProvider.System, TextWriter.Null, TextWriter.Null);

    /// <summary>Held against what the build says that the program loads.</summary>
    [Fact]
    public void Every_package_in_the_program_is_listed_with_the_version_that_is_in_it()
    {
        using var built = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "brewdeck.deps.json")));
        var packages = built.RootElement.GetProperty("libraries").EnumerateObject()
            .Where(l => l.Value.GetProperty("type").GetString() == "package").Select(l => l.Name).ToHashSet();
        Assert.True(packages.Count > 5);
        Assert.Equal(packages.Order(), Licences.Rows.Where(r => !r[0].StartsWith(".NET", StringComparison.Ordinal)).Select(r => $"{r[0]}/{r[1]}").Order());
    }

    [Fact]
    public void Each_licence_named_is_printed()
    {
        var text = Licences.Text();
        Assert.All(Licences.Rows, row => Assert.Contains($"\n{row[2]}\n", text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_manual_page_has_each_command_and_option_and_no_request_by_accident()
    {
        var page = ManualPage.Of(Root);
        foreach (var (path, command) in CommandTree.Of(Root))
        {
            Assert.Contains($".SS {path}\n", page.Replace("\\-", "-", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.All(
                command.Options.Where(o => !o.Hidden),
                o => Assert.Contains(o.Name.Replace("-", "\\-", StringComparison.Ordinal), page, StringComparison.Ordinal));
        }
        Assert.All(page.Split('\n').Where(l => l.StartsWith('.')), l => Assert.Matches(@"^\.(TH|SH|SS|TP|B)( |$)", l));
    }

    [Fact]
    public void The_manual_page_has_the_keys_of_the_deck_how_readings_are_written_and_the_files()
    {
        var page = ManualPage.Of(Root).Replace("\\-", "-", StringComparison.Ordinal);
        Assert.All(KeyMap.Table.Where(b => b.Where.HasFlag(KeyContext.Deck)), b => Assert.Contains($"\n{b.Help}\n".Replace("\\", "\\e", StringComparison.Ordinal), page, StringComparison.Ordinal));
        foreach (var gravity in (string[])["1046", "1.046@40", "12.1p"])
        {
            Assert.Contains(gravity, page, StringComparison.Ordinal);
            Assert.True(new Typed(Notation.Metric).TryRead(ReadingKind.Gravity, gravity.Split('@')[0], out var sg, out _) && sg is > 1.04 and < 1.05);
        }
        Assert.Contains($".B {Tape.NameOf(1).Replace("00001", "NUMBER", StringComparison.Ordinal)}\n", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lo", "log")]
    [InlineData("log ver", "verify")]
    [InlineData("plan --batc", "--batch")]
    [InlineData("rehearse --headl", "--headless")]
    public void Bash_completes(string typed, string to)
    {
        var words = typed.Split(' ').Prepend("brewdeck").ToList();
        var script = $"{Completions.For(Shell.Bash, Root)}\nCOMP_WORDS=({string.Join(' ', words)}); COMP_CWORD={words.Count - 1}; _brewdeck; echo \"${{COMPREPLY[@]}}\"";
        using var bash = Process.Start(new ProcessStartInfo("bash", ["--norc", "-c", script]) { RedirectStandardOutput = true })!;
        Assert.Equal(to, bash.StandardOutput.ReadToEnd().Trim());
    }
}
