namespace BrewDeck.Logbook;

/// <summary>What was checked, and one line for each fault: where, and what.</summary>
/// <param name="TapesAlone">The database was left to the deck that has it open.</param>
internal sealed record VerifyReport(int Batches, int Events, IReadOnlyList<string> Faults, bool TapesAlone = false);

/// <summary>
/// Holds every byte of the logbook against its hash: the tapes by themselves, then the database against them. Changes nothing.
/// </summary>
internal static class LogVerify
{
    /// <param name="limit">For each question to the database.</param>
    /// <exception cref="Deck.LogbookException">The logbook is in use or may not be read.</exception>
    public static VerifyReport Of(LogbookDisk disk, TimeSpan limit)
    {
        using var database = GuardedDatabase.Open(disk, limit);
        var headers = database.Headers.ToDictionary(h => h.Number);
        var faults = new List<string>();
        var events = 0;
        var batches = headers.Keys.Union(disk.Tapes().Select(t => t.Batch)).Order().ToList();
        foreach (var batch in batches)
        {
            var scan = Tape.Scan(disk, batch);
            events += scan.Lines.Count;
            var found = OfTape(scan).Concat(OfDatabase(scan, headers.GetValueOrDefault(batch), database));
            faults.AddRange(found.Select(fault => $"{Path.Combine(disk.Path, Tape.NameOf(batch))}{fault}"));
        }

        if (database.Fault is { } trouble)
            faults.Add($"{Path.Combine(disk.Path, BatchDatabase.DataName)}: {trouble}; \"brewdeck log repair\" makes it again");
        return new(batches.Count, events, faults);
    }

    /// <summary>Beside an open deck: each tape by itself.</summary>
    /// <exception cref="Deck.LogbookException">The folder may not be read.</exception>
    public static VerifyReport OfTapes(LogbookDisk disk) => DiskTrouble.Explain(disk.Path, () =>
    {
        // an end that does not read may just be being written
        TapeScan Scan(int batch) => Tape.Scan(disk, batch) is { Torn: false } scan ? scan : Tape.Scan(disk, batch);
        var scans = disk.Tapes().Select(t => (Name: Path.Combine(disk.Path, Tape.NameOf(t.Batch)), Scan: Scan(t.Batch))).ToList();
        return new VerifyReport(
            scans.Count, scans.Sum(t => t.Scan.Lines.Count), [.. scans.SelectMany(t => OfTape(t.Scan).Select(fault => t.Name + fault))], TapesAlone: true);
    });

    /// <returns>Faults of a tape, each from the colon after its name on.</returns>
    private static IEnumerable<string> OfTape(TapeScan scan)
    {
        if (scan.Fault is { } fault)
            yield return $":{scan.Lines.Count + 1}: {fault}";
        foreach (var line in scan.Lines)
        {
            if (Unreadable(line) is { } why)
                yield return $":{line.Seq + 1}: {why}";
        }
    }

    /// <returns>Where a batch's database copy differs from its tape.</returns>
    public static IEnumerable<string> OfDatabase(TapeScan scan, BatchHeader? header, GuardedDatabase database)
    {
        if (database.Fault is not null)
            yield break;
        if (header is null)
        {
            yield return ": is not in the database yet; the next start takes it in";
            yield break;
        }

        var copy = database.Lines(header.Number);
        if (scan.Fault is null && scan.Lines.Count < header.Head.Events)
            yield return $": has {scan.Lines.Count} whole entries, the database {header.Head.Events}";
        if (!IsChain(copy) || copy.Count != header.Head.Events || !copy[^1].Hash.AsSpan().SequenceEqual(header.Hash))
            yield return ": its copy in the database is damaged";
        else if (copy.Zip(scan.Lines).Any(pair => !pair.First.Hash.AsSpan().SequenceEqual(pair.Second.Hash)))
            yield return ": its copy in the database is of other events";
        else if (!Describes(header, copy[0]))
            yield return ": its header in the database is damaged";
    }

    private static bool IsChain(IReadOnlyList<TapeLine> lines) =>
        lines.Select((line, i) => line.Follows(i == 0 ? null : lines[i - 1])).All(follows => follows);

    private static bool Describes(BatchHeader header, TapeLine first) =>
        Unreadable(first) is null
        && first.ToEvent() is Core.Running.BatchOpened opened
        && BatchHeader.Of(header.Number, opened, header.Head.Status, first, 0).Head with { Events = header.Head.Events } == header.Head;

    private static string? Unreadable(TapeLine line)
    {
        try
        {
            line.ToEvent();
            return null;
        }
        catch (FormatException e)
        {
            return e.Message;
        }
    }
}
