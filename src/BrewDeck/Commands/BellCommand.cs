using System.ComponentModel;
using System.Diagnostics;

namespace BrewDeck.Commands;

/// <summary>The brewer's own command for a louder sound. It never waits, never draws on the deck, and its failure is nobody's trouble.</summary>
internal sealed class BellCommand(string command) : IDisposable
{
    private Process? _running;

    /// <summary>Runs it unless it still runs from the last time.</summary>
    /// <param name="wanted">What is wanted of the brewer; the command finds it in BREWDECK_BELL.</param>
    public void Ring(string wanted)
    {
        if (_running is { HasExited: false })
            return;
        _running?.Dispose();
        _running = Start(wanted);
    }

    public void Dispose() => _running?.Dispose();

    private Process? Start(string wanted)
    {
        var start = OperatingSystem.IsWindows() ? new ProcessStartInfo("cmd.exe", ["/c", command]) : new ProcessStartInfo("/bin/sh", ["-c", command]);
        start.RedirectStandardInput = start.RedirectStandardOutput = start.RedirectStandardError = true;
        start.Environment["BREWDECK_BELL"] = wanted;
        try
        {
            return Process.Start(start);
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}
