using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Profiles;
using BrewDeck.SystemTests.Terminal;
using BrewDeck.Terminal;
using BrewDeck.Terminal.Stills;

namespace BrewDeck.SystemTests.Reports;

/// <summary>
/// A logbook of batches with hostile names, asked for everything that it can be asked for: nothing that a terminal, a spreadsheet or a
/// browser would obey comes out.
/// </summary>
[Collection(nameof(RehearsedLogbook))]
public sealed class HostileOutputTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly DateTimeOffset _now;
    private Session _session = null!;

    public HostileOutputTests(RehearsedLogbook logbook)
    {
        var day = logbook.Events();
        _now = DateTimeOffset.FromUnixTimeMilliseconds(day[^1].AtMs).AddHours(1);
        using var journal = Journal.Open(new FolderDisk(_folder.Path), StatusFold.Of);
        foreach (var text in (string[])[HostileDay.Text, HostileDay.Formula])
        {
            journal.Adopt(HostileDay.Lines(HostileDay.GivenUp(day, text)));
            journal.Adopt(HostileDay.Lines(HostileDay.Finished(day, text)));
        }

        journal.Adopt(HostileDay.Lines(HostileDay.Running(day, HostileDay.Text)));
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("log list --rehearsed")]
    [InlineData("log list --rehearsed --format json")]
    [InlineData("log list --rehearsed --search =HYPER")]
    [InlineData("log show 1")]
    [InlineData("log show 4")]
    [InlineData("log report 2")]
    [InlineData("log report 4")]
    [InlineData("log export 1")]
    [InlineData("log export 4 --format json")]
    [InlineData("log export 2 --format beerjson")]
    [InlineData("log export --all")]
    [InlineData("log trends --rehearsed")]
    [InlineData("log verify")]
    [InlineData("lessons --rehearsed")]
    [InlineData("debrief 2")]
    [InlineData("debrief 2 --json")]
    public void A_command_says_nothing_that_a_terminal_obeys(string command)
    {
        var (_, output, errors) = RehearsedLogbook.RunOn(_folder.Path, command.Split(' '));
        Assert.NotEmpty(output + errors);
        PageReading.AssertPlain(output.ReplaceLineEndings("\n"));
        PageReading.AssertPlain(errors);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("log list --rehearsed --format csv")]
    [InlineData("log export 1 --format csv")]
    [InlineData("log export 4 --format csv")]
    [InlineData("log trends --rehearsed --csv")]
    public void A_spreadsheet_gets_no_formula(string command)
    {
        var (code, output, errors) = RehearsedLogbook.RunOn(_folder.Path, command.Split(' '));
        Assert.True(code == 0, errors);
        PageReading.AssertPlain(output.Replace("\r\n", "\n", StringComparison.Ordinal));
        var fields = output.Split("\r\n").SelectMany(Fields).Select(f => f.TrimStart()).ToList();
        Assert.Contains(fields, f => f.Contains("HYPERLINK", StringComparison.Ordinal) || f.Contains("<script>", StringComparison.Ordinal));
        Assert.All(fields.Where(f => !double.TryParse(f, System.Globalization.CultureInfo.InvariantCulture, out _)), f => Assert.DoesNotMatch("^[=+@|%\t\r-]", f));
    }

    [Fact]
    public void The_export_reads_back_with_the_names_as_they_were()
    {
        var (code, _, errors) = RehearsedLogbook.RunOn(_folder.Path, "log", "export", "--all", "--out", _folder.At("all.txt"));
        Assert.True(code == 0, errors);
        var back = _folder.At("back");
        Assert.Equal(0, RehearsedLogbook.RunOn(back, "log", "import", _folder.At("all.txt")).Code);
        using var journal = Journal.Open(new FolderDisk(back), StatusFold.Of);
        Assert.Equal(3, journal.List().Count(h => h.Recipe == HostileDay.Text));
        Assert.Equal(2, journal.List().Count(h => h.Recipe == HostileDay.Formula));
    }

    [Fact]
    public void A_brewed_recipe_is_valid_and_says_its_name_in_escapes()
    {
        var text = RehearsedLogbook.RunOn(_folder.Path, "log", "export", "4", "--format", "beerjson").Output;
        Assert.True(BeerJsonFiles.IsValid(text));
        Assert.All(text, c => Assert.True(c is '\n' or (>= ' ' and <= '~'), $"U+{(int)c:X4}"));
        var recipe = System.Text.Json.JsonDocument.Parse(text).RootElement.GetProperty("beerjson").GetProperty("recipes")[0];
        Assert.Equal(HostileDay.Formula, recipe.GetProperty("name").GetString());
    }

    [Fact]
    public void Plain_lines_hold_nothing_that_a_terminal_obeys()
    {
        using var journal = Journal.Open(new FolderDisk(_folder.Path), StatusFold.Of);
        var session = new Session(new SessionPorts(journal, ProfileFolder.BesideProgram(_folder.Path)), new SessionSettings { DoubleStrike = TimeSpan.Zero, LeaveAlone = TimeSpan.Zero }, _now);
        using var typed = new StringReader($"\nrun sheet\nback\ncharts\nback\nother reading\nback\n{HostileDay.Formula}\n");
        using var said = new StringWriter { NewLine = "\n" };
        new PlainLoop(session, new SteppedTime(_now), typed, said, Notation.Metric, null).Run();
        PageReading.AssertPlain(said.ToString());
        Assert.True(said.ToString().Contains("alert(1)", StringComparison.Ordinal) && said.ToString().Contains("HYPERLINK", StringComparison.Ordinal), said.ToString());
    }

    /// <summary>Every page that shows a batch, as the terminal's cells.</summary>
    [Fact]
    public void The_deck_shows_nothing_that_a_terminal_obeys()
    {
        using var journal = Journal.Open(new FolderDisk(_folder.Path), StatusFold.Of);
        _session = new Session(
            new SessionPorts(journal, ProfileFolder.BesideProgram(_folder.Path)) { Figures = journal.FiguresOf, NextDues = journal.NextDuesOf },
            new SessionSettings { DoubleStrike = TimeSpan.Zero, LeaveAlone = TimeSpan.Zero }, _now);
        var seen = new HashSet<string> { Look() };
        Assert.IsType<DeckScreen>(_session.Screen);
        // every key of the deck, of the list of batches and of a batch's pages, wherever it leads; what asks for a word is let be
        foreach (var key in "tnrfbpclhusx0k")
        {
            Strike(KeyStroke.Of(key), seen);
            Strike(new KeyStroke(KeyName.Escape), seen);
        }

        for (var i = 0; i < 3 && !OnOpening(); i++)
            Strike(KeyStroke.Of('q'), seen);
        while (((ListScreen)_session.Screen).Rows[((ListScreen)_session.Screen).Selected].Cells[0] != "Batches")
            Strike(new KeyStroke(KeyName.Down), seen);
        Strike(new KeyStroke(KeyName.Enter), seen);
        for (var row = 0; row < 4; row++)
        {
            foreach (var key in "sm")
            {
                Strike(KeyStroke.Of(key), seen);
                if (_session.Screen.Overlay is not null)
                    Strike(new KeyStroke(KeyName.Escape), seen);
            }

            Strike(new KeyStroke(KeyName.Enter), seen);
            foreach (var key in "cfd")
            {
                var before = _session.Screen.Title;
                Strike(KeyStroke.Of(key), seen);
                Strike(new KeyStroke(KeyName.Right), seen);
                if (_session.Screen.Title != before)
                    Strike(KeyStroke.Of('q'), seen);
            }

            Strike(KeyStroke.Of('q'), seen);
            Strike(new KeyStroke(KeyName.Down), seen);
        }

        Strike(KeyStroke.Of('c'), seen);
        Assert.True(seen.Count >= 12, $"only {seen.Count} screens: {string.Join(" | ", seen)}");
    }

    private bool OnOpening() => _session.Screen is ListScreen { Title: "BrewDeck" };

    private void Strike(KeyStroke stroke, HashSet<string> seen)
    {
        _session.Receive(new Input.Key(stroke), _now);
        seen.Add(Look());
    }

    /// <returns>Its title and what it asks.</returns>
    private string Look()
    {
        PageReading.AssertPlain(StillScreen.Of(_session.Screen, 80, 24).ToText());
        return $"{_session.Screen.GetType().Name} {_session.Screen.Title} {_session.Screen.Overlay?.Question}";
    }

    /// <summary>As RFC 4180 has them; the file has no line ends within fields.</summary>
    private static IEnumerable<string> Fields(string line)
    {
        var field = new System.Text.StringBuilder();
        var quoted = false;
        foreach (var c in line)
        {
            if (c == '"')
                quoted = !quoted;
            else if (c == ',' && !quoted)
            {
                yield return field.ToString();
                field.Clear();
            }
            else
                field.Append(c);
        }

        yield return field.ToString();
    }
}
