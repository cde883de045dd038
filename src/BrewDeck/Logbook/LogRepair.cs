using BrewDeck.Core.Running;

namespace BrewDeck.Logbook;

/// <summary>
/// Mends a logbook from its two copies: each tape from its own whole lines and the database's, then the database from the tapes.
/// What is replaced stays beside it as <c>.damaged</c>.
/// </summary>
internal static class LogRepair
{
    /// <param name="limit">For each question to the database.</param>
    /// <returns>What was done, a line each; empty when all was well.</returns>
    /// <exception cref="Deck.LogbookException">The logbook is in use or may not be written.</exception>
    public static IReadOnlyList<string> Run(LogbookDisk disk, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf, TimeSpan limit) =>
        DiskTrouble.Explain(disk.Path, () =>
        {
            var done = new List<string>();
            if (!MendTapes(disk, limit, done) || !CatchesUp(disk, statusOf, done))
                MakeDatabaseAgain(disk, statusOf, done);
            return done;
        });

    /// <returns>False when the database reads well but cannot be written.</returns>
    private static bool CatchesUp(LogbookDisk disk, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf, List<string> done)
    {
        using var journal = Journal.Open(disk, statusOf);
        if (!journal.DatabaseLost)
            done.AddRange(journal.Notices);
        return !journal.DatabaseLost;
    }

    private static void MakeDatabaseAgain(LogbookDisk disk, Func<IReadOnlyList<RunEvent>, RunStatus> statusOf, List<string> done)
    {
        SetAside(disk, BatchDatabase.LogName);
        SetAside(disk, BatchDatabase.DataName);
        done.Add($"{Path.Combine(disk.Path, BatchDatabase.DataName)}: made again from the tapes, of which there are {disk.Tapes().Count()}");
        CatchesUp(disk, statusOf, done);
    }

    /// <returns>True when the database is sound and agrees with the tapes as they are now.</returns>
    private static bool MendTapes(LogbookDisk disk, TimeSpan limit, List<string> done)
    {
        using var database = GuardedDatabase.Open(disk, limit);
        if (database.Newer)
            throw BatchDatabase.TooNew(disk.Path);
        var headers = database.Headers.ToDictionary(h => h.Number);
        var sound = true;
        foreach (var batch in headers.Keys.Union(disk.Tapes().Select(t => t.Batch)).Order())
        {
            var header = headers.GetValueOrDefault(batch);
            var scan = Tape.Scan(disk, batch);
            if (scan.Newer)
                throw BatchDatabase.TooNew(disk.Path);
            if (scan.Lines.Count < (header?.Head.Events ?? 0) || (scan.Fault is not null && !scan.Torn))
                scan = Mend(disk, batch, database.Lines(batch), done);
            sound &= header is null || !LogVerify.OfDatabase(scan, header, database).Any();
        }

        return sound && database.Fault is null;
    }

    private static TapeScan Mend(LogbookDisk disk, int batch, IReadOnlyList<TapeLine> copy, List<string> done)
    {
        var name = Tape.NameOf(batch);
        var old = disk.ReadAll(name);
        var own = TapeScan.Salvage(old).ToList();
        var mended = Merge(own, copy);
        byte[] text = [.. mended.SelectMany(line => line.ToUtf8())];
        SetAside(disk, name);
        disk.Put(name, text);
        var left = own.Count(line => line.Seq >= mended.Count);
        done.Add($"{Path.Combine(disk.Path, name)}: {mended.Count} entries are whole again"
            + (left > 0 ? $"; {left} after them do not link and stay in {name}.damaged" : ""));
        return TapeScan.Of(text);
    }

    /// <summary>The longest chain that the lines of both copies make.</summary>
    private static List<TapeLine> Merge(IEnumerable<TapeLine> own, IEnumerable<TapeLine> copy)
    {
        var candidates = own.Concat(copy).ToLookup(line => line.Seq);
        var chain = new List<TapeLine>();
        TapeLine? last = null;
        while (candidates[chain.Count].FirstOrDefault(line => line.Follows(last)) is { } next)
            chain.Add(last = next);
        return chain;
    }

    private static void SetAside(LogbookDisk disk, string name)
    {
        if (disk.Files().ContainsKey(name))
            disk.Move(name, name + ".damaged");
    }
}
