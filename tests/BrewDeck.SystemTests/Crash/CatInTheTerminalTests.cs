using System.Collections.Concurrent;
using System.Diagnostics;
using BrewDeck.SystemTests.Logbook;
using BrewDeck.SystemTests.Terminal;

namespace BrewDeck.SystemTests.Crash;

/// <summary>
/// A cat on the keyboard of the real program, in a process and a pseudo-terminal of its own, while somebody pulls at the window: on the opening pages, on a
/// brew day, and on a rehearsal whose day writes events all the time. Then the program is ended in one of five ways. It does not fall over, the terminal is
/// as it was, and what stood on the tapes at any moment before still stands. BREWDECK_TEST_PROGRAM may name a native build of the program.
/// </summary>
public sealed class CatInTheTerminalTests(ITestOutputHelper said)
{
    private const int MostKeysAtOnce = 16;

    private static readonly TimeSpan BetweenPresses = TimeSpan.FromMilliseconds(300);

    private static readonly string[] Endings = ["TERM", "HUP", "KILL", "ctrl-c", "hang up"];

    private static readonly string[] Keys =
    [
        .. " \r\r   0123456789.,@+-*/?abcdefghijklmnopqrstuvwxyzASX".Select(c => c.ToString()),
        "\e", "\e[A", "\e[B", "\e[B", "\e[C", "\e[D", "\e[5~", "\e[6~", "\e[H", "\e[F", "\t", "\e[Z", "\u007f", "\e[3~", "\eOP", "\e[15~", "\e[25~", "\eOO", "\e[", "\u00e9", "\u001a", "\u0000",
        "\e[200~67.2\e[201~",
    ];

    private static readonly string Program = Environment.GetEnvironmentVariable("BREWDECK_TEST_PROGRAM") is { Length: > 0 } native
        ? $"'{native}'"
        : $"dotnet '{Path.Combine(AppContext.BaseDirectory, "brewdeck.dll")}'";

    public static bool IsLinux => OperatingSystem.IsLinux();

