using System.Runtime.Versioning;
using BrewDeck.Deck;

namespace BrewDeck.Probes;

/// <summary>
/// Reads a probe on a thread of its own, four times a second, and puts what it says into the mail. A probe that goes is
/// told of once and looked for again.
/// </summary>
[SupportedOSPlatform("linux")]
internal sealed class ProbeReader : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    /// <summary>A flood waits in its pipe for the next turn.</summary>
    private const int MostATurn = 1 << 20;

    private readonly string _path;
    private readonly TimeProvider _time;
    private readonly ProbeMail _mail;
    private readonly LineCutter _lines = new();
    private readonly ManualResetEventSlim _stop = new();
    private readonly Thread _thread;
    private ProbeSource? _source;
    private bool _gone;

    public ProbeReader(string path, TimeProvider time, ProbeMail mail)
    {
        (_path, _time, _mail) = (path, time, mail);
        _source = Open(); // what comes from now on counts, also when the thread is slow to start
        _thread = new Thread(Run) { IsBackground = true, Name = "probe" };
        _thread.Start();
    }

    public void Dispose()
    {
        _stop.Set();
        _thread.Join();
        _stop.Dispose();
    }

    private void Run()
    {
        do
            Turn();
        while (!_stop.Wait(Pause));
        _source?.Dispose();
    }

    private void Turn()
    {
        _source ??= Open();
        if (_source is not null && !Drain(_source))
            Leave();
        if (_lines.Take() is { } said)
            _mail.Put(said);
        if (_source is null && !_gone)
            _mail.Put(new Input.ProbeGone());
        _gone = _source is null;
    }

    private ProbeSource? Open()
    {
        var source = ProbeSource.Open(_path);
        if (source?.Position is not null && source.SkipToEnd())
            _lines.PassOver();
        return source;
    }

    /// <returns>False: it is gone.</returns>
    private bool Drain(ProbeSource source)
    {
        Span<byte> bytes = stackalloc byte[4096];
        for (var read = 0; read < MostATurn;)
        {
            if (source.Read(bytes) is not { } count)
                return false;
            if (count == 0)
                return IsThere(source);
            _lines.Add(bytes[..count], _time.GetUtcNow());
            read += count;
        }
        return true;
    }

    /// <summary>A file that has become shorter is another one, or begins anew.</summary>
    private bool IsThere(ProbeSource source)
    {
        var file = new FileInfo(_path);
        if (source.Position is not { } at || !file.Exists || file.Length >= at)
            return file.Exists;
        Leave();
        _source = ProbeSource.Open(_path);
        return _source is not null;
    }

    private void Leave()
    {
        _source?.Dispose();
        _source = null;
        _lines.Forget();
    }
}
