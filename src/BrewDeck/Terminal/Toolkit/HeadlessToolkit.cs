using System.Collections.Concurrent;
using System.Drawing;
using BrewDeck.Terminal.Tty;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;

namespace BrewDeck.Terminal.Toolkit;

/// <summary>
/// Terminal.Gui without a terminal: text of the keyboard goes in by <see cref="Type"/>, cells come out. The same in the
/// running program, in pictures and in tests; one thread drives it, only <see cref="Type"/> may come from another.
/// </summary>
internal sealed class HeadlessToolkit : IDisposable
{
    /// <summary>The parser gives a lone Esc up after 50 ms of its clock.</summary>
    private static readonly TimeSpan LoneEscape = TimeSpan.FromMilliseconds(55);

    private static readonly Lock Starting = new();

    private readonly ConcurrentQueue<char> _typed;
    private readonly CsiTail _tail;
    private readonly IInputProcessor _input;
    private SessionToken? _token;

    public HeadlessToolkit(Size size, TimeProvider time)
    {
        App = Start(new MonotonicClock(time));
        InputTask.Stop(App);
        _input = App.Driver!.GetInputProcessor();
        _typed = ((InputProcessorImpl<char>)_input).InputQueue;
        _tail = new CsiTail(_typed.Enqueue);
        Resize(size);
    }

    public IApplication App { get; }

    public Cell[,] Cells => App.Driver!.Contents!;

    public Cursor Cursor => App.Driver!.GetCursor();

    public Size Size => App.Screen.Size;

    /// <summary>The runnable gets the keys and is drawn from now on.</summary>
    public void Show(IRunnable runnable) => _token = App.Begin(runnable);

    /// <summary>Takes a burst of what the keyboard sent; looked at in the next <see cref="Step"/>.</summary>
    public void Type(ReadOnlySpan<char> burst)
    {
        foreach (var c in burst) _tail.Feed(c);
    }

    public void Resize(Size size)
    {
        App.Driver!.SetScreenSize(size.Width, size.Height);
        App.ClearScreenNextIteration = true;
    }

    /// <summary>Handles what was typed, the toolkit's due timers, layout, drawing and the cursor.</summary>
    public void Step()
    {
        do
        {
            ProcessTyped();
        }
        while (!_typed.IsEmpty);

        App.TimedEvents!.RunTimers();
        App.LayoutAndDraw();
        App.LayoutAndDraw(); // a first layout may ask for a second one; under 1 us when nothing did
        App.Navigation!.UpdateCursor();
    }

    /// <summary>How long may be waited before the next <see cref="Step"/>; null: until something happens.</summary>
    public TimeSpan? UntilDue()
    {
        if (!_typed.IsEmpty) return TimeSpan.Zero;
        TimeSpan? due = ((TimedEvents)App.TimedEvents!).CheckTimers(out var ms) ? TimeSpan.FromMilliseconds(ms > 0 ? ms + 1 : 0) : null;
        var held = _input.GetParser().State != AnsiResponseParserState.Normal;
        return held && (due is null || due > LoneEscape) ? LoneEscape : due;
    }

    public void Dispose()
    {
        if (_token is not null) App.End(_token);
        App.Dispose();
    }

    /// <summary>
    /// Terminal.Gui 2.5.0 throws out of its parser at <c>ESC O O</c> and the like; the parser itself has moved on by then and
    /// lives (20,000 fuzzed bursts in the tests). What we do with keys must therefore not throw
    /// in here: see <see cref="KeyFault"/>.
    /// </summary>
    private void ProcessTyped()
    {
        try
        {
            _input.ProcessQueue();
        }
        catch (NullReferenceException)
        {
            // the sequence was no key
        }
    }

    private static IApplication Start(MonotonicClock clock)
    {
        lock (Starting)
        {
            // read by the toolkit once: its driver then neither reads nor writes a terminal
            Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
            var application = Application.Create(clock);
            using (new NoClipboardProbe()) application.Init(DriverRegistry.Names.ANSI);
            application.Mouse.IsMouseDisabled = true;
            return application;
        }
    }
}
