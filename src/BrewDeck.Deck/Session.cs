using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Composing;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Pages;
using BrewDeck.Deck.Probes;
using BrewDeck.Deck.Runs;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck;

/// <summary>The deck without a terminal: one door in, screens out. It knows only the time that comes with an input.</summary>
public sealed class Session : ISession
{
    private readonly Shell _shell;
    private readonly HandsBell _bell = new();
    private readonly AlarmBell _alarmBell = new();
    private readonly ProbeEar _probe;
    private readonly ProbeRule _rule;
    private readonly ClockSetBack _setBack;
    private DateTimeOffset _now;
    private Screen? _screen;

    /// <param name="now">Time of the start. A recent open batch is gone on with straight away.</param>
    public Session(SessionPorts ports, SessionSettings settings, DateTimeOffset now)
    {
        _shell = new Shell(ports, settings);
        _probe = new ProbeEar(_shell);
        _rule = new ProbeRule(_shell, settings.TakenByRule);
        _setBack = new ClockSetBack(_shell);
        _shell.Push(new OpeningPage(_shell));
        _now = now;
        if (settings.TakesUp)
            _shell.Recover(now);
        _setBack.Look(now);
        _shell.SayNotices();
    }

    /// <summary>Composed when somebody looks: a day that is rehearsed without a screen never does.</summary>
    public Screen Screen => _screen ??= Compose();

    public bool Ended => _shell.Ended;

    public KeyContext Where => _shell.Top.Where;

    /// <summary>Number of the exercise that this deck was left for; null: none.</summary>
    public int? Exercise => _shell.Exercise;

    /// <summary>The deck was left for the rehearsal that was broken off.</summary>
    public bool LeftForRehearsal => _shell.LeftForRehearsal;

    /// <summary>State of the open batch; null without one.</summary>
    public RunState? State => _shell.Day?.State;

    /// <summary>The rest of the day as of the last input; null without an open batch.</summary>
    public Forecast? Forecast => _shell.Day?.Forecast(_now);

    /// <summary>What the big key does as of the last input; null without an open batch.</summary>
    public RunFocus? Focus => _shell.Day?.Focus(_now);

    /// <summary>Number of the open batch; null without one.</summary>
    public int? Batch => _shell.Day?.Number;

    public DateTimeOffset? NextTick => Ended ? null : _shell.Top.NextTick(_now);

    public bool TakeBell() => _bell.Take() | _alarmBell.Take();

    public string Title { get; private set; } = TitleWords.Plain;

    public void Receive(Input input, DateTimeOffset now)
    {
        _ = Screen; // a page takes keys as it was last shown
        _now = now;
        _shell.Probe.Now(now, _shell.Pace);
        switch (input)
        {
            case Input.Key key:
                Strike(key.Stroke, now);
                break;
            case Input.Typed typed when !_shell.WipeLock.Locked:
                _shell.Top.Typed(typed.Text);
                break;
            case Input.Submitted submitted when !_shell.WipeLock.Locked:
                Submit(submitted.Text, now);
                break;
            case Input.Resized size:
                (_shell.Columns, _shell.Rows) = (Math.Max(20, size.Columns), Math.Max(6, size.Rows));
                break;
            case Input.Offered or Input.ProbeGone:
                _probe.Hear(input);
                break;
        }
        if (input is Input.Tick or Input.Offered)
            _rule.Look(now);
        _setBack.Look(now);
        _shell.SayNotices();
        _probe.Say();
        if (_shell.Day?.WatchAlarms(now) is { } trouble)
            _shell.Say(_shell.Notation.Text($"Alarms cannot be written: {trouble}"), Tone.Alarm);
        Listen(input, now);
        _screen = Compose();
    }

