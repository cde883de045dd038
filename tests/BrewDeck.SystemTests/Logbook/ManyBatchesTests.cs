using System.Diagnostics;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Crash;

namespace BrewDeck.SystemTests.Logbook;

public sealed class ManyBatchesTests
{
    /// <summary>The list reads headers alone; a second is some twenty times what it took when it was measured.</summary>
    [Fact]
    public void TwoThousandBatchesAreListedWithoutReadingOne()
    {
        const int Batches = 2_000;
        var disk = new CuttableDisk();
        using (var journal = Journal.Open(disk, Days.StatusOf))
        {
            for (var i = 0; i < Batches; i++)
                journal.Append(journal.Open(Days.Opened(steps: 1)), Days.Reading(i, 66));
        }

        var reads = disk.ReadsOfAll;
        var start = Stopwatch.GetTimestamp();
        using var again = Journal.Open(disk, Days.StatusOf);
        var heads = again.List();
        var took = Stopwatch.GetElapsedTime(start);
        TestContext.Current.TestOutputHelper?.WriteLine($"{Batches} batches opened and listed in {took.TotalMilliseconds:F0} ms");
        Assert.Equal(Enumerable.Range(1, Batches).Reverse(), heads.Select(h => h.Number));
        Assert.All(heads, h => Assert.Equal(2, h.Events));
        Assert.Equal(reads, disk.ReadsOfAll);
        Assert.InRange(took.TotalSeconds, 0, 1);
    }
}
