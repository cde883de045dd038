using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Crash;

namespace BrewDeck.SystemTests.Logbook;

public sealed class JournalTests
{
    private readonly CuttableDisk _disk = new();

    /// <summary>A batch of an older day may come into the logbook later: rehearsed without a clock, or moved in from elsewhere.</summary>
    [Fact]
    public void TheListIsByTheDayOfEachBatchTheNewestFirstForWhoHasTheLogbookAndForWhoReadsAlong()
    {
        using var journal = Open();
        foreach (var days in (int[])[0, 2, -180])
            journal.Open(Days.Opened() with { AtMs = Days.StartMs + days * 86_400_000L });
        Assert.Equal([2, 1, 3], journal.List().Select(h => h.Number));
        Assert.Equal([2, 1, 3], new TapesAlone(_disk, Days.StatusOf).List().Select(h => h.Number));
    }

    [Fact]
    public void ADayComesBackAsItWasWritten()
    {
        RunEvent[] day = [.. Days.Events(steps: 4)];
        using (var journal = Open())
        {
            Assert.Equal(1, Write(journal, day));
            Assert.Null(Same.Difference(day, journal.Read(1).ToArray()));
        }

        using var again = Open();
        Assert.Null(Same.Difference(day, again.Read(1).ToArray()));
        Assert.Empty(again.Notices);
    }

    [Fact]
    public void TheListIsNewestFirstAndKnowsHowFarEachDayWent()
    {
        using (var journal = Open())
        {
            Write(journal, [.. Days.Events(2, "first")]);
            Write(journal, [.. Days.Events(2, "second").Take(4)]);
            journal.Open(Days.Opened("third", rehearsed: true));
            Assert.Equal(Expected(), journal.List());
        }

        using var again = Open();
        Assert.Equal(Expected(), again.List());

        static BatchHead[] Expected() =>
        [
            new(3, "third", "Quayside", Days.StartMs, 1, RunStatus.Idle, true),
            new(2, "second", "Quayside", Days.StartMs, 4, RunStatus.Running, false),
            new(1, "first", "Quayside", Days.StartMs, 9, RunStatus.Complete, false),
        ];
    }

    [Fact]
    public void TwoBatchesAtOnceKeepApart()
    {
        using var journal = Open();
        RunEvent[] a = [.. Days.Events(2, "a")];
        RunEvent[] b = [.. Days.Events(2, "b")];
        journal.Open((BatchOpened)a[0]);
        journal.Open((BatchOpened)b[0]);
        for (var i = 1; i < a.Length; i++)
        {
            journal.Append(1, a[i]);
            journal.Append(2, b[i]);
        }

        Assert.Null(Same.Difference(a, journal.Read(1).ToArray()));
        Assert.Null(Same.Difference(b, journal.Read(2).ToArray()));
    }

    [Fact]
    public void AnEndedBatchTakesMoreAndAnUndoOpensItAgain()
    {
        using (var journal = Open())
            Write(journal, [.. Days.Events(1)]);
        using var later = Open();
        later.Append(1, new NoteWritten(Days.StartMs, "fermenter at 19 °C"));
        Assert.Equal((6, RunStatus.Complete), Head(later));
        later.Append(1, new Undone(Days.StartMs, 4));
        Assert.Equal((7, RunStatus.Running), Head(later));
        later.Append(1, new RunAborted(Days.StartMs, "stuck"));
        Assert.Equal((8, RunStatus.Aborted), Head(later));
    }

    [Fact]
    public void AClockSetBackChangesNothing()
    {
        using (var journal = Open())
        {
            journal.Open(Days.Opened());
            foreach (var atMs in (long[])[Days.StartMs, 5, -7, long.MinValue, long.MaxValue, 0])
                journal.Append(1, Days.Reading(atMs, 66));
        }

        using var again = Open();
        Assert.Equal([Days.StartMs, Days.StartMs, 5, -7, long.MinValue, long.MaxValue, 0], again.Read(1).Select(e => e.AtMs));
    }

