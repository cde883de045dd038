using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Learning;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck;

/// <summary>The batches of one brewhouse as they teach about it, newest last.</summary>
public static class LessonBook
{
    /// <param name="rehearsed">Rehearsed batches too.</param>
    /// <exception cref="LogbookException">A batch cannot be read.</exception>
    public static ImmutableArray<BatchTrace> Of(IBatchReader store, Brewhouse brewhouse, bool rehearsed) =>
    [
        .. store.List()
            .Where(b => b.Brewhouse == brewhouse.Name && b.Status == RunStatus.Complete && (rehearsed || !b.Rehearsed))
            .Take(Lessons.MostBatches)
            .Select(b => BatchTrace.Of(b.Number, store.Read(b.Number))).OfType<BatchTrace>().Reverse(),
    ];
}
