using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Tests.Deck;

/// <summary>Batches in memory.</summary>
internal sealed class MemoryStore : IBatchStore
{
    private readonly List<List<RunEvent>> _batches = [];

    public int Keep(IEnumerable<RunEvent> events)
    {
        _batches.Add([.. events]);
        return _batches.Count;
    }

    public IReadOnlyList<BatchHead> List() => [.. _batches.Select(Head).Reverse()];

    public int Open(BatchOpened opened) => Keep([opened]);

    public void Append(int batch, RunEvent happened) => _batches[batch - 1].Add(happened);

    public IReadOnlyList<RunEvent> Read(int batch) => [.. _batches[batch - 1]];

    private static BatchHead Head(List<RunEvent> events, int index)
    {
        var opened = (BatchOpened)events[0];
        return new(index + 1, opened.Plan.Recipe.Name, opened.Plan.Brewhouse.Name, opened.AtMs, events.Count, RunFold.Of(events).Status, opened.Rehearsed);
    }
}

internal sealed class NoProfiles : IProfiles
{
    public IReadOnlyList<ProfileEntry> Brewhouses() => [];

    public IReadOnlyList<ProfileEntry> Recipes() => [];

    public Brewhouse Brewhouse(ProfileEntry entry) => throw new ProfileException("none");

    public Recipe Recipe(ProfileEntry entry) => throw new ProfileException("none");
}