    private void Listen(Input input, DateTimeOffset now)
    {
        _bell.Listen(_shell.Day, now, rings: input is Input.Tick or Input.Offered or Input.ProbeGone);
        var moment = _shell.Day is { Over: false } day ? day.Moment(now, _shell.Notation) : null;
        _alarmBell.Listen(moment is null ? [] : AlarmLines.Unheard(moment), now, _shell.Pace);
        Title = TitleWords.Of(moment);
        if (_bell.TakeWarning() is { } soon)
            _shell.Say(soon switch
            {
                { Switch: { } heat, InS: < 0 } => HeatWords.Late(heat, _shell.Notation),
                { Switch: { } heat, InS: 0 } => HeatWords.Now(heat, _shell.Notation),
                { Switch: { } heat } => HeatWords.Soon(heat, soon.InS, _shell.Notation),
                _ => _shell.Notation.Text($"In {Durations.Words(soon.InS, _shell.Notation)}: {moment?.Title(soon.StepId)}."),
            }, Tone.Due);
    }

    /// <summary>Does what the stand-in brewer wants, in the same way as a key would.</summary>
    /// <returns>What was decided; <see cref="DecisionCode.StoreTrouble"/> when it could not be written.</returns>
    /// <exception cref="InvalidOperationException">No batch is open.</exception>
    public Decision Act(RunCommand command, DateTimeOffset now)
    {
        var day = _shell.Day ?? throw new InvalidOperationException("No batch is open.");
        _now = now;
        var decision = new Acts(_shell, day).Do(command, now);
        _screen = null;
        return decision;
    }

    /// <summary>Shows the debrief of the open batch; an exercise is judged and remembered.</summary>
    public void ShowDebrief(DateTimeOffset now)
    {
        _now = now;
        if (_shell.Day is { } day)
            DebriefPage.Judge(_shell, day.Number, now);
        _screen = null;
    }

    /// <summary>Opens a batch with this plan and shows its deck.</summary>
    /// <returns>False when it could not be opened; the screen says why.</returns>
    public bool Begin(Plan plan, DateTimeOffset now)
    {
        _now = now;
        var begun = _shell.Begin(plan, now);
        _screen = null;
        return begun;
    }

    private void Strike(KeyStroke stroke, DateTimeOffset now)
    {
        if (_shell.WipeLock.Locked)
        {
            _shell.WipeLock.Strike(stroke, _shell.Wall(now));
            // who typed a word sends it off with Enter
            if (!_shell.WipeLock.Locked)
                _shell.Guard.LeaveAlone(_shell.Wall(now));
            return;
        }
        if (KeyMap.Find(_shell.Top.Where, stroke) is not { } binding)
        {
            _shell.Top.Unbound(stroke);
            return;
        }
        if (IsGuarded(binding.Command) && !_shell.Guard.Lets(stroke, _shell.Wall(now)))
        {
            // where something is said already, that matters more
            if (_shell.Guard.Bounced && _shell.Notice is null)
                _shell.Say(_shell.Notation.Text("Struck twice within a moment: it counts once."));
            return;
        }
        if (!_shell.Top.Typing)
            _shell.Notice = null;
        _shell.Top.Handle(binding, stroke, now);
    }

    private void Submit(string text, DateTimeOffset now)
    {
        // an Enter that bounces off the question before would take what a probe offers
        if (text.Trim().Length == 0 && !_shell.Guard.Lets(new KeyStroke(KeyName.Enter), _shell.Wall(now)))
            return;
        _shell.Guard.Submitted(_shell.Wall(now));
        _shell.Notice = null;
        _shell.Top.Submitted(text, now);
    }

    // moving about may be fast; what acts must not bounce
    private static bool IsGuarded(Command command) => command is not (Command.Up or Command.Down or Command.PageUp or Command.PageDown
        or Command.NextKind or Command.PreviousKind or Command.PickRow or Command.Reading or Command.Faster or Command.Slower);

    private Screen Compose()
    {
        var screen = _shell.Top.Show(_now);
        return _shell.WipeLock.Locked
            ? screen with
            {
                Keys = [new KeyHint(_shell.WipeLock.Word, _shell.Notation.Text("typed in letters unlocks the keys"))],
                Notice = Line.Of(_shell.Notation.Text($"Keys are locked for wiping. Type {_shell.WipeLock.Word} to unlock."), Tone.Due),
            }
            : screen;
    }
}
