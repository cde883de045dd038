using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Crash;

namespace BrewDeck.SystemTests.Logbook;

public sealed class LogVerifyTests
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(2);
    private readonly CuttableDisk _disk = new();

    [Fact]
    public void AWholeLogbookHasNoFaults()
    {
        WriteTwoBatches();
        var report = LogVerify.Of(_disk, Limit);
        Assert.Equal((2, 14), (report.Batches, report.Events));
        Assert.Empty(report.Faults);
    }

    [Fact]
    public void EveryFlippedBitOfATapeIsFound()
    {
        WriteTwoBatches();
        var tape = _disk.ReadAll(Tape.NameOf(2));
        var step = Math.Max(1, tape.Length / 400);
        for (var at = 0; at < tape.Length; at += step)
        {
            tape[at] ^= (byte)(1 << (at % 8));
            Assert.NotNull(TapeScan.Of(tape).Fault);
            tape[at] ^= (byte)(1 << (at % 8));
        }

        tape[tape.Length / 2] ^= 4;
        _disk.Overwrite(Tape.NameOf(2), tape);
        Assert.Contains(LogVerify.Of(_disk, Limit).Faults, f => f.Contains("batch-00002.jsonl:", StringComparison.Ordinal));
    }

    [Fact]
    public void ALineLeftOutOrMovedIsFound()
    {
        WriteTwoBatches();
        var lines = TapeScan.Of(_disk.ReadAll(Tape.NameOf(1))).Lines;
        Assert.NotNull(ScanOf(lines.Where((_, i) => i != 3)).Fault);
        Assert.NotNull(ScanOf([.. lines.Take(2), lines[3], lines[2], .. lines.Skip(4)]).Fault);
        var forged = lines.Select((l, i) => i == 3 ? TapeLine.After(lines[2], EventCodec.Encode(new NoteWritten(1, "forged"))) : l);
        Assert.Equal(4, ScanOf(forged).Lines.Count);
    }

    [Fact]
    public void ATapeWrittenAnewWithOtherEventsDiffersFromTheDatabase()
    {
        WriteTwoBatches();
        var last = default(TapeLine);
        byte[] forged = [.. Days.Events(1, "other").SelectMany(e => (last = TapeLine.After(last, EventCodec.Encode(e))).ToUtf8())];
        _disk.Overwrite(Tape.NameOf(1), forged);
        Assert.Contains(LogVerify.Of(_disk, Limit).Faults, f => f.EndsWith("whole entries, the database 9", StringComparison.Ordinal));
    }

    [Fact]
    public void EveryFlippedBitInAnEventOfTheDatabaseIsFound()
    {
        WriteTwoBatches();
        var data = _disk.ReadAll(BatchDatabase.DataName);
        var at = data.AsSpan().IndexOf("66.125"u8);
        Assert.True(at > 0);
        data[at] ^= 1;
        _disk.Overwrite(BatchDatabase.DataName, data);
        Assert.Contains(LogVerify.Of(_disk, Limit).Faults, f => f.EndsWith("its copy in the database is damaged", StringComparison.Ordinal));
    }

    [Fact]
    public void AnAlteredHeaderIsFound()
    {
        WriteTwoBatches();
        var data = _disk.ReadAll(BatchDatabase.DataName);
        for (var at = data.AsSpan().IndexOf("\0first\0"u8); at >= 0; at = data.AsSpan().IndexOf("\0first\0"u8))
            data[at + 1] = (byte)'F'; // in the header the name stands by itself, in the event within its JSON
        _disk.Overwrite(BatchDatabase.DataName, data);
        Assert.Contains(LogVerify.Of(_disk, Limit).Faults, f => f.EndsWith("its header in the database is damaged", StringComparison.Ordinal));
    }

    private static TapeScan ScanOf(IEnumerable<TapeLine> lines) => TapeScan.Of([.. lines.SelectMany(l => l.ToUtf8())]);

    private void WriteTwoBatches()
    {
        using var journal = Journal.Open(_disk, Days.StatusOf);
        foreach (var (steps, name) in ((int, string)[])[(2, "first"), (1, "second")])
        {
            RunEvent[] day = [.. Days.Events(steps, name)];
            var batch = journal.Open((BatchOpened)day[0]);
            foreach (var happened in day[1..])
                journal.Append(batch, happened);
        }
    }
}
