using BrewDeck.Deck;
using BrewDeck.Probes;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Toolkit;
using Terminal.Gui.App;

namespace BrewDeck.Terminal;

/// <summary>
/// The toolkit's own driver and loop, where ours does not run (Windows, macOS). Compiled everywhere, untested there: slower
/// keys, and colours as the toolkit sends them.
/// </summary>
internal sealed class LibraryLoop(ISession session, TimeProvider time, Look look, Action<string>? bell, ProbeMail? probe)
{
    public Ending Run()
    {
        using var application = Application.Create(new MonotonicClock(time)).Init();
        application.Mouse.IsMouseDisabled = true;
        var pump = new SessionPump(session, time, look);
        var keyboard = new Keyboard(application, pump.Window, pump.Receive);
        var stopped = false;
        keyboard.StopAsked += () =>
        {
            stopped = true;
            application.RequestStop();
        };
        pump.Ring += () => bell?.Invoke(session.Title);
        pump.Ring += () => Console.OpenStandardOutput().Write("\a"u8);
        application.ScreenChanged += (_, e) => pump.Resize(e.Value.Size);
        application.Iteration += (_, _) => Turn(application, pump, probe);
        pump.Resize(application.Screen.Size);
        application.Run(pump.Window);
        pump.ThrowIfFaulted();
        return stopped ? Ending.Stopped : Ending.SessionEnded;
    }

    private static void Turn(IApplication application, SessionPump pump, ProbeMail? probe)
    {
        pump.ThrowIfFaulted();
        pump.TickIfDue();
        probe?.Deliver(pump.Receive);
        if (pump.Ended) application.RequestStop();
    }
}
