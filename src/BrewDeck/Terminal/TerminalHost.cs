using BrewDeck.Deck;
using BrewDeck.Probes;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Tty;

namespace BrewDeck.Terminal;

/// <summary>Shows a session on the terminal that the program was started on.</summary>
public static class TerminalHost
{
    /// <summary>False when input or output is a file or a pipe: there is nothing to draw on.</summary>
    public static bool HasTerminal => !Console.IsInputRedirected && !Console.IsOutputRedirected;

    /// <summary>
    /// Takes the terminal over, runs the session to its end and gives the terminal back, also when the program is stopped by
    /// a signal or by an exception on any thread.
    /// </summary>
    /// <param name="session">Called from this thread only.</param>
    /// <param name="time">Wall clock for the session, monotonic clock for waiting.</param>
    /// <exception cref="Exception">What the session threw; the terminal has been given back by then.</exception>
    /// <param name="theme">Colours.</param>
    /// <param name="bell">Told what is wanted of the brewer each time that the bell rings; for a louder sound.</param>
    /// <param name="probe">What a probe says; null: there is none.</param>
    public static Ending Run(ISession session, TimeProvider time, Theme theme = Theme.Dark, Action<string>? bell = null, ProbeMail? probe = null)
    {
        if (!LiveTerminal.IsHere || OperatingSystem.IsWindows()) return new LibraryLoop(session, time, Look.Of(theme), bell, probe).Run();
        using var terminal = new LiveTerminal();
        using var loop = new HostLoop(terminal, session, time, Look.Of(theme), bell, probe);
        return loop.Run();
    }
}
