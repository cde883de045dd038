using Terminal.Gui.Time;
using IToolkitTimer = Terminal.Gui.Time.ITimer;

namespace BrewDeck.Terminal.Toolkit;

/// <summary>
/// The toolkit's clock, monotonic. Its own takes local wall time: a clock that is set back, or the end of daylight saving,
/// then stops its timers for the length of the step (measured with 2.5.0: 12 of 12 repeating timers).
/// </summary>
internal sealed class MonotonicClock(TimeProvider time) : ITimeProvider
{
    private static readonly DateTime Epoch = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    private readonly long _start = time.GetTimestamp();

    public DateTime Now => Epoch + time.GetElapsedTime(_start);

    public Task Delay(TimeSpan duration, CancellationToken cancellationToken = default) =>
        Task.Delay(duration, time, cancellationToken);

    public IToolkitTimer CreateTimer(TimeSpan interval, Action callback) => new Repeating(time, interval, callback);

    private sealed class Repeating(TimeProvider time, TimeSpan interval, Action callback) : IToolkitTimer
    {
        private System.Threading.ITimer? _timer;

        public bool IsRunning => _timer is not null;

        public void Start() => _timer ??= time.CreateTimer(_ => callback(), null, interval, interval);

        public void Stop()
        {
            _timer?.Dispose();
            _timer = null;
        }

        public void Dispose() => Stop();
    }
}
