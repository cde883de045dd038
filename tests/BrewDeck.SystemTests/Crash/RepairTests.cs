using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Crash;

/// <summary>Logbooks damaged at random; a repair brings every acknowledged event back from the copy that was not hit.</summary>
public sealed class RepairTests
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(2);
    private static readonly RunEvent[] Day = [.. Days.Events(steps: 4)];

    [Fact]
    public void DamagedLogbooksComeBackWhole() => Damage(seeds: 60);

    /// <summary>The long run, on demand with <c>-explicit only</c>.</summary>
    [Fact(Explicit = true)]
    public void FiveHundredDamagedLogbooksComeBackWhole() => Damage(seeds: 500);

    [Fact]
    public void ASoundLogbookIsLeftAsItIs()
    {
        var (closed, _) = Logbooks();
        var before = closed.Files();
        Assert.Empty(LogRepair.Run(closed, Days.StatusOf, Limit));
        Assert.Equal(before, closed.Files());
    }

    [Fact]
    public void WhatBothCopiesLostIsSaid()
    {
        var (closed, _) = Logbooks();
        closed.Delete(BatchDatabase.DataName);
        var tape = closed.ReadAll(Tape.NameOf(2));
        var lines = TapeScan.Of(tape).Lines;
        tape[lines.Take(5).Sum(l => l.ToUtf8().Length) + 80] ^= 1;
        closed.Overwrite(Tape.NameOf(2), tape);
        var said = LogRepair.Run(closed, Days.StatusOf, Limit);
        Assert.Contains(said, s => s.Contains("5 entries are whole again; ", StringComparison.Ordinal));
        using var journal = Journal.Open(closed, Days.StatusOf);
        Assert.Equal([5, Day.Length], journal.List().Select(h => h.Events));
        Assert.Equal(tape, closed.ReadAll(Tape.NameOf(2) + ".damaged"));
    }

    private static void Damage(int seeds)
    {
        var (closed, crashed) = Logbooks();
        for (var seed = 0; seed < seeds; seed++)
        {
            var random = new Random(seed);
            var disk = (random.Next(2) == 0 ? closed : crashed).Copy();
            // in a crashed logbook the tape is ahead of the database: there its second copy has not been made yet
            var onTape = disk.Files()[BatchDatabase.LogName] == 0 && random.Next(2) == 0;
            var what = onTape ? DamageFile(disk, Tape.NameOf(1 + random.Next(2)), random) : DamageDatabase(disk, random);
            var said = LogRepair.Run(disk, Days.StatusOf, Limit);
            using (var journal = Journal.Open(disk, Days.StatusOf))
            {
                foreach (var batch in (int[])[1, 2])
                    Assert.True(Same.Difference(Day, journal.Read(batch).ToArray()) is null, $"seed {seed}: {what}; {string.Join("; ", said)}");
            }

            Assert.Empty(LogVerify.Of(disk, Limit).Faults);
        }
    }

    private static string DamageDatabase(CuttableDisk disk, Random random)
    {
        var both = DamageFile(disk, BatchDatabase.DataName, random);
        return random.Next(3) == 0 ? both + " and " + DamageFile(disk, BatchDatabase.LogName, random) : both;
    }

    private static string DamageFile(CuttableDisk disk, string name, Random random)
    {
        var content = disk.ReadAll(name);
        var at = random.Next(Math.Max(1, content.Length));
        switch (random.Next(4))
        {
            case 0:
                disk.Overwrite(name, content[..Math.Min(at, content.Length)]);
                return $"{name} cut at {at}";
            case 1 when content.Length > 0:
                content[at] ^= (byte)(1 << random.Next(8));
                disk.Overwrite(name, content);
                return $"{name} bit flipped at {at}";
            case 2:
                var page = Math.Min(at / 8192 * 8192, content.Length);
                content.AsSpan(page, Math.Min(8192, content.Length - page)).Clear();
                disk.Overwrite(name, content);
                return $"{name} page zeroed at {page}";
            default:
                disk.Delete(name);
                return $"{name} deleted";
        }
    }

    /// <returns>The same two days, once closed in order and once left by a crash with the last entries on the tape alone.</returns>
    private static (CuttableDisk Closed, CuttableDisk Crashed) Logbooks()
    {
        var disk = new CuttableDisk();
        using var journal = Journal.Open(disk, Days.StatusOf);
        for (var batch = 1; batch <= 2; batch++)
        {
            journal.Open((BatchOpened)Day[0]);
            foreach (var happened in Day[1..])
                journal.Append(batch, happened);
        }

        var crashed = disk.Copy();
        journal.Dispose();
        return (disk, crashed);
    }
}
