namespace BrewDeck.Deck.Wording;

/// <summary>What is listed, as one sentence.</summary>
public static class BatchWords
{
    public static string Of(BatchQuery query)
    {
        string?[] parts =
        [
            query.Share switch { BatchShare.Real => "real ones", BatchShare.Rehearsed => "rehearsals", _ => "real ones and rehearsals" },
            query.Recipe is { } recipe ? $"of {recipe}" : null,
            query.Brewhouse is { } brewhouse ? $"on {brewhouse}" : null,
            query.Search.Trim() is { Length: > 0 } words ? $"with \"{words}\"" : null,
            query.Order switch
            {
                BatchOrder.Oldest => "the oldest first",
                BatchOrder.Recipe => "by recipe",
                BatchOrder.Brewhouse => "by brewhouse",
                BatchOrder.State => "by state",
                _ => "the newest first",
            },
        ];
        return "Listed: " + string.Join(", ", parts.Where(p => p is not null)) + ".";
    }
}
