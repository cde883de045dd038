using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Rehearsals;

/// <summary>The clock of a rehearsed day, which may run fast, stand still or leap, and the deck's view of its plant.</summary>
internal sealed class RehearsalClock : IRehearsalControls
{
    private DateTimeOffset _wall;
    private DateTimeOffset _day;
    private double _speed;
    private bool _paused;
    private bool _leaps;

    /// <param name="wall">Time now.</param>
    /// <param name="day">Time on the rehearsed day.</param>
    public RehearsalClock(DateTimeOffset wall, DateTimeOffset day, double speed) => (_wall, _day, _speed) = (wall, day, speed);

    public double Speed
    {
        get => AtWallPace ? 1 : _speed;
        set => _speed = value;
    }

    /// <summary>For the time being it runs like the clock on the wall, whatever its speed is set to.</summary>
    public bool AtWallPace { get; set; }

    public bool Paused
    {
        get => _paused;
        set => _paused = value;
    }

    public bool HandsOn { get; set; }

    public DateTimeOffset? Wall => _wall;

    /// <summary>Of the batch that is open, or that will be opened next.</summary>
    public RehearsalCard? Card { get; set; }

    /// <summary>Time on the rehearsed day as of the last turn.</summary>
    public DateTimeOffset Day => _day;

    /// <summary>Null before the day begins.</summary>
    public PlantView? Plant { get; set; }

    public IReadOnlyList<Sign> Signs => Plant?.Signs ?? [];

    public IReadOnlyList<Tending> Tending => Plant?.Tending ?? [];

    public IReadOnlyList<Dial> Dials => Plant?.Dials ?? [];

    public Shown? Look(ReadingKind kind, string vessel) => Plant?.Look(kind, vessel);

    public void Leap() => _leaps = true;

    /// <summary>Given once.</summary>
    public bool TakeLeap()
    {
        var leaps = _leaps;
        _leaps = false;
        return leaps;
    }

    /// <summary>Lets the day go on by the time that has passed on the wall since the last call; a wall clock set back moves nothing.</summary>
    public DateTimeOffset Turn(DateTimeOffset wall)
    {
        if (wall > _wall && !_paused)
            _day += (wall - _wall) * Speed;
        _wall = wall;
        return _day.ToOffset(wall.Offset);
    }

    /// <summary>The day goes on from another moment.</summary>
    public DateTimeOffset Set(DateTimeOffset day) => _day = day.ToOffset(_wall.Offset);
}
