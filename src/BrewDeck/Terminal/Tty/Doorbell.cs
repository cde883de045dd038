namespace BrewDeck.Terminal.Tty;

/// <summary>Wakes the loop from other threads and keeps what they have to say until the loop asks.</summary>
internal sealed class Doorbell : IDisposable
{
    private readonly AutoResetEvent _bell = new(false);
    private int _said;

    [Flags]
    public enum News
    {
        None = 0,
        Typed = 1,
        Resized = 2,
        Continued = 4,
        SuspendAsked = 8,
        StopAsked = 16,
        HungUp = 32,
        Probed = 64,
    }

    public void Say(News news)
    {
        Interlocked.Or(ref _said, (int)news);
        _bell.Set();
    }

    /// <summary>Takes what was said since the last call.</summary>
    public News Take() => (News)Interlocked.Exchange(ref _said, 0);

    /// <summary>Until somebody rings; not at all when something was said that nobody has taken yet.</summary>
    /// <param name="longest">Null: as long as it takes.</param>
    public void Wait(TimeSpan? longest)
    {
        if (Volatile.Read(ref _said) != 0) return;
        if (longest is { } span)
            _bell.WaitOne(span < TimeSpan.Zero ? TimeSpan.Zero : span);
        else
            _bell.WaitOne();
    }

    /// <summary>Until the next ring, whatever was said before. What is said meanwhile is kept: a stop that came here was once lost to the loop.</summary>
    public void Pause(TimeSpan longest) => _bell.WaitOne(longest);

    public void Dispose() => _bell.Dispose();
}
