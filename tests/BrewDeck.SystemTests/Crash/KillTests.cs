using System.Globalization;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Crash;

public sealed class KillTests
{
    /// <summary>Each round kills a child after some acknowledged events, whatever it is doing then, on the same logbook.</summary>
    [Fact]
    public void WhatAKilledProcessAcknowledgedIsThere() => Kill([0, 1, 2, 3, 10, 57, 58, 203]);

    /// <summary>The long run, on demand with <c>-explicit only</c>.</summary>
    [Fact(Explicit = true)]
    public void WhatAThousandKilledProcessesAcknowledgedIsThere()
    {
        var random = new Random(1);
        Kill(Enumerable.Range(0, 1_000).Select(_ => random.Next(300)));
    }

    private static void Kill(IEnumerable<int> killAfter)
    {
        using var folder = new TempFolder();
        foreach (var count in killAfter)
        {
            var (batch, seq) = KillAfter(folder.Path, count);
            using var journal = Journal.Open(new FolderDisk(folder.Path), Days.StatusOf);
            var events = journal.Read(batch);
            Assert.InRange(events.Count, seq + 1, seq + 2);
            Assert.Equal(events.Count, journal.List()[0].Events);
            Assert.Equal(Enumerable.Range(0, events.Count - 1).Select(i => (long)i), events.Skip(1).Select(e => e.AtMs));
        }
    }

    private static (int Batch, int Seq) KillAfter(string folder, int count)
    {
        using var child = AppendingChild.Start(folder);
        var last = "";
        for (var i = 0; i <= count; i++)
            last = child.StandardOutput.ReadLine() ?? throw new InvalidOperationException("the child ended by itself");
        child.Kill();
        while (child.StandardOutput.ReadLine() is { } line)
            last = line.Contains(' ', StringComparison.Ordinal) ? line : last;
        child.WaitForExit();
        var numbers = last.Split(' ');
        return (int.Parse(numbers[0], CultureInfo.InvariantCulture), int.Parse(numbers[1], CultureInfo.InvariantCulture));
    }
}
