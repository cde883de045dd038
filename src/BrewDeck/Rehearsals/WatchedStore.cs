using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Rehearsals;

/// <summary>A store that lets the virtual plant see what was written: it follows the events, whoever caused them.</summary>
internal sealed class WatchedStore(IBatchStore store) : IBatchStore
{
    private readonly List<RunEvent> _fresh = [];

    public IReadOnlyList<BatchHead> List() => store.List();

    public IReadOnlyList<string> Notices => store.Notices;

    public int Open(BatchOpened opened)
    {
        var number = store.Open(opened);
        _fresh.Add(opened);
        return number;
    }

    public void Append(int batch, RunEvent happened)
    {
        store.Append(batch, happened);
        _fresh.Add(happened);
    }

    public IReadOnlyList<RunEvent> Read(int batch) => store.Read(batch);

    /// <summary>What was written since the last call.</summary>
    public IReadOnlyList<RunEvent> Take()
    {
        RunEvent[] taken = [.. _fresh];
        _fresh.Clear();
        return taken;
    }
}
