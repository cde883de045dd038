using BrewDeck.Deck;

namespace BrewDeck.Logbook.Moving;

/// <summary>
/// Copies a logbook while the day runs. The tapes are the truth and only grow, so each is copied as far as its last whole line; the
/// database follows from them and is made anew where the copy is opened.
/// </summary>
internal static class LogBackup
{
    /// <returns>A line for each tape that is damaged: it is copied as it is.</returns>
    /// <exception cref="LogbookException">The folder cannot be written.</exception>
    public static (int Batches, IReadOnlyList<string> Faults) Write(LogbookDisk from, LogbookDisk to)
    {
        var faults = new List<string>();
        var count = 0;
        foreach (var (batch, _) in from.Tapes().ToList())
        {
            var name = Tape.NameOf(batch);
            var tape = from.ReadAll(name);
            var scan = TapeScan.Of(tape);
            var running = scan.Fault is null || scan.Torn; // an entry is being written just now
            if (!running)
                faults.Add($"{Path.Combine(from.Path, name)}:{scan.Lines.Count + 1}: {scan.Fault}; copied as it is");
            if (running && scan.Lines.Count == 0)
                continue;
            to.Put(name, running ? tape.AsSpan(0, (int)scan.GoodBytes) : tape);
            count++;
        }

        return (count, faults);
    }

    /// <summary>The batches of a folder, each checked against its hashes.</summary>
    /// <exception cref="LogbookException">One is damaged; the message names the line.</exception>
    public static IEnumerable<(int Number, IReadOnlyList<TapeLine> Lines)> Batches(LogbookDisk from)
    {
        foreach (var (batch, _) in from.Tapes().ToList())
        {
            var scan = Tape.Scan(from, batch);
            if (scan.Newer)
                throw BatchDatabase.TooNew(from.Path);
            if (scan.Fault is not null && !scan.Torn)
                throw new LogbookException($"{Path.Combine(from.Path, Tape.NameOf(batch))}:{scan.Lines.Count + 1}: {scan.Fault}; \"brewdeck log repair --logbook {from.Path}\" mends what has a second copy");
            if (scan.Lines.Count > 0)
                yield return (batch, scan.Lines);
        }
    }
}