    [Theory(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    [InlineData(2)]
    [InlineData(3)]
    public void Some_cats(int seed) => Walk(seed, keys: 200);

    /// <summary>
    /// 100,000 keys and resizes, on demand with <c>-explicit only</c>; BREWDECK_CATS may name seeds to walk again. Not under nohup: a program that is
    /// started with SIGHUP ignored lives on after it, as it should.
    /// </summary>
    [Fact(Explicit = true)]
    public void Two_hundred_cats_in_the_terminal()
    {
        int[] seeds = Environment.GetEnvironmentVariable("BREWDECK_CATS") is { Length: > 0 } named
            ? [.. named.Split(',').Select(n => int.Parse(n, System.Globalization.CultureInfo.InvariantCulture))]
            : [.. Enumerable.Range(0, 200)];
        var walks = new ConcurrentBag<Tally>();
        var found = new ConcurrentBag<string>();
        Parallel.ForEach(seeds, new ParallelOptions { MaxDegreeOfParallelism = 2 }, seed =>
        {
            try
            {
                walks.Add(Walk(seed, keys: 500));
            }
            catch (Exception e) when (e is TimeoutException or IOException or FormatException or Xunit.Sdk.IAssertionException)
            {
                found.Add($"seed {seed}: {e.Message}");
            }
        });
        Assert.True(found.IsEmpty, string.Join("\n", found));
        said.WriteLine($"{walks.Sum(w => w.Keys)} keys, {walks.Sum(w => w.Resizes)} resizes, {walks.Sum(w => w.Starts)} starts of the program, {walks.Sum(w => w.Events)} events: none lost");
        foreach (var (ending, count) in walks.CountBy(w => w.Ending))
            said.WriteLine($"ended by {ending}: {count}");
    }

    private static Tally Walk(int seed, int keys)
    {
        var random = new Random(seed);
        using var folder = new TempFolder();
        var tapes = new SeenTapes(folder.Path);
        var ending = Endings[seed % Endings.Length];
        var (struck, resizes, starts) = (0, 0, 0);
        var terminal = Start(seed, folder.Path, ref starts);
        try
        {
            while (struck + resizes < keys)
            {
                for (var left = random.Next(1, MostKeysAtOnce); left > 0 && struck + resizes < keys && !terminal.HasExited; left--, struck++)
                    terminal.Type(Keys[random.Next(Keys.Length)]);
                if (terminal.DrawnAfresh(random.Next(2, 200), random.Next(2, 60)))
                    resizes++;
                else
                    Leave(ref terminal, seed, folder.Path, ref starts);
                tapes.Look();
            }

            End(terminal, ending, seed);
        }
        finally
        {
            terminal.Dispose();
        }

        tapes.Look();
        Assert.Empty(Directory.GetFiles(folder.Path, "crash-*"));
        Assert.Equal((seed, 0), (seed, Verified(folder.Path)));
        tapes.Look();
        return new(struck, resizes, starts, tapes.Events, ending);
    }

    /// <summary>The cat has found the way out; the program is started again.</summary>
    private static void Leave(ref PseudoTerminal terminal, int seed, string folder, ref int starts)
    {
        Assert.Equal((seed, 0), (seed, terminal.WaitForExit()));
        terminal.WaitUntilRestored();
        terminal.Dispose();
        terminal = Start(seed, folder, ref starts);
    }

    private static void End(PseudoTerminal terminal, string ending, int seed)
    {
        switch (ending)
        {
            case "hang up":
                terminal.HangUp();
                terminal.WaitForExit();
                return;
            case "ctrl-c":
                InterruptByKey(terminal);
                break;
            default:
                terminal.Signal(ending);
                break;
        }

        var code = terminal.WaitForExit();
        if (ending == "KILL")
            return;
        Assert.Equal((seed, 0), (seed, code));
        terminal.WaitUntilRestored();
    }

    /// <summary>What was typed last may be half an escape sequence, which takes the first one with it; then it is pressed again, as fast as a person would.</summary>
    private static void InterruptByKey(PseudoTerminal terminal)
    {
        for (var presses = 0; presses < 3; presses++)
        {
            terminal.Type("\u0003");
            if (terminal.EndsWithin(BetweenPresses))
                return;
        }
    }

    /// <summary>A third each: a fast rehearsal, the program as it starts, and a rehearsal on which something goes wrong.</summary>
    private static PseudoTerminal Start(int seed, string folder, ref int starts)
    {
        var how = (seed % 3) switch
        {
            0 => $"rehearse --speed 900 --seed {seed}",
            1 => "",
            _ => $"rehearse --speed 60 --seed {seed} --mishaps 2",
        };
        starts++;
        var terminal = new PseudoTerminal(80, 24, $"exec {Program} {how} --logbook '{folder}'");
        terminal.WaitUntil(() => terminal.Drawn > 0 || terminal.HasExited, "the first screen");
        return terminal;
    }

    private static int Verified(string folder)
    {
        using var verify = Process.Start(new ProcessStartInfo("sh", ["-c", $"exec {Program} log verify --logbook '{folder}'"]) { RedirectStandardOutput = true })!;
        verify.StandardOutput.ReadToEnd();
        verify.WaitForExit();
        return verify.ExitCode;
    }

    private readonly record struct Tally(int Keys, int Resizes, int Starts, int Events, string Ending);

    /// <summary>What stood on the tapes at the last look is still how they begin.</summary>
    private sealed class SeenTapes(string folder)
    {
        private Dictionary<string, byte[]> _seen = [];

        public int Events => _seen.Values.Sum(t => t.Count(b => b == '\n'));

        public void Look()
        {
            var now = Directory.GetFiles(folder, "batch-*.jsonl").ToDictionary(f => f, Whole);
            foreach (var (file, before) in _seen)
                Assert.True(now.TryGetValue(file, out var after) && after.AsSpan().StartsWith(before), $"{file} has lost what it held");
            _seen = now;
        }

        /// <summary>The lines that are whole; a last one may just be written.</summary>
        private static byte[] Whole(string file)
        {
            using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            var bytes = new byte[stream.Length];
            var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return bytes[..(bytes.AsSpan(0, count).LastIndexOf((byte)'\n') + 1)];
        }
    }
}
