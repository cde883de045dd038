using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Logbook;
using BrewDeck.Logbook.Moving;
using CsCheck;

namespace BrewDeck.SystemTests.Logbook.Moving;

/// <summary>Backup, restore, merge, export and import on real folders.</summary>
public sealed class MovingTests : IDisposable
{
    private readonly TempFolder _temp = new();
    private readonly StringWriter _out = new() { NewLine = "\n" };
    private readonly StringWriter _errors = new() { NewLine = "\n" };

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData("""{"brewdeck_logbook":1,"batches":-1,"files":0}""", "f:1: should have \"batches\"; \"brewdeck log export --all\" writes such a file")]
    [InlineData("""{"brewdeck_logbook":1,"batches":0,"files":1}|{"file":"recipes/a.toml","text":"\ud800"}""", "f:2: should be a profile file")]
    [InlineData("""{"\ud800rewdeck_logbook":1}""", "f:1: should have \"brewdeck_logbook\"; \"brewdeck log export --all\" writes such a file")]
    public void AWholeLogbookThatNobodyWroteIsRefusedInOneLine(string text, string says) =>
        Assert.Equal(says, Assert.Throws<LogbookException>(() => LogArchive.Read(new StringReader(text.Replace('|', '\n')), "f")).Message);

    [Fact]
    public void A_backup_is_taken_while_the_day_runs_and_restored_whole()
    {
        Own("shed", "recipes/mine.toml", "name = \"Mine\"\n");
        using (var journal = Open("shed"))
        {
            Write(journal, Days.Events(2));
            var running = journal.Open(Days.Opened("Harbour Lager"));
            journal.Append(running, Days.Started(1));
            Assert.Equal(0, On("shed").Backup(_temp.At("copy")));
            journal.Append(running, new NoteWritten(2, "after the backup"));
        }

        Assert.Equal("backed up: batches 2, profile files 1\n", _out.ToString());
        Assert.Equal(0, On("new").Restore(_temp.At("copy")));
        Assert.Empty(_errors.ToString());
        using var restored = Open("new");
        Assert.Equal([2, 9], restored.List().Select(h => h.Events));
        Assert.Equal(["Harbour Lager", "Quayside Amber"], restored.List().Select(h => h.Recipe));
        Assert.Equal("name = \"Mine\"\n", File.ReadAllText(_temp.At("new/recipes/mine.toml")));
    }

    [Fact]
    public void An_entry_that_is_being_written_is_left_for_the_next_backup()
    {
        Fill("shed", Days.Events(2));
        var tape = Path.Combine(_temp.At("shed"), Tape.NameOf(1));
        File.AppendAllText(tape, "{\"format\":1,\"seq\":9,\"ha");
        Assert.Equal(0, On("shed").Backup(_temp.At("copy")));
        Assert.Equal(9, TapeScan.Of(File.ReadAllBytes(Path.Combine(_temp.At("copy"), Tape.NameOf(1)))).Lines.Count);
    }

    [Fact]
    public void Nothing_is_put_over_what_is_there()
    {
        Fill("shed", Days.Events(1));
        Fill("laptop", Days.Events(2));
        Assert.Equal(4, On("shed").Backup(_temp.At("laptop")));
        Assert.Equal(4, On("shed").Restore(_temp.At("laptop")));
        Assert.Equal(4, On("shed").Merge(_temp.At("nowhere")));
        Assert.Equal(4, On("shed").Merge(_temp.At("shed")));
        Assert.Equal(4, _errors.ToString().TrimEnd().Split('\n').Length);
        Assert.Equal(5, Lines("shed").Single().Count);
    }

    [Fact]
    public void Merging_two_logbooks_takes_what_is_missing_and_what_has_gone_on()
    {
        Fill("shed", Days.Events(2), Days.Events(1, "only in the shed"));
        Fill("laptop", Days.Events(2).Take(4), Days.Events(1, "only on the laptop"));
        Assert.Equal(0, On("laptop").Merge(_temp.At("shed")));
        Assert.Equal("batches added 1, continued 1, here already 0\n", _out.ToString());
        using var journal = Open("laptop");
        Assert.Equal(["only in the shed", "only on the laptop", "Quayside Amber"], journal.List().Select(h => h.Recipe));
        Assert.Equal([5, 5, 9], journal.List().Select(h => h.Events));
    }

    [Fact]
    public void Diverged_batches_are_both_kept_and_a_second_merge_changes_nothing()
    {
        var common = Days.Events(2).Take(4).ToList();
        Fill("shed", [.. common, new NoteWritten(5, "in the shed")]);
        Fill("laptop", [.. common, new NoteWritten(5, "on the laptop"), new NoteWritten(6, "and more")]);
        On("laptop").Merge(_temp.At("shed"));
        Assert.EndsWith("1 of the added had continued differently here: both are kept\n", _out.ToString(), StringComparison.Ordinal);
        var once = Export("laptop");
        On("laptop").Merge(_temp.At("shed"));
        Assert.EndsWith("batches added 0, continued 0, here already 1\n", _out.ToString(), StringComparison.Ordinal);
        Assert.Equal(once, Export("laptop"));

        On("shed").Merge(_temp.At("laptop"));
        Assert.Equal(Ends("laptop"), Ends("shed"));
        Assert.Equal(0, Verify("shed"));
        Assert.Equal(0, Verify("laptop"));
    }

    /// <summary>Any two logbooks that share beginnings: after merging both ways they hold the same, all of what either had.</summary>
    [Fact]
    public void Any_two_logbooks_merged_both_ways_hold_all_of_both()
    {
        var batches = Gen.Select(Gen.Int[0, 2], Gen.Int[1, 5], Gen.Int[0, 1]).Array[0, 4].Select(days => days.DistinctBy(d => d.Item1).ToArray()); // a logbook opens a batch once
        var round = 0;
        Gen.Select(batches, batches).Sample(
            (shed, laptop) =>
            {
                var (a, b) = ($"a{Interlocked.Increment(ref round)}", $"b{round}");
                Fill(a, [.. shed.Select(Day)]);
                Fill(b, [.. laptop.Select(Day)]);
                var had = Chains(a).Concat(Chains(b)).ToHashSet(StringComparer.Ordinal);
                On(a).Merge(_temp.At(b));
                On(b).Merge(_temp.At(a));
                On(a).Merge(_temp.At(b));
                return Ends(a).SetEquals(Ends(b)) && had.IsSubsetOf(Chains(a)) && Ends(a).Count == Lines(a).Count;
            },
            iter: 8, threads: 1);

        static IEnumerable<RunEvent> Day((int Recipe, int Events, int Branch) d) =>
            Days.Events(1, $"recipe {d.Recipe}").Take(Math.Min(2, d.Events)).Concat(Enumerable.Range(2, Math.Max(0, d.Events - 2)).Select(i => new NoteWritten(i, $"branch {d.Branch}")));
    }

    [Fact]
    public void Export_import_export_is_byte_identical()
    {
        var round = 0;
        AnyEvent.All.Array[0, 30].Array[1, 3].Sample(
            batches =>
            {
                var (from, to) = ($"from{Interlocked.Increment(ref round)}", $"to{round}");
                Fill(from, [.. batches.Select((events, i) => events.Where(e => e is not BatchOpened).Prepend(Days.Opened($"recipe {i}", steps: 1)))]);
                var text = Export(from);
                File.WriteAllText(_temp.At("any.jsonl"), text);
                return On(to).Import(_temp.At("any.jsonl")) == 0 && Export(to) == text;
            },
            iter: 5, threads: 1);
    }

    [Fact]
    public void An_archive_is_plain_text_with_the_brewers_files_and_comes_in_once()
    {
        Fill("shed", Days.Events(3), [Days.Opened("any", rehearsed: true)]);
        Own("shed", "recipes/mine.toml", "name = \"Öl \u202e\"\r\n# note");
        Own("shed", "waters/well.toml", "");
        var first = Export("shed");
        File.WriteAllText(_temp.At("all.jsonl"), first);
        Assert.Equal(0, On("new").Import(_temp.At("all.jsonl")));
        Assert.Equal(first, Export("new"));
        Assert.All(first, c => Assert.True(c is '\n' or (>= ' ' and <= '~')));
        Assert.Equal(0, On("new").Import(_temp.At("all.jsonl")));
        Assert.Equal(first, Export("new"));
        Assert.Equal(Lines("shed").SelectMany(l => l).Select(l => Convert.ToHexString(l.Hash)), Lines("new").SelectMany(l => l).Select(l => Convert.ToHexString(l.Hash)));
    }

    [Fact]
    public void A_flipped_byte_in_any_event_is_found_by_import_and_by_verify()
    {
        Fill("shed", Days.Events(3));
        var tape = Path.Combine(_temp.At("shed"), Tape.NameOf(1));
        var whole = File.ReadAllBytes(tape);
        var archive = System.Text.Encoding.ASCII.GetBytes(Export("shed"));
        var random = new Random(11);
        var at = 0;
        foreach (var line in TapeScan.Of(whole).Lines)
        {
            var length = line.ToUtf8().Length;
            var place = random.Next(length);
            File.WriteAllBytes(tape, Flipped(whole, at + place, random.Next(8)));
            Assert.Equal(1, Verify("shed"));
            var inArchive = archive.Length - whole.Length + at + place; // the tape is the end of it
            File.WriteAllBytes(_temp.At("bad.jsonl"), Flipped(archive, inArchive, random.Next(8)));
            Assert.Equal(4, On("new").Import(_temp.At("bad.jsonl")));
            at += length;
        }

        File.WriteAllBytes(tape, whole);
        Assert.Equal(0, Verify("shed"));
        Assert.False(Directory.Exists(_temp.At("new")));
        Assert.Matches("^brewdeck: .*bad.jsonl:3: does not match its checksum\n", _errors.ToString()[_errors.ToString().IndexOf("brewdeck: " + _temp.At("bad.jsonl"), StringComparison.Ordinal)..]);
    }

    [Theory]
    [InlineData("", "bad.jsonl:1: is missing")]
    [InlineData("{\"brewdeck_logbook\":2,\"batches\":0,\"files\":0}\n", "a newer brewdeck can read it")]
    [InlineData("{\"brewdeck_logbook\":1,\"batches\":1,\"files\":0}\n", "bad.jsonl:2: is missing")]
    [InlineData("{\"brewdeck_logbook\":1,\"batches\":0,\"files\":1}\n{\"file\":\"recipes/../../x.toml\",\"text\":\"\"}\n", "bad.jsonl:2: should be a profile file")]
    [InlineData("{\"brewdeck_logbook\":1,\"batches\":0,\"files\":0}\nmore\n", "bad.jsonl:1: should be the end")]
    [InlineData("hello\n", "bad.jsonl:1: is no JSON")]
    public void What_is_no_archive_is_refused_in_one_line(string text, string expected)
    {
        File.WriteAllText(_temp.At("bad.jsonl"), text);
        Assert.Equal(4, On("new").Import(_temp.At("bad.jsonl")));
        Assert.Contains(expected, _errors.ToString(), StringComparison.Ordinal);
        Assert.Single(_errors.ToString().TrimEnd().Split('\n'));
        Assert.False(Directory.Exists(_temp.At("new")));
    }

    private static byte[] Flipped(byte[] bytes, int at, int bit)
    {
        byte[] flipped = [.. bytes];
        flipped[at] ^= (byte)(1 << bit);
        return flipped;
    }

    private MoveCommands On(string name) => new(_temp.At(name), Days.StatusOf, _out, _errors);

    private Journal Open(string name) => Journal.Open(new FolderDisk(_temp.At(name)), Days.StatusOf);

    private int Verify(string name) => LogVerify.Of(new FolderDisk(_temp.At(name)), TimeSpan.FromSeconds(5)).Faults.Count > 0 ? 1 : 0;

    private string Export(string name)
    {
        using var output = new StringWriter();
        new MoveCommands(_temp.At(name), Days.StatusOf, output, _errors).ExportAll(null);
        return output.ToString();
    }

    private void Fill(string name, params IEnumerable<RunEvent>[] days)
    {
        using var journal = Open(name);
        foreach (var day in days)
            Write(journal, day);
    }

    private static void Write(Journal journal, IEnumerable<RunEvent> day)
    {
        var events = day.ToList();
        var batch = journal.Open((BatchOpened)events[0]);
        foreach (var happened in events.Skip(1))
            journal.Append(batch, happened);
    }

    private void Own(string logbook, string name, string text)
    {
        var path = Path.Combine(_temp.At(logbook), name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private List<IReadOnlyList<TapeLine>> Lines(string name)
    {
        using var journal = Open(name);
        return [.. journal.List().Reverse().Select(h => journal.Lines(h.Number))];
    }

    /// <summary>A hash names a batch up to there, so the last ones say which batches there are.</summary>
    private HashSet<string> Ends(string name) => Lines(name).Select(l => Convert.ToHexString(l[^1].Hash)).ToHashSet(StringComparer.Ordinal);

    private HashSet<string> Chains(string name) => Lines(name).SelectMany(l => l).Select(l => Convert.ToHexString(l.Hash)).ToHashSet(StringComparer.Ordinal);
}
