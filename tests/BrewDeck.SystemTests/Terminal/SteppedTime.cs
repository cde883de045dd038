namespace BrewDeck.SystemTests.Terminal;

/// <summary>A wall clock and a monotonic clock that a test moves, also apart from each other.</summary>
internal sealed class SteppedTime(DateTimeOffset? start = null) : TimeProvider
{
    private DateTimeOffset _wall = start ?? new(2026, 3, 14, 14, 32, 7, TimeSpan.Zero);
    private TimeSpan _run;

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override DateTimeOffset GetUtcNow() => _wall;

    public override long GetTimestamp() => _run.Ticks;

    public void Pass(TimeSpan time)
    {
        _wall += time;
        _run += time;
    }

    /// <summary>Somebody sets the clock.</summary>
    public void SetWallClock(TimeSpan by) => _wall += by;
}
