namespace BrewDeck.Terminal;

/// <summary>
/// Collects the whole heap once enough has piled up, when all that was due is done and painted. Left alone the collector looked at its oldest
/// generation once in a brew day: measured over a day at 60 times the speed, 48 MB of memory of its own where 29 were in use.
/// </summary>
/// <param name="heapBytes">What the heap holds now, garbage included.</param>
/// <param name="collect">Collects all of it.</param>
internal sealed class HeapTidy(Func<long> heapBytes, Action collect)
{
    /// <summary>Twice what the youngest generation may hold before it is collected anyway (see the project file), bytes.</summary>
    public const long MostPiledUp = 6 << 20;

    /// <summary>Of a start nothing has been collected yet (<see cref="FirstFrame"/>).</summary>
    private long _tidyBytes;

    public static HeapTidy OfThisProcess() => new(
        () => GC.GetTotalMemory(forceFullCollection: false),
        () => GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true));

    /// <summary>Call it when nothing else is to be done.</summary>
    public void Tidy()
    {
        if (heapBytes() - _tidyBytes < MostPiledUp)
            return;
        collect();
        _tidyBytes = heapBytes();
    }
}
