using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>
/// A pseudo-terminal with a program on it. The program is started through <c>setsid</c>, which gives it the terminal as its
/// own: a fork within a managed process is asking for trouble. Linux only.
/// </summary>
internal sealed partial class PseudoTerminal : IDisposable
{
    private const int ReadWrite = 2;
    private const int NoControllingTerminal = 0x100;
    private const int CloseOnExec = 0x80000;
    private const nuint SetWindowSize = 0x5414;
    private const short Readable = 1;

    /// <summary>The reader looks this often whether the line was cut.</summary>
    private const int LookUpMs = 20;

    // a paused virtual machine counts its pause as waiting: 30 s were once too few
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(120);

    private readonly object _gate = new();
    private readonly MiniTerminal _screen;
    private readonly Process _process;
    private readonly byte[] _modesFound;
    private readonly StringBuilder _output = new();
    private readonly Thread _reader;
    private FormatException? _unknown;
    private volatile bool _hungUp;
    private int _master;

    /// <param name="columns">Of the terminal.</param>
    /// <param name="rows">Of the terminal.</param>
    /// <param name="shell">Run by <c>sh</c> as the leader of the session.</param>
    /// <param name="environment">Added to a plain one with 24-bit colours.</param>
    public PseudoTerminal(int columns, int rows, string shell, params (string Name, string Value)[] environment)
    {
        _screen = new MiniTerminal(columns, rows);
        _master = OpenMaster(ReadWrite | NoControllingTerminal | CloseOnExec);
        if (_master < 0 || Grant(_master) != 0 || Unlock(_master) != 0) throw new IOException("no pseudo-terminal");
        SetSize(columns, rows);
        _modesFound = LineModes();
        _process = Process.Start(Leader(SlaveName(), shell, environment))!;
        _reader = new Thread(ReadOutput) { IsBackground = true };
        _reader.Start();
    }

    public int ProcessId => _process.Id;

    public bool HasExited => _process.HasExited;

    /// <summary>All that was written, as it came.</summary>
    public string Output
    {
        get
        {
            lock (_gate) return _output.ToString();
        }
    }

    public string Screen
    {
        get
        {
            lock (_gate) return _screen.Text();
        }
    }

    public int Bells
    {
        get
        {
            lock (_gate) return _screen.Bells;
        }
    }

    /// <summary>How often the whole screen was drawn; taking the terminal over wipes it once before.</summary>
    public int Drawn
    {
        get
        {
            lock (_gate) return Math.Max(0, _screen.Wipes - 1);
        }
    }

    /// <summary>Screen modes and line discipline are as they were before the program.</summary>
    private bool IsRestored
    {
        get
        {
            lock (_gate) return _screen.IsRestored && LineModes().AsSpan().SequenceEqual(_modesFound);
        }
    }

    public void Type(string keys) => TypeBytes(Encoding.UTF8.GetBytes(keys));

    public void TypeBytes(params byte[] bytes)
    {
        if (Write(_master, bytes, (nuint)bytes.Length) != bytes.Length) throw new IOException("the terminal takes no keys");
    }

    public void Resize(int columns, int rows)
    {
        lock (_gate) _screen.Resize(columns, rows);
        SetSize(columns, rows);
    }

    /// <summary>Pulls the window to that size, or one column wider if it has it already, and waits until the whole screen has been drawn again.</summary>
    /// <returns>False: the program has ended meanwhile.</returns>
    public bool DrawnAfresh(int columns, int rows)
    {
        var before = Drawn;
        var (height, width) = (_screen.Cells.GetLength(0), _screen.Cells.GetLength(1));
        Resize((columns, rows) == (width, height) ? columns + 1 : columns, rows);
        WaitUntil(() => Drawn > before || HasExited, $"the screen at {columns}x{rows}");
        return !HasExited;
    }

