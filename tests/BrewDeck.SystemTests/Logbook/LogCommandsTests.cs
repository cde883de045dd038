using System.Text;
using System.Text.Json;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Crash;

namespace BrewDeck.SystemTests.Logbook;

public sealed class LogCommandsTests
{
    private const string Hostile = "=1+1,\"x\"\u001b[31m\u202eelA\r\n<b>\u0007\u009b2J";
    private readonly CuttableDisk _disk = new();
    private readonly StringWriter _out = new() { NewLine = "\n" };
    private readonly StringWriter _errors = new() { NewLine = "\n" };

    private LogCommands Commands => new(() => _disk, Days.StatusOf, _out, _errors);

    /// <summary>The days of these tests are made by hand: no planner would draw a step without its vessel.</summary>
    [Fact]
    public void APlanThatTheModelCannotFollowIsSaidInOneLine()
    {
        Write([.. Days.Events(4)]);
        Assert.Equal((4, 4), (Commands.Show(1), Commands.Report(1, null)));
        Assert.Matches(
            @"^(brewdeck: batch 1: this version cannot follow its plan \([^\n]+\); ""brewdeck log export 1"" gives its events as they are kept\n){2}$",
            _errors.ToString());
        Assert.Empty(_out.ToString());
    }

    [Fact]
    public void TheListAsText()
    {
        Write([.. Days.Events(2)], [.. Days.Events(2, "Harbour Lager").Take(2)]);
        Assert.Equal(0, Commands.List(LogFormat.Text, rehearsed: false));
        Assert.Equal(
            """
            batch  opened (UTC)       state     events  recipe, brewhouse
                2  2026-09-21T14:13Z  running        2  Harbour Lager, Quayside
                1  2026-09-21T14:13Z  done           9  Quayside Amber, Quayside

            """,
            _out.ToString(),
            ignoreLineEndingDifferences: true);
        Assert.Empty(_errors.ToString());
    }

