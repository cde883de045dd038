using System.Diagnostics;
using System.Globalization;
using BrewDeck.Commands;
using BrewDeck.Core.Running;
using BrewDeck.Logbook;
using BrewDeck.Profiles;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Crash;

/// <summary>
/// Rehearsed days of the real session and journal in a process of its own that is killed (SIGKILL) again and again, in its opening, between
/// events and in the middle of them. What it had acknowledged is there, and a new start shows the screen that was shown.
/// BREWDECK_TEST_HOST may name a native build of BrewDeck.SystemTests.Host.
/// </summary>
public sealed class RehearsedKillTests(ITestOutputHelper said)
{
    private const int MostLines = 40;

    private const int MostTimes = 5;

    /// <summary>Some milliseconds, as long as a few events take; and some hundred, as long as a start takes.</summary>
    private const int MostSpins = 60_000;
    private const int MostSpinsOfAStart = 3_000_000;

    private static readonly string Host = Environment.GetEnvironmentVariable("BREWDECK_TEST_HOST") is { Length: > 0 } native
        ? native
        : Path.Combine(AppContext.BaseDirectory, "BrewDeck.SystemTests.Host.dll");

    [Fact]
    public void Five_kills_lose_nothing() => Kill(rounds: 5, seed: 11);

    /// <summary>The long run, on demand with <c>-explicit only</c>.</summary>
    [Fact(Explicit = true)]
    public void A_thousand_kills_lose_nothing() => Kill(rounds: 1_000, seed: 1);

    private void Kill(int rounds, int seed)
    {
        using var folder = new TempFolder();
        var profiles = ProfileFolder.BesideProgram(folder.Path);
        var random = new Random(seed);
        var acknowledged = new Dictionary<int, List<string>>();
        var (screens, unheard) = (0, 0);
        // a kill falls between a screen and the next event in one of three: where none of a few did, on a busy machine, some more are made
        for (var round = 0; round < rounds || (screens == 0 && round < MostTimes * rounds); round++)
        {
            var lines = LinesUntilKilled(folder.Path, random.Next(MostLines), random);
            var shown = lines.LastOrDefault(l => l[0] == "screen");
            foreach (var line in lines.Where(l => l[0] == "event"))
                Add(acknowledged, line);
            using var journal = Journal.Open(new FolderDisk(folder.Path), Workplace.StatusOf);
            unheard += AssertNothingLost(journal, acknowledged, round);
            if (shown is not null && AssertSameScreen(journal, profiles, shown, round))
                screens++;
        }

        Assert.Empty(LogVerify.Of(new FolderDisk(folder.Path), TimeSpan.FromMinutes(5)).Faults);
        Assert.True(screens > 0, "no screen was compared");
        said.WriteLine($"{rounds} kills over {acknowledged.Count} rehearsed days, {acknowledged.Values.Sum(b => b.Count)} events: 0 lost; "
            + $"{screens} screens compared, all the same; {unheard} events on disk that the kill kept from being said");
    }

    private static List<string[]> LinesUntilKilled(string folder, int count, Random random)
    {
        using var child = Start(folder);
        var lines = new List<string[]>();
        for (var i = 0; i < count; i++)
            lines.Add(Whole(child.StandardOutput.ReadLine()) ?? throw new InvalidOperationException($"the child ended by itself: exit {Exit(child)}"));
        Thread.SpinWait(random.Next(count == 0 ? MostSpinsOfAStart : MostSpins));
        child.Kill();
        while (child.StandardOutput.ReadLine() is { } line)
        {
            if (Whole(line) is { } whole)
                lines.Add(whole);
        }

        child.WaitForExit();
        return lines;
    }

    private static int Exit(Process child)
    {
        child.WaitForExit();
        return child.ExitCode;
    }

    /// <returns>Null for a line that the kill cut short: each ends in sixteen digits of a hash.</returns>
    private static string[]? Whole(string? line) => line?.Split(' ') is [.., { Length: 16 }] words ? words : null;

    private static Process Start(string folder)
    {
        var start = new ProcessStartInfo(Host.EndsWith(".dll", StringComparison.Ordinal) ? "dotnet" : Host) { RedirectStandardOutput = true };
        if (start.FileName == "dotnet")
            start.ArgumentList.Add(Host);
        start.ArgumentList.Add("days");
        start.ArgumentList.Add(folder);
        return Process.Start(start)!;
    }

    private static void Add(Dictionary<int, List<string>> acknowledged, string[] line)
    {
        var (batch, index) = (Number(line[1]), Number(line[2]));
        if (!acknowledged.TryGetValue(batch, out var hashes))
            acknowledged[batch] = hashes = [];
        Assert.Equal(hashes.Count, index);
        hashes.Add(line[3]);
    }

    /// <returns>Events that were on disk and not said yet; they count from now on.</returns>
    private static int AssertNothingLost(Journal journal, Dictionary<int, List<string>> acknowledged, int round)
    {
        var unheard = 0;
        foreach (var head in journal.List())
        {
            // closed days are read once more at the end of all, by the chain of their tapes
            if (acknowledged.TryGetValue(head.Number, out var sure) && sure.Count == head.Events && head.Number < journal.List().Count - 1)
                continue;
            string[] found = [.. journal.Read(head.Number).Select(SessionScreens.HashOf)];
            sure ??= [];
            Assert.True(found.Length >= sure.Count && found.AsSpan(0, sure.Count).SequenceEqual(sure.ToArray()), $"round {round}: batch {head.Number}");
            Assert.InRange(found.Length - sure.Count, 0, 1);
            unheard += found.Length - sure.Count;
            acknowledged[head.Number] = [.. found];
        }

        Assert.Equal(acknowledged.Count, journal.List().Count);
        return unheard;
    }

    /// <returns>False: more happened after that screen.</returns>
    private static bool AssertSameScreen(Journal journal, ProfileFolder profiles, string[] shown, int round)
    {
        var (batch, events) = (Number(shown[1]), Number(shown[2]));
        var head = journal.List()[0];
        if (head.Number != batch || head.Events != events || head.Status is RunStatus.Complete or RunStatus.Aborted)
            return false;
        var now = DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(shown[3], CultureInfo.InvariantCulture));
        var screen = SessionScreens.At(SessionScreens.New(journal, profiles, now, seed: batch), now);
        Assert.True(SessionScreens.HashOf(screen) == shown[4], $"round {round}: batch {batch} after {events} events shows another screen:\n{screen}");
        return true;
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
