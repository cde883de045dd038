using BrewDeck.Core.Rehearsing;
using BrewDeck.Deck;

namespace BrewDeck.Rehearsals;

/// <summary>The clock of a rehearsed day: it may run fast, and stand still.</summary>
internal sealed class RehearsalClock : IRehearsalControls
{
    private DateTimeOffset _wall;
    private DateTimeOffset _day;
    private double _speed;
    private bool _paused;

    /// <param name="wall">Time now.</param>
    /// <param name="day">Time on the rehearsed day.</param>
    public RehearsalClock(DateTimeOffset wall, DateTimeOffset day, double speed) => (_wall, _day, _speed) = (wall, day, speed);

    public double Speed
    {
        get => _speed;
        set => _speed = value;
    }

    public bool Paused
    {
        get => _paused;
        set => _paused = value;
    }

    public bool HandsOn { get; set; }

    /// <summary>Of the batch that is open, or that will be opened next.</summary>
    public RehearsalCard? Card { get; set; }

    /// <summary>Lets the day go on by the time that has passed on the wall since the last call; a wall clock set back moves nothing.</summary>
    public DateTimeOffset Turn(DateTimeOffset wall)
    {
        if (wall > _wall && !_paused)
            _day += (wall - _wall) * _speed;
        _wall = wall;
        return _day.ToOffset(wall.Offset);
    }
}
