namespace BrewDeck.Logbook;

/// <summary>What a tape holds: the chain from its start as far as it is whole, and what comes after that.</summary>
/// <param name="Lines">Whole and linked.</param>
/// <param name="GoodBytes">Length of those lines.</param>
/// <param name="Fault">Why it ends there; null when the tape ends there.</param>
/// <param name="Torn">Only the last write is incomplete: it was never acknowledged, because an event is flushed before the next.</param>
/// <param name="Newer">The first line that does not read was written by a newer program.</param>
internal sealed record TapeScan(IReadOnlyList<TapeLine> Lines, long GoodBytes, string? Fault, bool Torn, bool Newer)
{
    public TapeLine? Last => Lines.Count > 0 ? Lines[^1] : null;

    public static TapeScan Of(ReadOnlySpan<byte> tape)
    {
        var lines = new List<TapeLine>();
        TapeLine? last = null;
        var at = 0;
        while (at < tape.Length)
        {
            var rest = tape[at..];
            var length = rest.IndexOf((byte)'\n');
            var line = length < 0 ? null : TapeLine.Parse(rest[..length]);
            if (line is null || !line.Follows(last))
                return Broken(lines, at, rest, length);
            lines.Add(last = line);
            at += length + 1;
        }

        return new(lines, at, null, false, false);
    }

    /// <summary>Every line that reads by itself, whether linked or not: what a repair may choose from.</summary>
    public static IEnumerable<TapeLine> Salvage(byte[] tape)
    {
        var at = 0;
        while (at < tape.Length)
        {
            var length = tape.AsSpan(at).IndexOf((byte)'\n');
            var end = length < 0 ? tape.Length : at + length;
            if (TapeLine.Parse(tape.AsSpan(at, end - at)) is { } line)
                yield return line;
            at = end + 1;
        }
    }

    private static TapeScan Broken(List<TapeLine> lines, int at, ReadOnlySpan<byte> rest, int length)
    {
        var lastLine = length < 0 || length == rest.Length - 1;
        var fault = length < 0 ? "ends in the middle of a line" : "does not match its checksum";
        return new(lines, at, fault, lastLine, TapeLine.IsNewer(length < 0 ? rest : rest[..length]));
    }
}