    [Fact]
    public void ABatchThatIsNotThereIsSaid()
    {
        using var journal = Open();
        Assert.Contains("no batch 7", Assert.Throws<LogbookException>(() => journal.Read(7)).Message, StringComparison.Ordinal);
        Assert.Contains("no batch 7", Assert.Throws<LogbookException>(() => journal.Append(7, new NoteWritten(0, ""))).Message, StringComparison.Ordinal);
        Assert.Empty(_disk.Tapes());
    }

    [Fact]
    public void ALostDatabaseIsMadeAgainFromTheTapes()
    {
        IReadOnlyList<BatchHead> before;
        using (var journal = Open())
        {
            Write(journal, [.. Days.Events(2, "first")]);
            Write(journal, [.. Days.Events(3, "second").Take(7)]);
            before = journal.List();
        }

        _disk.Delete(BatchDatabase.DataName);
        _disk.Delete(BatchDatabase.LogName);
        using var again = Open();
        Assert.Equal(before, again.List());
    }

    [Fact]
    public void ANewerDatabaseIsReadAndLeftAlone()
    {
        using (var journal = Open())
            Write(journal, [.. Days.Events(2)]);
        using (var engine = new LiteDB.LiteDatabase(_disk.Open(BatchDatabase.DataName), logStream: _disk.Open(BatchDatabase.LogName)))
            engine.GetCollection("meta").Update(new LiteDB.BsonDocument { ["_id"] = 1, ["format"] = BatchDatabase.Format + 1 });
        using var older = Open();
        Assert.True(older.ReadOnly);
        Assert.Contains("newer brewdeck", Assert.Single(older.Notices), StringComparison.Ordinal);
        Assert.Equal(9, older.Read(1).Count);
        var tape = _disk.ReadAll(Tape.NameOf(1));
        Assert.Throws<LogbookException>(() => older.Append(1, new NoteWritten(0, "no")));
        Assert.Throws<LogbookException>(() => older.Open(Days.Opened()));
        older.Dispose();
        Assert.Throws<LogbookException>(() => LogRepair.Run(_disk, Days.StatusOf, TimeSpan.FromSeconds(10)));
        Assert.Equal(tape, _disk.ReadAll(Tape.NameOf(1)));
    }

    [Fact]
    public void ANewerTapeIsLeftAlone()
    {
        using (var journal = Open())
            Write(journal, [.. Days.Events(2)]);
        byte[] tape = [.. _disk.ReadAll(Tape.NameOf(1)), .. """{"format":2,"what":"ever"}"""u8, (byte)'\n'];
        _disk.Overwrite(Tape.NameOf(1), tape);
        using (var older = Open())
            Assert.True(older.ReadOnly);
        Assert.Throws<LogbookException>(() => LogRepair.Run(_disk, Days.StatusOf, TimeSpan.FromSeconds(10)));
        Assert.Equal(tape, _disk.ReadAll(Tape.NameOf(1)));
    }

    [Fact]
    public void AFullDiskLosesNothingAndTheReserveHoldsSomeMore()
    {
        using (var journal = Open())
        {
            Write(journal, [.. Days.Events(2).Take(3)]);
            _disk.LimitBytes = _disk.UsedBytes + 100; // not enough for a line
            journal.Append(1, Days.Reading(1, 50));
            Assert.Contains("disk is full", Assert.Single(journal.Notices), StringComparison.Ordinal);
            _disk.LimitBytes = _disk.UsedBytes + 100;
            Assert.Contains("disk is full", Assert.Throws<LogbookException>(() => journal.Append(1, Days.Reading(2, 51))).Message, StringComparison.Ordinal);
            Assert.Equal(4, journal.Read(1).Count);
            _disk.LimitBytes = long.MaxValue;
            journal.Append(1, Days.Reading(3, 52));
        }

        using var again = Open();
        Assert.Equal([1, 3], again.Read(1).Select(e => e.AtMs).Where(ms => ms < 100));
    }