    public void Signal(string name)
    {
        using var kill = Process.Start("kill", [$"-{name}", ProcessId.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
    }

    /// <summary>The line is cut. The reader is done first: its descriptor's number may be the next terminal's.</summary>
    public void HangUp()
    {
        _hungUp = true;
        _reader.Join();
        Close(_master);
        _master = -1;
    }

    public void WaitForText(string text) => WaitUntil(() => Screen.Contains(text, StringComparison.Ordinal), $"'{text}' on the screen");

    /// <summary>Waits for what the program does next; each piece of output is looked at as it comes.</summary>
    public void WaitUntil(Func<bool> seen, string what)
    {
        var clock = Stopwatch.StartNew();
        lock (_gate)
        {
            while (!seen())
            {
                if (_unknown is not null) throw new FormatException(_unknown.Message, _unknown);
                var left = Patience - clock.Elapsed;
                if (left <= TimeSpan.Zero) throw new TimeoutException($"waited for {what}; the screen says:\n{_screen.Text()}");
                Monitor.Wait(_gate, left < TimeSpan.FromMilliseconds(100) ? left : TimeSpan.FromMilliseconds(100));
            }
        }
    }

    /// <summary>The last of the output may be read a moment after the program has ended.</summary>
    public void WaitUntilRestored() => WaitUntil(() => IsRestored, "the terminal as it was");

    public bool EndsWithin(TimeSpan time) => _process.WaitForExit(time);

    /// <returns>The exit code.</returns>
    public int WaitForExit()
    {
        if (!_process.WaitForExit(Patience)) throw new TimeoutException($"the program does not end; the screen says:\n{Screen}");
        return _process.ExitCode;
    }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill(entireProcessTree: true);
        if (_master >= 0) HangUp();
        _process.Dispose();
    }

    private static ProcessStartInfo Leader(string slave, string shell, (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo("sh", ["-c", "exec setsid -c sh -c \"$2\" <\"$1\" >\"$1\" 2>\"$1\"", "sh", slave, shell]);
        (string, string)[] usual = [("TERM", "xterm-256color"), ("COLORTERM", "truecolor"), ("LC_ALL", "C.UTF-8"), ("NO_COLOR", "")];
        foreach (var (name, value) in usual.Concat(environment)) start.Environment[name] = value;
        start.Environment.Remove("DisableRealDriverIO");
        return start;
    }

    private void ReadOutput()
    {
        var decoder = Encoding.UTF8.GetDecoder();
        var (bytes, chars) = (new byte[65536], new char[65536 + 4]);
        var master = _master;
        while (true)
        {
            if (_hungUp) return;
            var item = new PollItem { Descriptor = master, Wanted = Readable };
            if (Poll(ref item, 1, LookUpMs) == 0) continue;
            var count = Read(master, bytes, (nuint)bytes.Length);
            if (count < 0 && Marshal.GetLastPInvokeError() == 4) continue;
            if (count <= 0) return;
            var text = new string(chars, 0, decoder.GetChars(bytes, 0, (int)count, chars, 0));
            lock (_gate)
            {
                _output.Append(text);
                Show(text);
                Monitor.PulseAll(_gate);
            }
        }
    }

    /// <summary>What no terminal would take is told to the test that waits, on its own thread.</summary>
    private void Show(string text)
    {
        try
        {
            _screen.Feed(text);
        }
        catch (FormatException unknown)
        {
            _unknown ??= unknown;
        }
    }

    private string SlaveName()
    {
        var name = new byte[128];
        return NameOf(_master, name, (nuint)name.Length) == 0
            ? Encoding.UTF8.GetString(name).TrimEnd('\0')
            : throw new IOException("a pseudo-terminal without a name");
    }

    private void SetSize(int columns, int rows)
    {
        ushort[] size = [(ushort)rows, (ushort)columns, 0, 0];
        if (WriteWindowSize(_master, SetWindowSize, size) != 0) throw new IOException("the size cannot be set");
    }

    private byte[] LineModes()
    {
        var modes = new byte[256];
        return GetAttributes(_master, modes) == 0 ? modes : throw new IOException("no line modes");
    }

    [LibraryImport("libc", EntryPoint = "posix_openpt")]
    private static partial int OpenMaster(int flags);

    [LibraryImport("libc", EntryPoint = "grantpt")]
    private static partial int Grant(int master);

    [LibraryImport("libc", EntryPoint = "unlockpt")]
    private static partial int Unlock(int master);

    [LibraryImport("libc", EntryPoint = "ptsname_r")]
    private static partial int NameOf(int master, [Out] byte[] name, nuint room);

    [LibraryImport("libc", EntryPoint = "ioctl")]
    private static partial int WriteWindowSize(int descriptor, nuint request, [In] ushort[] size);

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    private static partial int GetAttributes(int descriptor, [Out] byte[] modes);

    [LibraryImport("libc", EntryPoint = "read", SetLastError = true)]
    private static partial nint Read(int descriptor, [Out] byte[] into, nuint count);

    [LibraryImport("libc", EntryPoint = "poll", SetLastError = true)]
    private static partial int Poll(ref PollItem item, nuint count, int timeoutMs);

    [LibraryImport("libc", EntryPoint = "write")]
    private static partial nint Write(int descriptor, [In] byte[] from, nuint count);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int descriptor);

    [StructLayout(LayoutKind.Sequential)]
    private struct PollItem
    {
        public int Descriptor;
        public short Wanted;
        public short Got;
    }
}
