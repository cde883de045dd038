using System.Drawing;
using BrewDeck.Deck;
using BrewDeck.Deck.Screens;
using BrewDeck.Terminal;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Stills;
using BrewDeck.Terminal.Toolkit;

namespace BrewDeck.SystemTests.Terminal;

/// <summary>The real window, toolkit and pump without a terminal; a test's step is the program's step.</summary>
internal sealed class Bench : IDisposable
{
    private readonly HeadlessToolkit _toolkit;
    private readonly SessionPump _pump;

    private readonly ISession _session;

    public Bench(ISession session, TimeProvider time, int columns = 80, int rows = 24)
    {
        _session = session;
        _toolkit = new HeadlessToolkit(new Size(columns, rows), time);
        _pump = new SessionPump(session, time, Look.Dark);
        var keyboard = new Keyboard(_toolkit.App, _pump.Window, _pump.Receive);
        keyboard.StopAsked += () => Stops++;
        keyboard.SuspendAsked += () => Suspends++;
        _toolkit.Show(_pump.Window);
        _pump.Resize(_toolkit.Size);
        Step();
        (session as RecordingSession)?.Received.Clear();
    }

    /// <summary>For tests of what the session is told.</summary>
    public RecordingSession Session => (RecordingSession)_session;

    public SessionPump Pump => _pump;

    public HeadlessToolkit Toolkit => _toolkit;

    public int Stops { get; private set; }

    public int Suspends { get; private set; }

    public IReadOnlyList<KeyStroke> Strokes =>
        [.. Session.Received.OfType<Input.Key>().Select(key => key.Stroke)];

    public Bench Type(string keys)
    {
        _toolkit.Type(keys);
        Step();
        return this;
    }

    public void Resize(int columns, int rows)
    {
        _toolkit.Resize(new Size(columns, rows));
        _pump.Resize(_toolkit.Size);
        Step();
    }

    public void Step()
    {
        _pump.TickIfDue();
        _toolkit.Step();
        _pump.ThrowIfFaulted();
    }

    public string Text() => StillScreen.Of(_toolkit.Cells).ToText();

    public void Dispose() => _toolkit.Dispose();
}

/// <summary>Keeps what it receives; what it answers is up to the test.</summary>
internal sealed class RecordingSession(Screen screen) : ISession
{
    public List<Input> Received { get; } = [];

    public List<DateTimeOffset> Times { get; } = [];

    public Action<RecordingSession, Input>? OnReceive { get; init; }

    public Screen Screen { get; set; } = screen;

    public DateTimeOffset? NextTick { get; set; }

    public bool Ended { get; set; }

    public bool Bell { get; set; }

    public bool TakeBell() => Bell;

    public void Receive(Input input, DateTimeOffset now)
    {
        Received.Add(input);
        Times.Add(now);
        OnReceive?.Invoke(this, input);
    }
}
