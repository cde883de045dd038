using System.Collections.Immutable;

using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck;

/// <summary>Which batches are listed.</summary>
public enum BatchShare
{
    All,
    Real,
    Rehearsed,
}

public enum BatchOrder
{
    Newest,
    Oldest,
    Recipe,
    Brewhouse,
    State,
}

/// <summary>What is asked of the list of batches: words, filters and an order.</summary>
/// <param name="Recipe">Only batches of it; null: of any.</param>
/// <param name="Brewhouse">Only batches brewed on it; null: on any.</param>
public sealed record BatchQuery(
    string Search = "", BatchShare Share = BatchShare.All, string? Recipe = null, string? Brewhouse = null, BatchOrder Order = BatchOrder.Newest)
{
    /// <param name="heads">Newest first.</param>
    public ImmutableArray<BatchHead> Of(IReadOnlyList<BatchHead> heads, Notation notation) => [.. Ordered(BatchSearch.Of(heads, Search, notation).Where(Matches))];

    private bool Matches(BatchHead head) =>
        (Share == BatchShare.All || head.Rehearsed == (Share == BatchShare.Rehearsed))
        && (Recipe is null || head.Recipe == Recipe)
        && (Brewhouse is null || head.Brewhouse == Brewhouse);

    // a stable sort: the newest first within each
    private IEnumerable<BatchHead> Ordered(IEnumerable<BatchHead> heads) => Order switch
    {
        BatchOrder.Oldest => heads.Reverse(),
        BatchOrder.Recipe => heads.OrderBy(h => h.Recipe, StringComparer.OrdinalIgnoreCase),
        BatchOrder.Brewhouse => heads.OrderBy(h => h.Brewhouse, StringComparer.OrdinalIgnoreCase),
        BatchOrder.State => heads.OrderBy(h => h.Status),
        _ => heads,
    };
}
