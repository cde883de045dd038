using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace BrewDeck.Terminal.Tty;

/// <summary>
/// Turns signals into news for the loop. The registrations stay in fields: one that is collected stops listening
/// (measured: resizing then stopped in the native build). Those that stop the program outlive the loop: a Ctrl-C pressed twice comes the second
/// time as a signal, when the terminal has been given back, and must not cut off the closing of the logbook (seen: exit code 130).
/// </summary>
[UnsupportedOSPlatform("windows")]
internal sealed class SignalWatch : IDisposable
{
    private readonly Doorbell _doorbell;
    private readonly Action _restore;
    private static readonly List<PosixSignalRegistration> Stops = [];
    private readonly List<PosixSignalRegistration> _watches = [];
    private PosixSignalRegistration? _suspend;
    private int _stops;

    /// <param name="doorbell">Where signals are told.</param>
    /// <param name="restore">Gives the terminal back when a second signal says that the loop does not answer.</param>
    public SignalWatch(Doorbell doorbell, Action restore)
    {
        _doorbell = doorbell;
        _restore = restore;
        _watches.Add(PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => doorbell.Say(Doorbell.News.Resized)));
        _watches.Add(PosixSignalRegistration.Create(PosixSignal.SIGCONT, _ => doorbell.Say(Doorbell.News.Continued)));
        foreach (var signal in (PosixSignal[])[PosixSignal.SIGTERM, PosixSignal.SIGINT, PosixSignal.SIGHUP, PosixSignal.SIGQUIT])
            Stops.Add(PosixSignalRegistration.Create(signal, Stop));
        WatchSuspend();
    }

    /// <summary>
    /// Stops the whole job as the shell expects. The watch on the signal is lifted for it, so that the kernel's own rule
    /// holds: a program with no shell to wake it again is not stopped.
    /// </summary>
    public void SuspendJob()
    {
        _suspend?.Dispose();
        Libc.Signal(0, Libc.StopSignal);
    }

    public void WatchSuspend() => _suspend = PosixSignalRegistration.Create(PosixSignal.SIGTSTP, context =>
    {
        context.Cancel = true;
        _doorbell.Say(Doorbell.News.SuspendAsked);
    });

    public void Dispose()
    {
        _suspend?.Dispose();
        foreach (var watch in _watches) watch.Dispose();
    }

    private void Stop(PosixSignalContext context)
    {
        context.Cancel = Interlocked.Increment(ref _stops) == 1;
        if (context.Cancel)
            _doorbell.Say(Doorbell.News.StopAsked);
        else
            _restore();
    }
}
