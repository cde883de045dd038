using System.Collections.Concurrent;
using System.Diagnostics;
using System.Runtime.Versioning;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Probes;
using BrewDeck.Probes;
using BrewDeck.SystemTests.Logbook;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>The real reader on real files and FIFOs.</summary>
[SupportedOSPlatform("linux")]
public sealed class ProbeReaderTests : IDisposable
{
    private const string Good = "{\"vessel\":\"tun\",\"temperature_c\":66.4}\n";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly TempFolder _folder = new();
    private readonly BlockingCollection<Input> _heard = [];
    private readonly ProbeMail _mail = new();

    public ProbeReaderTests() => _mail.Arrived += () => _mail.Deliver(_heard.Add);

    public static bool IsLinux => OperatingSystem.IsLinux();

    private string ProbePath => Path.Combine(_folder.Path, "probe");

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void A_fifo_is_read_and_its_writers_may_come_and_go()
    {
        Process.Start("mkfifo", ProbePath).WaitForExit();
        using var reader = Start();

        File.AppendAllText(ProbePath, Good);
        Assert.Equal([Tun(66.4)], Next<Input.Offered>().Values);
        File.AppendAllText(ProbePath, "\r\n" + Good.Replace("66.4", "66.5", StringComparison.Ordinal));
        Assert.Equal([Tun(66.5)], Next<Input.Offered>().Values);
        Assert.Empty(_heard);
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void An_end_without_a_writer_does_not_wait()
    {
        Process.Start("mkfifo", ProbePath).WaitForExit();
        Start().Dispose();
        Assert.Empty(_heard);
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void A_file_is_read_from_where_it_ended_and_again_when_it_begins_anew()
    {
        File.WriteAllText(ProbePath, Good + "{\"vessel\":\"tun\",\"temp");
        var cutter = new LineCutter();
        using (var source = ProbeSource.Open(ProbePath)!)
        {
            Assert.True(source.SkipToEnd());
            Assert.Equal(new FileInfo(ProbePath).Length, source.Position);
            cutter.PassOver();
        }
        cutter.Add("erature_c\":60}\n"u8, default);
        Assert.Null(cutter.Take());
        File.WriteAllText(ProbePath, "");
        using var reader = Start();
        File.AppendAllText(ProbePath, "{}\n" + Good + Good);
        Assert.Equal([Tun(66.4)], Until<Input.Offered>(o => o.Unread == 1).Values);

        File.WriteAllText(ProbePath, Good.Replace("66.4", "7", StringComparison.Ordinal));

        Assert.Equal([Tun(7)], Next<Input.Offered>().Values);
    }

    [Fact(Skip = "needs Linux", SkipUnless = nameof(IsLinux))]
    public void Unplugging_is_told_once_and_the_probe_is_found_again()
    {
        using var reader = Start();
        Next<Input.ProbeGone>();
        Process.Start("mkfifo", ProbePath).WaitForExit();
        File.AppendAllText(ProbePath, Good);
        Assert.Equal([Tun(66.4)], Next<Input.Offered>().Values);

        File.Delete(ProbePath);

        Next<Input.ProbeGone>();
        Assert.Empty(_heard);
    }

    [Fact]
    public void Hostile_bytes_are_counted_and_the_next_line_is_read()
    {
        var cutter = new LineCutter();
        var random = new Random(1);
        for (var i = 0; i < 200; i++)
        {
            var noise = new byte[random.Next(1, 20_000)];
            random.NextBytes(noise);
            cutter.Add(noise, default);
            cutter.Add("\n"u8, default);
            var unread = cutter.Unread;
            cutter.Add(System.Text.Encoding.UTF8.GetBytes(Good), default);
            Assert.Equal(unread, cutter.Unread);
            Assert.Equal([Tun(66.4)], Assert.IsType<Input.Offered>(cutter.Take()).Values);
        }
        Assert.True(cutter.Unread > 200);
    }

    [Theory]
    [InlineData(LineCutter.LongestLine, 0)]
    [InlineData(LineCutter.LongestLine + 1, 1)]
    [InlineData(10 * LineCutter.LongestLine, 1)]
    public void A_line_has_a_bound(int length, int unread)
    {
        var cutter = new LineCutter();
        cutter.Add(System.Text.Encoding.UTF8.GetBytes(Good.TrimEnd().PadRight(length) + "\n"), default);

        var said = Assert.IsType<Input.Offered>(cutter.Take());

        Assert.Equal((unread, 1 - unread), (said.Unread, said.Values.Length));
        Assert.Equal(unread == 0 ? null : "it is longer than 4096 bytes", said.Why);
        Assert.Null(cutter.Take());
    }

    [Fact]
    public void A_flood_of_names_fills_no_memory()
    {
        var cutter = new LineCutter();
        for (var i = 0; i < 1000; i++)
            cutter.Add(System.Text.Encoding.UTF8.GetBytes(Good.Replace("tun", $"v{i}", StringComparison.Ordinal)), default);

        Assert.Equal(64, Assert.IsType<Input.Offered>(cutter.Take()).Values.Length);
    }

    public void Dispose()
    {
        _heard.Dispose();
        _folder.Dispose();
    }

    private static ProbeValue Tun(double celsius) => new(ReadingKind.Temperature, "tun", celsius, TimeSpan.Zero);

    private ProbeReader Start() => new(ProbePath, TimeProvider.System, _mail);

    private T Next<T>() where T : Input => Until<T>(_ => true, skip: false);

    /// <summary>A file may be seen while it is being written, so what comes may come in two.</summary>
    private T Until<T>(Func<T, bool> wanted, bool skip = true) where T : Input
    {
        while (true)
        {
            Assert.True(_heard.TryTake(out var heard, Patience), "nothing was heard");
            if (heard is T found && wanted(found))
                return found;
            Assert.True(skip, $"{heard}");
        }
    }
}
