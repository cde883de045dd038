using BrewDeck.Logbook;
using BrewDeck.SystemTests.Crash;

namespace BrewDeck.SystemTests.Logbook;

public sealed class ManyBatchesTests
{
    /// <summary>The list reads headers alone. What it takes stands in the benchmarks.</summary>
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
        using var again = Journal.Open(disk, Days.StatusOf);
        var heads = again.List();
        Assert.Equal(Enumerable.Range(1, Batches).Reverse(), heads.Select(h => h.Number));
        Assert.All(heads, h => Assert.Equal(2, h.Events));
        Assert.Equal(reads, disk.ReadsOfAll);
    }
}
