using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Trends;

/// <summary>The followed figures of batches.</summary>
public static class FigureRows
{
    /// <summary>Read from each batch's events, in the order of <see cref="BatchFigures.All"/>.</summary>
    /// <exception cref="LogbookException">A batch cannot be read.</exception>
    public static IReadOnlyList<double?[]> Of(IBatchStore store, IReadOnlyList<BatchHead> heads) =>
        [.. heads.Select(h => BatchFigures.Of(RunFold.RecordOf(store.Read(h.Number))))];

    /// <summary>One figure over the batches that have it.</summary>
    public static List<TrendPoint> Points(IReadOnlyList<(BatchHead Head, double?[] Values)> rows, int figure) =>
        [.. rows.Where(r => r.Values[figure] is not null).Select(r => new TrendPoint(r.Head.Number, r.Values[figure]!.Value))];
}
