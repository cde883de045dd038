using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Deck.Probes;

namespace BrewDeck.Probes;

/// <summary>Cuts a probe's bytes into lines and keeps what they say until it is taken; memory stays bounded whatever comes.</summary>
internal sealed class LineCutter
{
    public const int LongestLine = 4096;

    // of a flood the newest stays for each place: more places than a brewhouse has are not kept
    private const int MostPlaces = 64;

    private readonly byte[] _line = new byte[LongestLine];
    private readonly Dictionary<(ReadingKind, string), ProbeValue> _values = [];
    private int _length;
    private bool _passing;
    private string? _why;
    private int _told;

    /// <summary>Lines that could not be read, since the start.</summary>
    public int Unread { get; private set; }

    /// <summary>What has begun is no whole line: the rest of it is passed over without a word.</summary>
    public void PassOver() => (_length, _passing) = (0, true);

    /// <summary>Forgets an unfinished line: its end will not come.</summary>
    public void Forget() => (_length, _passing) = (0, false);

    public void Add(ReadOnlySpan<byte> bytes, DateTimeOffset now)
    {
        foreach (var b in bytes)
        {
            if (b is (byte)'\n' or (byte)'\r')
                End(now);
            else if (_length < LongestLine)
                _line[_length++] = b;
            else if (!_passing)
                Refuse($"it is longer than {LongestLine} bytes");
        }
    }

    /// <summary>What has come since the last time; null: nothing.</summary>
    public Input? Take()
    {
        if (_values.Count == 0 && Unread == _told)
            return null;
        var offered = new Input.Offered([.. _values.Values], Unread, _why);
        _values.Clear();
        _told = Unread;
        return offered;
    }

    private void End(DateTimeOffset now)
    {
        if (!_passing && _length > 0)
            Read(now);
        Forget();
    }

    private void Read(DateTimeOffset now)
    {
        var values = ProbeLine.Read(_line.AsMemory(0, _length), now, out var why);
        if (why.Length > 0)
            Refuse(why);
        foreach (var value in values)
        {
            if (_values.Count < MostPlaces || _values.ContainsKey((value.Kind, value.Vessel)))
                _values[(value.Kind, value.Vessel)] = value;
        }
    }

    private void Refuse(string why)
    {
        PassOver();
        (_why, Unread) = (why, Unread + 1);
    }
}
