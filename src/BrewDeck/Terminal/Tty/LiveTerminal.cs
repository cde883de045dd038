using System.Drawing;

namespace BrewDeck.Terminal.Tty;

/// <summary>The terminal that the program was started on: taken over on <see cref="Open"/>, given back on every way out.</summary>
internal sealed class LiveTerminal : IDisposable
{
    /// <summary>The window's title kept aside, alternate screen, no wrapping at the last column, no cursor, bracketed paste; every kind of mouse report off.</summary>
    private const string TakeOver =
        "\e[22;2t\e[?1049h\e[?7l\e[?25l\e[?1000l\e[?1002l\e[?1003l\e[?1006l\e[?2004h\e[0m\e[2J";

    private const string GiveBack = "\e[?2026l\e[?2004l\e[0m\e[?7h\e[?25h\e[?1049l\e[23;2t";

    private readonly RawMode _mode = new();
    private readonly TtyWriter _writer = new();
    private int _given;

    /// <summary>Our own loop runs here: Linux, with a terminal at both ends.</summary>
    public static bool IsHere =>
        OperatingSystem.IsLinux() && Libc.IsTerminal(Libc.Input) == 1 && Libc.IsTerminal(Libc.Output) == 1;

    /// <summary>Columns and rows; 80x24 when the terminal will not say (serial lines).</summary>
    public static Size Size =>
        Libc.ReadWindowSize(Libc.Output, Libc.GetWindowSize, out var size) == 0 && size is { Columns: > 0, Rows: > 0 }
            ? new Size(size.Columns, size.Rows)
            : new Size(80, 24);

    public void Open()
    {
        AppDomain.CurrentDomain.ProcessExit += Restore;
        AppDomain.CurrentDomain.UnhandledException += Restore;
        Enter();
    }

    public void Enter()
    {
        _mode.Enter();
        _writer.Write(TakeOver);
    }

    /// <summary>Gives the terminal back for a while: <see cref="Enter"/> takes it again.</summary>
    public void Leave()
    {
        _writer.Write(GiveBack);
        _mode.Leave();
    }

    public void Write(string text) => _writer.Write(text);

    /// <summary>Names the window. A bare Linux console has no window, and old ones print what they do not know.</summary>
    public void Name(string title)
    {
        if (Environment.GetEnvironmentVariable("TERM") != "linux")
            _writer.Write($"\e]2;{string.Concat(title.Where(c => !char.IsControl(c)))}\a");
    }

    public void Ring() => _writer.Write("\a");

    public void Dispose()
    {
        AppDomain.CurrentDomain.ProcessExit -= Restore;
        AppDomain.CurrentDomain.UnhandledException -= Restore;
        Restore(this, EventArgs.Empty);
    }

    /// <summary>Once, from whatever thread comes first.</summary>
    private void Restore(object? sender, EventArgs e)
    {
        if (Interlocked.Exchange(ref _given, 1) != 0) return;
        _writer.Close(GiveBack);
        _mode.Leave();
    }
}