    [Fact]
    public void ABatchThatDoesNotFitIsNotOpened()
    {
        using var journal = Open();
        Ballast.Release(_disk);
        _disk.LimitBytes = _disk.UsedBytes + 1_000;
        Assert.Throws<LogbookException>(() => journal.Open(Days.Opened()));
        Assert.Empty(journal.List());
        _disk.LimitBytes = long.MaxValue;
        Assert.Equal(1, journal.Open(Days.Opened()));
    }

    [Fact]
    public void TheDayGoesOnWhenOnlyTheDatabaseFails()
    {
        RunEvent[] day = [.. Days.Events(2)];
        using (var journal = Open())
        {
            journal.Open((BatchOpened)day[0]);
            for (var i = 1; i < day.Length; i++)
            {
                // room for lines of the tape, none for the pages of the database
                _disk.LimitBytes = _disk.UsedBytes + 4_000;
                journal.Append(1, day[i]);
            }

            Assert.Contains("catches up", journal.Notices[0], StringComparison.Ordinal);
            Assert.Equal((9, RunStatus.Complete), Head(journal));
            _disk.LimitBytes = long.MaxValue;
        }

        using var again = Open();
        Assert.Equal((9, RunStatus.Complete), Head(again));
        Assert.Null(Same.Difference(day, again.Read(1).ToArray()));
    }

    [Fact]
    public void DamageInTheMiddleOfATapeIsNamedAndNothingIsAdded()
    {
        using (var journal = Open())
            Write(journal, [.. Days.Events(2)]);
        var tape = _disk.ReadAll(Tape.NameOf(1));
        tape[tape.Length - 400] ^= 1;
        _disk.Overwrite(Tape.NameOf(1), tape);
        using var again = Open();
        var e = Assert.Throws<LogbookException>(() => again.Read(1));
        Assert.Matches(@"batch-00001\.jsonl:[78]: .*log repair", e.Message);
        Assert.Throws<LogbookException>(() => again.Append(1, new NoteWritten(0, "")));
        Assert.Equal(tape, _disk.ReadAll(Tape.NameOf(1)));
    }

    [Fact]
    public void AnEntryThatIsNotWholeIsSetAsideAndSaid()
    {
        using (var journal = Open())
            Write(journal, [.. Days.Events(2)]);
        var tape = _disk.ReadAll(Tape.NameOf(1));
        var torn = TapeLine.Parse(tape.AsSpan(0, tape.AsSpan().IndexOf((byte)'\n')))!.ToUtf8()[..57];
        _disk.Overwrite(Tape.NameOf(1), [.. tape, .. torn]);
        using var again = Open();
        Assert.EndsWith("57 bytes of an entry that was never confirmed were set aside", Assert.Single(again.Notices), StringComparison.Ordinal);
        Assert.Equal(tape, _disk.ReadAll(Tape.NameOf(1)));
        Assert.Equal(torn, _disk.ReadAll(Tape.NameOf(1) + ".torn"));
        Assert.Equal(9, again.Read(1).Count);
    }

    [Fact]
    public void AMissingTapeIsSaidAndWrittenAgain()
    {
        using (var journal = Open())
            Write(journal, [.. Days.Events(2)]);
        var tape = _disk.ReadAll(Tape.NameOf(1));
        _disk.Delete(Tape.NameOf(1));
        using (var journal = Open())
        {
            Assert.Contains("its tape is missing", Assert.Single(journal.Notices), StringComparison.Ordinal);
            Assert.Throws<LogbookException>(() => journal.Append(1, new NoteWritten(1, "lost")));
            Assert.Equal(2, journal.Open(Days.Opened()));
        }

        LogRepair.Run(_disk, Days.StatusOf, TimeSpan.FromSeconds(10));
        Assert.Equal(tape, _disk.ReadAll(Tape.NameOf(1)));
    }

    private static int Write(Journal journal, RunEvent[] day)
    {
        var batch = journal.Open((BatchOpened)day[0]);
        foreach (var happened in day[1..])
            journal.Append(batch, happened);
        return batch;
    }

    private static (int, RunStatus) Head(Journal journal) => (journal.List()[0].Events, journal.List()[0].Status);

    private Journal Open() => Journal.Open(_disk, Days.StatusOf);
}
