using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Tests.Deck;

/// <summary>Keeps batches in memory; can be made to fail like a full disk.</summary>
internal sealed class MemoryStore : IBatchStore
{
    private readonly List<List<RunEvent>> _batches = [];

    public string? Trouble { get; set; }

    public IReadOnlyList<RunEvent> this[int batch] => _batches[batch - 1];

    public IReadOnlyList<BatchHead> List() => [.. BatchHead.NewestFirst(_batches.Select(Head))];

    public int Open(BatchOpened opened)
    {
        Fail();
        _batches.Add([opened]);
        return _batches.Count;
    }

    public void Append(int batch, RunEvent happened)
    {
        Fail();
        _batches[batch - 1].Add(happened);
    }

    public IReadOnlyList<RunEvent> Read(int batch)
    {
        Fail();
        return [.. _batches[batch - 1]];
    }

    private void Fail()
    {
        if (Trouble is { } trouble)
            throw new LogbookException(trouble);
    }

    private static BatchHead Head(List<RunEvent> events, int index)
    {
        var state = RunFold.Of(events);
        return new BatchHead(index + 1, state.Plan!.Recipe.Name, state.Plan.Brewhouse.Name, events[0].AtMs, events.Count, state.Status, state.Rehearsed);
    }
}
