namespace BrewDeck.Rehearsals;

/// <summary>Days that know nothing of each other, rehearsed on all processors and given in their order.</summary>
internal static class ManyDays
{
    /// <param name="count">How many days.</param>
    /// <param name="play">Plays the day of a number, from 0; may be called on any thread, for several days at once.</param>
    /// <returns>Each day when all before it are given; no more are kept waiting than twice the processors.</returns>
    public static IEnumerable<T> Of<T>(int count, Func<int, T> play)
    {
        var going = new Queue<Task<T>>();
        for (var i = 0; i < count; i++)
        {
            var number = i;
            going.Enqueue(Task.Run(() => play(number)));
            if (going.Count >= 2 * Environment.ProcessorCount)
                yield return going.Dequeue().GetAwaiter().GetResult();
        }
        while (going.TryDequeue(out var last))
            yield return last.GetAwaiter().GetResult();
    }
}
