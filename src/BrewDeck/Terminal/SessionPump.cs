using System.Drawing;
using BrewDeck.Deck;
using BrewDeck.Terminal.Paint;
using BrewDeck.Terminal.Panes;
using BrewDeck.Terminal.Toolkit;

namespace BrewDeck.Terminal;

/// <summary>
/// Carries inputs to the session and its screens to the window. When the next tick is due is measured on the monotonic
/// clock from the moment the session asked for it, so that a wall clock that is set does not stall the countdown.
/// </summary>
internal sealed class SessionPump
{
    /// <summary>A session that asks for ticks in the past is ticked no faster than this.</summary>
    private static readonly TimeSpan ShortestTick = TimeSpan.FromMilliseconds(15);

    /// <summary>A laptop that slept, or a clock that was set forward, is noticed within this.</summary>
    private static readonly TimeSpan LongestTick = TimeSpan.FromMinutes(1);

    private readonly ISession _session;
    private readonly TimeProvider _time;
    private readonly KeyFault _fault = new();
    private string _title = "";
    private long _asked;
    private TimeSpan? _tickAfter;

    public SessionPump(ISession session, TimeProvider time, Look look)
    {
        (_session, _time) = (session, time);
        Window = new DeckWindow(look, Receive);
    }

    public DeckWindow Window { get; }

    /// <summary>Size of the screen; told to the session by <see cref="Resize"/>.</summary>
    public Size Size { get; private set; }

    public bool Ended => _session.Ended;

    /// <summary>The session wants the bell.</summary>
    public event Action? Ring;

    /// <summary>The window's title has changed to this.</summary>
    public event Action<string>? Titled;

    /// <summary>Null: the session waits for keys only.</summary>
    public TimeSpan? UntilTick() => _tickAfter - _time.GetElapsedTime(_asked);

    public void Resize(Size size)
    {
        Size = size;
        Receive(new Input.Resized(size.Width, size.Height));
    }

    public void Receive(Input input) => _fault.Guard(() =>
    {
        var now = _time.GetLocalNow();
        _session.Receive(input, now);
        Rearm(now);
        if (_session.TakeBell()) Ring?.Invoke();
        if (_session.Title != _title) Titled?.Invoke(_title = _session.Title);
        Window.Show(_session.Screen, Size);
    });

    public void TickIfDue()
    {
        if (UntilTick() <= TimeSpan.Zero) Receive(new Input.Tick());
    }

    /// <exception cref="Exception">What the session threw while it handled an input.</exception>
    public void ThrowIfFaulted() => _fault.ThrowIfAny();

    private void Rearm(DateTimeOffset now)
    {
        _asked = _time.GetTimestamp();
        var wanted = _session.NextTick - now;
        _tickAfter = wanted is { } wait
            ? TimeSpan.FromTicks(Math.Clamp(wait.Ticks, ShortestTick.Ticks, LongestTick.Ticks))
            : null;
    }
}