    [Fact]
    public void RehearsedBatchesAreKeptApart()
    {
        Write([Days.Opened("rehearsal", rehearsed: true)], [Days.Opened("real")]);
        Commands.List(LogFormat.Csv, rehearsed: false);
        Assert.DoesNotContain("rehearsal", _out.ToString(), StringComparison.Ordinal);
        Commands.List(LogFormat.Csv, rehearsed: true);
        Assert.Contains("1,2026-09-21T14:13:20.000Z,rehearsal,Quayside,idle,1,true\r\n", _out.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void TheEventsAsTextTellTheDay()
    {
        Write([.. Days.Events(1), new StepHeld(Days.StartMs, "mash.rest-1", "stuck"), new Undone(Days.StartMs, 5)]);
        Assert.Equal(0, Commands.Export(1, LogFormat.Text));
        Assert.Equal(
            """
            batch 1: Quayside Amber, Quayside; done

                0  2026-09-21T14:13:20.000Z  batch_opened   "Quayside Amber, 40 L, on Quayside; 1 steps; brewdeck 0.1.0"
                1  2026-09-21T14:13:20.000Z  step_started   mash.rest-1
                2  2026-09-21T14:14:20.000Z  reading_taken  tun  temp_c  60.25  "60.25 °C"
                3  2026-09-21T14:15:20.000Z  reading_taken  tun  temp_c  66.125  "66.125 °C"
                4  2026-09-21T14:23:10.000Z  step_finished  mash.rest-1
                5  2026-09-21T14:13:20.000Z  step_held      mash.rest-1  "stuck"
                6  2026-09-21T14:13:20.000Z  undone         "takes back 5"

            """,
            _out.ToString(),
            ignoreLineEndingDifferences: true);
    }

    [Fact]
    public void JsonIsTheTapeByteForByte()
    {
        Write([.. Days.Events(2), new NoteWritten(1, Hostile)]);
        Assert.Equal(0, Commands.Export(1, LogFormat.Json));
        Assert.Equal(Encoding.ASCII.GetString(_disk.ReadAll(Tape.NameOf(1))), _out.ToString());
        var last = JsonDocument.Parse(_out.ToString().TrimEnd().Split('\n')[^1]).RootElement;
        Assert.Equal(Hostile, last.GetProperty("event").GetProperty("text").GetString());
    }

    [Theory]
    [InlineData(LogFormat.Text)]
    [InlineData(LogFormat.Json)]
    [InlineData(LogFormat.Csv)]
    public void HostileTextIsHarmless(object format)
    {
        Write([Days.Opened(Hostile), new NoteWritten(1, Hostile), new StepHeld(2, Hostile, "@SUM(A1)"), new RunAborted(3, "-2+3")]);
        Commands.List((LogFormat)format, rehearsed: true);
        Commands.Export(1, (LogFormat)format);
        var text = _out.ToString();
        Assert.All(text, c => Assert.True(c is '\n' or '\r' or (>= ' ' and <= '~') or '°', $"U+{(int)c:X4}"));
        if ((LogFormat)format == LogFormat.Csv)
            Assert.DoesNotMatch("(?m)(^|,)\"?[=+@-]", text);
    }

    [Fact]
    public void TheLastColumnOfTheCsvSaysWhoseDoingAnEventIs()
    {
        Write([Days.Opened(), new NoteWritten(1, "by hand"), new StepFinished(2, "mash.rest-1") { Part = 1 }]);
        Commands.Export(1, LogFormat.Csv);
        var lines = _out.ToString().Split("\r\n");
        Assert.Equal("seq,at_utc,kind,step_id,vessel,quantity,value,text,by", lines[0]);
        Assert.EndsWith(",\"by hand\",brewer", lines[2], StringComparison.Ordinal);
        Assert.EndsWith(",program", lines[3], StringComparison.Ordinal);
    }

    [Fact]
    public void CsvFieldsAreQuoted()
    {
        Assert.Equal("plain", SafeText.CsvField("plain"));
        Assert.Equal("\"a,b\"", SafeText.CsvField("a,b"));
        Assert.Equal("\"say \"\"when\"\"\"", SafeText.CsvField("say \"when\""));
        Assert.Equal("'=A1", SafeText.CsvField("=A1"));
        Assert.Equal("\"' \t=A1\"".Replace('\t', ' '), SafeText.CsvField(" \t=A1"));
        Assert.Equal("", SafeText.CsvField(""));
    }

    [Fact]
    public void ABatchThatIsNotThereIsRefused()
    {
        Write([Days.Opened()], [Days.Opened()]);
        Assert.Equal(1, Commands.Show(3));
        Assert.Equal("brewdeck: batch 3: is not in the logbook, which has 1 to 2\n", _errors.ToString());
        Assert.Empty(_out.ToString());
    }

    [Fact]
    public void AnEmptyLogbookIsNoTrouble()
    {
        Assert.Equal(0, Commands.List(LogFormat.Text, rehearsed: false));
        Assert.Equal(0, Commands.Verify());
        Assert.Equal(1, Commands.Show(1));
        Assert.Equal("brewdeck: batch 1: the logbook is empty\n", _errors.ToString());
    }

    [Fact]
    public void DamageIsVerifiedAndRepaired()
    {
        Write([.. Days.Events(2)]);
        Assert.Equal(0, Commands.Verify());
        Assert.Equal("checked: batches 1, events 9; all whole\n", _out.ToString());
        var tape = _disk.ReadAll(Tape.NameOf(1));
        tape[^300] ^= 1;
        _disk.Overwrite(Tape.NameOf(1), tape);
        Assert.Equal(1, Commands.Verify());
        Assert.Matches(@"^brewdeck: disk.batch-00001.jsonl:8: does not match its checksum\n$", _errors.ToString());
        Assert.Equal(4, Commands.Show(1));
        Assert.Equal(0, Commands.Repair());
        Assert.EndsWith("9 entries are whole again\nall whole again\n", _out.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, Commands.Verify());
        Assert.Equal(0, Commands.Repair());
        Assert.EndsWith("all whole, nothing to mend\n", _out.ToString(), StringComparison.Ordinal);
    }

    private void Write(params RunEvent[][] days)
    {
        using var journal = Journal.Open(_disk, Days.StatusOf);
        foreach (var day in days)
        {
            var batch = journal.Open((BatchOpened)day[0]);
            foreach (var happened in day[1..])
                journal.Append(batch, happened);
        }
    }
}
