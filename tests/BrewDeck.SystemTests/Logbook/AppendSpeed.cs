using System.Diagnostics;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;

namespace BrewDeck.SystemTests.Logbook;

/// <summary>
/// What it costs to have an event on disk, by each way that it could be done; run on demand with <c>-explicit only</c>.
/// </summary>
public sealed class AppendSpeed
{
    private const int Rounds = 5;
    private const int Events = 200;

    [Fact(Explicit = true)]
    public void Measure()
    {
        using var folder = new TempFolder();
        var ways = new (string Name, Func<LogbookDisk, Action<int>> Way)[]
        {
            ("raw append and fsync", Raw),
            ("tape, database behind it", Journalled),
            ("database, two-phase, each event", DatabaseEach),
            ("tape and database, each event", Both),
        };
        var times = ways.Select(_ => new List<double>()).ToArray();
        for (var round = 0; round < Rounds; round++)
        {
            for (var way = 0; way < ways.Length; way++)
                times[way].AddRange(Time(ways[way].Way(new FolderDisk(folder.At($"{round}-{way}")))));
        }

        foreach (var (way, list) in ways.Zip(times))
        {
            list.Sort();
            TestContext.Current.TestOutputHelper!.WriteLine(
                $"{way.Name,-34} p50 {list[list.Count / 2],6:F3} ms  p99 {list[list.Count * 99 / 100],6:F3} ms  "
                + $"{1000 * list.Count / list.Sum(),6:F0} events/s  {list[list.Count / 2] / times[0][times[0].Count / 2],5:F2} x raw");
        }
    }

    private static IEnumerable<double> Time(Action<int> append)
    {
        for (var i = 0; i < Events; i++)
        {
            var start = Stopwatch.GetTimestamp();
            append(i);
            yield return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }
    }

    private static Action<int> Raw(LogbookDisk disk)
    {
        var file = disk.Open("raw");
        return i =>
        {
            file.Write(TapeLine.After(null, EventCodec.Encode(Event(i))).ToUtf8());
            file.Flush();
        };
    }

    private static Action<int> Journalled(LogbookDisk disk)
    {
        var journal = Journal.Open(disk, Days.StatusOf);
        var batch = journal.Open(Days.Opened(steps: 45));
        return i => journal.Append(batch, Event(i));
    }

    private static Action<int> DatabaseEach(LogbookDisk disk)
    {
        var database = BatchDatabase.Open(disk);
        TapeLine? last = null;
        return i => database.Follow(Header(last = TapeLine.After(last, EventCodec.Encode(Event(i)))), [last]);
    }

    private static Action<int> Both(LogbookDisk disk)
    {
        var database = DatabaseEach(disk);
        var tape = Tape.Open(disk, 1, TapeScan.Of([]));
        return i =>
        {
            tape.Append(EventCodec.Encode(Event(i)));
            database(i);
        };
    }

    private static BatchHeader Header(TapeLine last) => BatchHeader.Of(1, Days.Opened(), RunStatus.Running, last, 0);

    /// <summary>As on a brew day with a probe: mostly readings, now and then a step.</summary>
    private static RunEvent Event(int i) =>
        i % 25 == 24 ? new StepStarted(i, $"mash.rest-{i}") : Days.Reading(i, 66.125);
}
