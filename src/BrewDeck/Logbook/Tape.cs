namespace BrewDeck.Logbook;

/// <summary>
/// The plain-text record of one batch, JSON Lines, append only: the truth. A line is on disk when <see cref="Append"/> returns.
/// </summary>
internal sealed class Tape : IDisposable
{
    private readonly Stream _stream;

    private Tape(Stream stream, TapeScan scan)
    {
        _stream = stream;
        Bytes = scan.GoodBytes;
        Last = scan.Last;
    }

    /// <summary>Length of what is acknowledged.</summary>
    public long Bytes { get; private set; }

    public TapeLine? Last { get; private set; }

    public static string NameOf(int batch) => $"batch-{batch:D5}.jsonl";

    /// <returns>The batch's number; null when the file is not a tape.</returns>
    public static int? NumberOf(string name) =>
        name.StartsWith("batch-", StringComparison.Ordinal) && name.EndsWith(".jsonl", StringComparison.Ordinal)
        && int.TryParse(name.AsSpan(6, name.Length - 12), out var batch) && NameOf(batch) == name
            ? batch
            : null;

    public static TapeScan Scan(LogbookDisk disk, int batch) => TapeScan.Of(disk.ReadAll(NameOf(batch)));

    /// <summary>Opens it for more lines after those in <paramref name="scan"/>.</summary>
    public static Tape Open(LogbookDisk disk, int batch, TapeScan scan) => new(disk.Open(NameOf(batch)), scan);

    /// <exception cref="IOException">Not kept; what there was before stands.</exception>
    public TapeLine Append(byte[] body)
    {
        var line = TapeLine.After(Last, body);
        var text = line.ToUtf8();
        try
        {
            _stream.Position = Bytes;
            _stream.Write(text);
            _stream.Flush();
        }
        catch (IOException)
        {
            TakeBack();
            throw;
        }

        Bytes += text.Length;
        return Last = line;
    }

    public void Dispose() => _stream.Dispose();

    /// <summary>Cuts off what a failed write left; when even that fails, the next opening sees a torn line and does it.</summary>
    private void TakeBack()
    {
        try
        {
            _stream.SetLength(Bytes);
        }
        catch (IOException)
        {
        }
    }
}
