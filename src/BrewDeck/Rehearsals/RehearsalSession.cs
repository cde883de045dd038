using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Training;
using BrewDeck.Simulator.Plant;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Rehearsals;

/// <summary>A session on a virtual plant: time passes on both, the stand-in brewer acts through the session's own door.</summary>
/// <param name="events">Those of the batch that the session has open, for a rehearsal that is taken up again.</param>
internal sealed class RehearsalSession(Session session, WatchedStore store, RehearsalClock clock, IReadOnlyList<RunEvent> events)
    : ISession
{
    private static readonly TimeSpan Frame = TimeSpan.FromMilliseconds(100);

    /// <summary>Between two looks at what shows itself.</summary>
    private static readonly TimeSpan Piece = TimeSpan.FromSeconds(5);

    private static readonly TimeSpan FarthestLook = TimeSpan.FromMinutes(3);

    /// <summary>Nothing of a day takes longer without hands.</summary>
    private static readonly TimeSpan LongestLeap = TimeSpan.FromHours(4);

    private RehearsalPlayer? _player;
    private DateTimeOffset _wall;
    private int _asked;
    private bool _rings;
    private bool _judged;

    public Screen Screen => session.Screen;

    public DateTimeOffset? NextTick => clock.Paused ? null : _wall + Frame;

    public KeyContext Where => session.Where;

    public bool Ended => session.Ended || PowerLost;

    /// <summary>The laptop's mishap has ended the program.</summary>
    public bool PowerLost { get; private set; }

    public string Title => session.Title;

    /// <summary>The virtual plant itself, for who may know the truth; null before the day begins.</summary>
    public VirtualPlant? Plant => _player?.Plant;

    public bool TakeBell()
    {
        var rings = session.TakeBell() | _rings;
        _rings = false;
        return rings;
    }

    public void Receive(Input input, DateTimeOffset now)
    {
        if (PowerLost)
            return;
        _wall = now;
        var day = clock.Turn(now);
        if (Player() is { } player)
            day = Play(player, player.LiveMishaps.LaptopOff ? PowerBack(player) : day);
        if (PowerLost)
            return;
        session.Receive(input, day);
        Follow();
        if (clock.TakeLeap())
            Leap();
        EndExercise();
        // whoever does the work reads and types at the pace of the wall: at 60 times that, a minute's reading costs an hour
        clock.AtWallPace = IsOver || (clock.HandsOn && !session.Where.HasFlag(KeyContext.Deck));
    }

    private bool IsOver => session.State is { Status: RunStatus.Complete or RunStatus.Aborted };

    /// <summary>An exercise that has come to its end is judged, once.</summary>
    private void EndExercise()
    {
        if (_judged || _player is null || session.State is not { } state || Exercises.Find(clock.Card?.Exercise) is not { } exercise)
            return;
        if (Exercises.IsOver(exercise, state))
            session.Act(new RunCommand.Abort(RunAborted.ExerciseOver), At(_player));
        if (!IsOver)
            return;
        _judged = true;
        Follow();
        session.ShowDebrief(At(_player));
    }

    /// <summary>Lets the plant come up to a moment; who does the work is stopped there where something shows itself.</summary>
    /// <returns>How far it came.</returns>
    private DateTimeOffset Play(RehearsalPlayer player, DateTimeOffset until)
    {
        player.BrewerActs = !clock.HandsOn;
        // the plant counts whole milliseconds: what is less than one is left for the next time
        while (player.NowMs < until.ToUnixTimeMilliseconds() && !PowerLost)
        {
            Pass(player, Sooner(At(player) + Piece, until));
            if (player.LiveMishaps.LaptopOff)
                LosePower(player);
            else if (ShowsItself(player) && clock.HandsOn)
                return clock.Set(At(player));
        }
        return until;
    }

    private void Pass(RehearsalPlayer player, DateTimeOffset until)
    {
        while (session.State is { Plan: not null } state && player.Next(state, until.ToUnixTimeMilliseconds()) is { } command)
        {
            player.Answered(command, session.Act(command, At(player)));
            Follow();
        }
    }

    /// <summary>Something new: the bell rings, and whoever does the work gets time to think.</summary>
    private bool ShowsItself(RehearsalPlayer player)
    {
        if (player.LiveMishaps.Asked == _asked)
            return false;
        _asked = player.LiveMishaps.Asked;
        _rings = true;
        if (clock.HandsOn)
            clock.Speed = 1;
        return true;
    }

    private void LosePower(RehearsalPlayer player)
    {
        session.Act(new RunCommand.Mark(RehearsalMark.PowerLost), At(player));
        PowerLost = true;
    }

    /// <summary>The plant has gone on alone meanwhile.</summary>
    private DateTimeOffset PowerBack(RehearsalPlayer player)
    {
        var back = player.MsAt(player.LiveMishaps.LaptopBackS ?? 0);
        player.BrewerActs = false;
        player.Next(session.State!, back + 1);
        return clock.Set(At(player));
    }

    private void Leap()
    {
        if (Player() is not { } player)
            return;
        var last = Sooner(At(player) + LongestLeap, WantsHands(player));
        while (At(player) < last && !PowerLost && !NeedsHands())
        {
            var asked = _asked;
            var day = clock.Set(Play(player, Sooner(At(player) + ToNext(player), last)));
            if (PowerLost)
                return;
            session.Receive(new Input.Tick(), day);
            Follow();
            if (_asked != asked)
                return;
        }
    }

    /// <summary>A stir at half time, a heat to be switched: what the deck counts down to and no step waits for; null: nothing ahead.</summary>
    private DateTimeOffset? WantsHands(RehearsalPlayer player) =>
        session is { Forecast.HandsNeededS: { } at, State: { } state } && state.MsAt(at, player.NowMs) is var ms && ms > player.NowMs + Piece.TotalMilliseconds
            ? DateTimeOffset.FromUnixTimeMilliseconds(ms)
            : null;

    private static DateTimeOffset Sooner(DateTimeOffset one, DateTimeOffset? other) => other < one ? other.Value : one;

    /// <summary>To what is due next; not far at a time, because alarms are looked for in between.</summary>
    private TimeSpan ToNext(RehearsalPlayer player) =>
        TimeSpan.FromMilliseconds(Math.Clamp((session.Focus?.DueMs ?? 0) - player.NowMs, Piece.TotalMilliseconds, FarthestLook.TotalMilliseconds));

    private bool NeedsHands() => session.State is not { Plan: not null } state || session.Focus is not { } focus
        || state.Alarms.Any(a => !a.Acknowledged)
        || focus.Act is FocusAct.None or FocusAct.Resume
        || (focus.Act is FocusAct.Start or FocusAct.Finish && focus.DueMs <= _player!.NowMs);

    private void Follow()
    {
        var fresh = store.Take();
        if (fresh.Count > 0 && session.State is { } state)
            Player()?.Happened(fresh, state);
    }

    private RehearsalPlayer? Player()
    {
        if (_player is not null || session.State is not { Plan: { } plan })
            return _player;
        var start = events.Count > 0 ? events[0].AtMs : clock.Turn(_wall).ToUnixTimeMilliseconds();
        _player = RehearsalPlayer.For(plan, clock.Card?.Seed ?? 1, start, clock.Card?.Mishaps ?? []);
        if (events.Count > 0)
            _player.Replay(events);
        _asked = _player.LiveMishaps.Asked;
        clock.Plant = new PlantView(_player);
        return _player;
    }

    private static DateTimeOffset At(RehearsalPlayer player) => DateTimeOffset.FromUnixTimeMilliseconds(player.NowMs);
}
