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

    /// <param name="longest">Null: until somebody rings.</param>
    public void Wait(TimeSpan? longest)
    {
        if (longest is { } span)
            _bell.WaitOne(span < TimeSpan.Zero ? TimeSpan.Zero : span);
        else
            _bell.WaitOne();
    }

    public void Dispose() => _bell.Dispose();
}
