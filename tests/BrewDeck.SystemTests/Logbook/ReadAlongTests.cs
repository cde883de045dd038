using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Reports;

namespace BrewDeck.SystemTests.Logbook;

/// <summary>An old batch can be looked at while the deck has the logbook open; nothing is written by that.</summary>
[Collection(nameof(RehearsedLogbook))]
public sealed class ReadAlongTests(RehearsedLogbook logbook) : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("log", "list", "--rehearsed")]
    [InlineData("log", "list", "--rehearsed", "--format", "json")]
    [InlineData("log", "show", "1")]
    [InlineData("log", "report", "1")]
    [InlineData("log", "export", "1")]
    [InlineData("log", "export", "--all")]
    public void What_is_read_beside_the_deck_is_what_is_read_after_it(params string[] args)
    {
        (int, string, string) beside;
        using (var journal = Journal.Open(new FolderDisk(_folder.Path), StatusFold.Of))
        {
            var events = logbook.Events();
            var batch = journal.Open((BatchOpened)events[0]);
            foreach (var happened in events.Skip(1).Take(events.Count / 2))
                journal.Append(batch, happened);
            var tapes = Directory.GetFiles(_folder.Path).Order().ToList();
            beside = RehearsedLogbook.RunOn(_folder.Path, args);
            Assert.Equal(tapes, Directory.GetFiles(_folder.Path).Order());
        }

        Assert.Equal((0, ""), (beside.Item1, beside.Item3));
        Assert.NotEmpty(beside.Item2);
        Assert.Equal(RehearsedLogbook.RunOn(_folder.Path, args), beside);
    }

    [Fact]
    public void Tapes_are_checked_beside_the_deck()
    {
        using var journal = Journal.Open(new FolderDisk(_folder.Path), StatusFold.Of);
        var events = logbook.Events();
        var batch = journal.Open((BatchOpened)events[0]);
        foreach (var happened in events.Skip(1).Take(20))
            journal.Append(batch, happened);

        var (code, said, errors) = RehearsedLogbook.RunOn(_folder.Path, "log", "verify");
        Assert.Equal((0, "checked: batches 1, events 21; all whole; an open deck has their copies, which were not looked at", ""), (code, said.Trim(), errors));

        var tape = Directory.GetFiles(_folder.Path, "*.jsonl").Single();
        var bytes = File.ReadAllBytes(tape);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(tape, bytes);
        (code, said, errors) = RehearsedLogbook.RunOn(_folder.Path, "log", "verify");
        Assert.Equal(1, code);
        Assert.Contains("faults 1", said, StringComparison.Ordinal);
        Assert.Contains("batch-00001.jsonl:", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void What_writes_is_still_refused()
    {
        using var journal = Journal.Open(new FolderDisk(_folder.Path), StatusFold.Of);
        var (code, _, errors) = RehearsedLogbook.RunOn(_folder.Path, "log", "repair");
        Assert.Equal(4, code);
        Assert.Contains("another brewdeck has this logbook open", errors, StringComparison.Ordinal);
    }
}
