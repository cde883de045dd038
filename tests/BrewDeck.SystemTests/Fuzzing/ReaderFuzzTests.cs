using System.Diagnostics;
using System.Text;
using BrewDeck.Deck;

namespace BrewDeck.SystemTests.Fuzzing;

/// <summary>Every reader on mangled files: read or refused in one plain line, within a second and 200 MB.</summary>
public sealed class ReaderFuzzTests(ITestOutputHelper said)
{
    private const long MostBytes = 200_000_000;

    /// <summary>Of the processor, which a busy machine does not stretch; a reader that waits for something is caught by the clock.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan LongestByTheClock = TimeSpan.FromMinutes(1);

    [Fact]
    public void Two_thousand_cases() => Fuzz(cases: 2_000, seed: 7);

    /// <summary>The long run, on demand with <c>-explicit only</c>.</summary>
    [Fact(Explicit = true)]
    public void A_million_cases() => Fuzz(cases: 1_000_000, seed: 1);

    private void Fuzz(int cases, int seed)
    {
        var readers = FuzzedReader.All();
        foreach (var reader in readers)
            Assert.All(reader.Good, good => reader.Read(Encoding.UTF8.GetBytes(good)));
        var each = new (int Read, int Refused, TimeSpan Longest, long MostBytes)[readers.Count];
        var found = new SortedDictionary<string, string>(StringComparer.Ordinal);
        for (var i = 0; i < cases; i++)
        {
            var (reader, random) = (readers[i % readers.Count], new Random(unchecked((seed * 1_000_003) + i)));
            var bytes = Mangling.Bytes(Mangling.Of(reader.Good[random.Next(reader.Good.Length)], random), random);
            var (refused, took, allocated) = Timed(reader, bytes, i, found);
            ref var sum = ref each[i % readers.Count];
            sum = (sum.Read + (refused ? 0 : 1), sum.Refused + (refused ? 1 : 0), took > sum.Longest ? took : sum.Longest, Math.Max(sum.MostBytes, allocated));
        }

        for (var i = 0; i < each.Length; i++)
            said.WriteLine($"{readers[i].Name}: {each[i].Read} read, {each[i].Refused} refused, longest {each[i].Longest.TotalMilliseconds:F0} ms of the processor, most {each[i].MostBytes / 1e6:F1} MB");
        Assert.True(found.Count == 0, string.Join("\n", found));
        using var self = Process.GetCurrentProcess();
        said.WriteLine($"{cases} cases; the process with its tests {self.PeakWorkingSet64 / 1e6:F0} MB at most");
    }

    /// <summary>A case that seems slow gets two more tries: the collector or the compiler may have been busy in this process.</summary>
    private static (bool Refused, TimeSpan Took, long Allocated) Timed(FuzzedReader reader, byte[] bytes, int number, IDictionary<string, string> found)
    {
        for (var tries = 1; ; tries++)
        {
            var (before, busy, watch) = (GC.GetAllocatedBytesForCurrentThread(), Environment.CpuUsage.TotalTime, Stopwatch.StartNew());
            var refused = IsRefused(reader, bytes, number, found);
            var (took, allocated) = (Environment.CpuUsage.TotalTime - busy, GC.GetAllocatedBytesForCurrentThread() - before);
            Assert.True(watch.Elapsed < LongestByTheClock, $"{reader.Name}, case {number}: {watch.Elapsed} by the clock");
            Assert.True(allocated < MostBytes, $"{reader.Name}, case {number}: {allocated} bytes");
            if (took < Longest)
                return (refused, took, allocated);
            Assert.True(tries < 3, $"{reader.Name}, case {number}: {took}");
        }
    }

    private static bool IsRefused(FuzzedReader reader, byte[] bytes, int number, IDictionary<string, string> found)
    {
        try
        {
            reader.Read(bytes);
            return false;
        }
        catch (Exception e) when (e is ProfileException or LogbookException)
        {
            if (e.Message.Length >= 1_000 || e.Message.Any(char.IsControl))
                found.TryAdd($"{reader.Name}: a message that is no plain line", $"case {number}: {e.Message}");
            return true;
        }
        catch (Exception e) when (e is not Xunit.Sdk.IAssertionException)
        {
            // one of a kind is enough, and the run goes on to find others
            found.TryAdd($"{reader.Name}: {e.GetType().Name} {e.StackTrace?.Split('\n')[0]}", $"case {number}: {e}");
            return true;
        }
    }
}
