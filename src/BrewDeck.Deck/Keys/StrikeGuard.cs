namespace BrewDeck.Deck.Keys;

/// <summary>
/// Keeps a bouncing or late knuckle from acting twice. All its times are of the wall: measured in a rehearsal's day, a key struck just after its clock
/// was made to run again or faster was swallowed, however long the hands had rested.
/// </summary>
/// <param name="double">The same key within this time counts once.</param>
/// <param name="leaveAlone">After a step change, and after the wipe lock, the big key is left alone for this long.</param>
public sealed class StrikeGuard(TimeSpan @double, TimeSpan leaveAlone)
{
    private KeyStroke _last;
    private DateTimeOffset _lastAt = DateTimeOffset.MinValue;
    private DateTimeOffset _changedAt = DateTimeOffset.MinValue;

    /// <summary>The last key was one that was struck just before.</summary>
    public bool Bounced { get; private set; }

    /// <summary>Whether a command key counts. A key that bounces keeps being ignored until it rests.</summary>
    public bool Lets(KeyStroke stroke, DateTimeOffset now)
    {
        Bounced = stroke == _last && Within(now, _lastAt, @double);
        (_last, _lastAt) = (stroke, now);
        return !Bounced && !(IsBig(stroke) && Within(now, _changedAt, leaveAlone));
    }

    /// <summary>An entry was sent: its Enter must not strike twice either.</summary>
    public void Submitted(DateTimeOffset now) => (_last, _lastAt) = (new KeyStroke(KeyName.Enter), now);

    /// <summary>The deck shows another step from now on, or its keys work again.</summary>
    public void LeaveAlone(DateTimeOffset now) => _changedAt = now;

    // a clock that was set back must not lock the key until it has caught up
    private static bool Within(DateTimeOffset now, DateTimeOffset before, TimeSpan span) =>
        before != DateTimeOffset.MinValue && now >= before && now - before < span;

    private static bool IsBig(KeyStroke stroke) => stroke.Name is KeyName.Space or KeyName.Enter;
}
