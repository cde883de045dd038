using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Crash;

/// <summary>The power is cut after each single write and flush of a short day with a closing and a reopening in it.</summary>
public sealed class PowerCutTests
{
    private static readonly RunEvent[] Day = [.. Days.Events(steps: 3)];

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    [InlineData(2, 2)]
    [InlineData(2, 3)]
    public void WhatWasAcknowledgedIsThere(int cut, int seed) => CutEverywhere((Cut)cut, seed);

    /// <summary>The long run, on demand with <c>-explicit only</c>.</summary>
    [Fact(Explicit = true)]
    public void WhatWasAcknowledgedIsThereInSixtyWaysToTear()
    {
        for (var seed = 1_000; seed < 61_000; seed += 1_000)
            CutEverywhere(Cut.Tears, seed);
    }

    [Fact]
    public void ADayMakesEnoughActsToCutAt()
    {
        var (disk, acknowledged) = BrewADay();
        Assert.Equal(Day.Length, acknowledged.Count);
        Assert.InRange(disk.Acts, 100, 2_000);
    }

    private static void CutEverywhere(Cut cut, int seed)
    {
        var (disk, acknowledged) = BrewADay();
        for (var at = 0; at <= disk.Acts; at++)
        {
            var sure = acknowledged.Count(a => a <= at);
            var found = disk.After(at, cut, seed + at);
            try
            {
                AssertOpens(found, sure);
            }
            catch (Exception e)
            {
                Assert.Fail($"{cut}, seed {seed}: power cut before act {at} of {disk.Acts}, {sure} acknowledged: {e}");
            }
        }
    }

    /// <returns>The disk, and for each event the number of acts after which it was acknowledged.</returns>
    private static (CuttableDisk Disk, List<int> Acknowledged) BrewADay()
    {
        var disk = new CuttableDisk();
        var acknowledged = new List<int>();
        using (var morning = Journal.Open(disk, Days.StatusOf))
        {
            morning.Open((BatchOpened)Day[0]);
            acknowledged.Add(disk.Acts);
            Append(morning, Day[1..8]);
        }

        using var noon = Journal.Open(disk, Days.StatusOf);
        Append(noon, Day[8..]);
        return (disk, acknowledged);

        void Append(Journal journal, IEnumerable<RunEvent> events)
        {
            foreach (var happened in events)
            {
                journal.Append(1, happened);
                acknowledged.Add(disk.Acts);
            }
        }
    }

    private static void AssertOpens(CuttableDisk found, int sure)
    {
        using (var journal = Journal.Open(found, Days.StatusOf))
        {
            var heads = journal.List();
            Assert.True(heads.Count == 1 || (heads.Count == 0 && sure == 0), "the batch is missing from the list");
            var events = heads.Count == 0 ? [] : journal.Read(1);
            Assert.InRange(events.Count, sure, Math.Min(sure + 1, Day.Length));
            Assert.Equal(Day.Take(events.Count).Select(EventCodec.Encode), events.Select(EventCodec.Encode));
            if (heads.Count == 0)
                return;
            Assert.Equal((events.Count, Days.StatusOf(events)), (heads[0].Events, heads[0].Status));
            journal.Append(1, new NoteWritten(1, "goes on"));
        }

        using var again = Journal.Open(found, Days.StatusOf);
        Assert.Equal("goes on", Assert.IsType<NoteWritten>(again.Read(1)[^1]).Text);
    }
}
