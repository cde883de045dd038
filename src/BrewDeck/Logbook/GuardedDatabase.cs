using BrewDeck.Deck;

namespace BrewDeck.Logbook;

/// <summary>
/// Reads a database that may be damaged. LiteDB meets damage with any exception, or never comes back: each question has a time limit,
/// and after the first trouble nothing more is asked.
/// </summary>
internal sealed class GuardedDatabase : IDisposable
{
    private readonly TimeSpan _limit;
    private BatchDatabase? _database;

    private GuardedDatabase(TimeSpan limit) => _limit = limit;

    /// <summary>The first trouble; null while it is sound.</summary>
    public string? Fault { get; private set; }

    /// <summary>Written by a newer program.</summary>
    public bool Newer { get; private set; }

    public IReadOnlyList<BatchHeader> Headers { get; private set; } = [];

    /// <exception cref="LogbookException">Another program has it open, or it may not be read: that is no damage.</exception>
    public static GuardedDatabase Open(LogbookDisk disk, TimeSpan limit)
    {
        var guarded = new GuardedDatabase(limit);
        if (!disk.Files().ContainsKey(BatchDatabase.DataName))
        {
            guarded.Fault = "is missing";
            return guarded;
        }

        DiskTrouble.Explain(disk.Path, () => disk.Open(BatchDatabase.DataName).Dispose());
        guarded._database = guarded.Ask(() => BatchDatabase.Open(disk));
        guarded.Newer = guarded._database?.Newer == true;
        guarded.Headers = guarded.Ask(() => guarded._database!.Headers()) ?? [];
        return guarded;
    }

    /// <returns>What can be read of a batch; nothing after a fault.</returns>
    public IReadOnlyList<TapeLine> Lines(int batch) => Ask(() => _database!.Lines(batch).ToList()) ?? [];

    /// <summary>Lets go of the files, also when the database cannot be closed any more.</summary>
    public void Dispose()
    {
        if (_database is { } database)
            Ask(() => Close(database), evenAfterFault: true);
    }

    private static object Close(BatchDatabase database)
    {
        database.Dispose();
        return database;
    }

    private T? Ask<T>(Func<T> question, bool evenAfterFault = false)
        where T : class
    {
        if (Fault is not null && !evenAfterFault)
            return null;
        var answer = Task.Run(question);
        try
        {
            if (answer.Wait(_limit))
                return answer.Result;
            Fault ??= $"does not answer within {_limit.TotalSeconds:0} s";
        }
        catch (AggregateException)
        {
            Fault ??= "is damaged";
        }

        return null;
    }
}
