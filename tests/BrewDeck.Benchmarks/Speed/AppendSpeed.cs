using System.Diagnostics;
using BrewDeck.Benchmarks.Logbooks;
using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using LiteDB;
using LiteDB.Engine;

namespace BrewDeck.Benchmarks.Speed;

/// <summary>
/// What it costs to have each event of a rehearsed day on disk, by each way that it could be done, in turn: <c>append FOLDER [ROUNDS]</c>. The first
/// way is the measure: the same bytes, one write and one fsync.
/// </summary>
internal static class AppendSpeed
{
    private static readonly (string Name, Func<LogbookDisk, BatchOpened, Action<RunEvent>> Way)[] Ways =
    [
        ("raw append and fsync", Raw),
        ("tape, database behind it", Journalled),
        ("database, two-phase, each event", (disk, opened) => DatabaseEach(disk, opened, BatchDatabase.Open(disk).Follow)),
        ("database as shipped, each event", DatabaseAsShipped),
        ("tape and database, each event", Both),
    ];

    public static int Run(string folder, int rounds)
    {
        var samples = Ways.Select(w => new Samples(w.Name)).ToArray();
        for (var round = 0; round <= rounds; round++)
        {
            var events = RehearsedDays.Day(round + 1);
            for (var way = 0; way < Ways.Length; way++)
            {
                // round 0 is what the compiler gets warm on
                var append = Ways[way].Way(new FolderDisk(Path.Combine(folder, $"{round}-{way}")), (BatchOpened)events[0]);
                Time(append, events.Skip(1), round == 0 ? new("") : samples[way]);
            }
        }

        foreach (var each in samples)
            each.Print();
        return 0;
    }

    private static void Time(Action<RunEvent> append, IEnumerable<RunEvent> events, Samples into)
    {
        foreach (var happened in events)
        {
            var start = Stopwatch.GetTimestamp();
            append(happened);
            into.Add(Stopwatch.GetElapsedTime(start));
        }
    }

    private static Action<RunEvent> Raw(LogbookDisk disk, BatchOpened opened)
    {
        var file = disk.Open("raw");
        return happened =>
        {
            file.Write(TapeLine.After(null, EventCodec.Encode(happened)).ToUtf8());
            file.Flush();
        };
    }

    private static Action<RunEvent> Journalled(LogbookDisk disk, BatchOpened opened)
    {
        var journal = Journal.Open(disk, Workplace.StatusOf);
        var batch = journal.Open(opened);
        return happened => journal.Append(batch, happened);
    }

    private static Action<RunEvent> DatabaseEach(LogbookDisk disk, BatchOpened opened, Action<BatchHeader, IEnumerable<TapeLine>> follow)
    {
        var last = TapeLine.After(null, EventCodec.Encode(opened));
        return happened =>
        {
            last = TapeLine.After(last, EventCodec.Encode(happened));
            follow(BatchHeader.Of(1, opened, RunStatus.Running, last, 0), [last]);
        };
    }

    /// <summary>As LiteDB comes: it writes a commit and does not wait for the disk, so a power cut may lose it or tear the file.</summary>
    private static Action<RunEvent> DatabaseAsShipped(LogbookDisk disk, BatchOpened opened)
    {
        var engine = new LiteDatabase(new LiteEngine(new EngineSettings { Filename = Path.Combine(disk.Path, "shipped.db"), Collation = new Collation("/Ordinal") }));
        var events = engine.GetCollection("events", BsonAutoId.Int64);
        return DatabaseEach(disk, opened, (header, lines) =>
        {
            foreach (var line in lines)
                events.Insert(new BsonDocument { ["_id"] = (long)line.Seq, ["event"] = System.Text.Encoding.ASCII.GetString(line.Body), ["hash"] = line.Hash });
        });
    }

    private static Action<RunEvent> Both(LogbookDisk disk, BatchOpened opened)
    {
        var database = DatabaseEach(disk, opened, BatchDatabase.Open(disk).Follow);
        var tape = Tape.Open(disk, 1, TapeScan.Of([]));
        return happened =>
        {
            tape.Append(EventCodec.Encode(happened));
            database(happened);
        };
    }
}
