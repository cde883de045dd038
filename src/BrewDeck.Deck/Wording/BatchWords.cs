namespace BrewDeck.Deck.Wording;

/// <summary>What is listed, as one sentence.</summary>
public static class BatchWords
{
    public static string Of(BatchQuery query, Notation notation)
    {
        string?[] parts =
        [
            query.Share switch { BatchShare.Real => notation.Text("real ones"), BatchShare.Rehearsed => notation.Text("rehearsals"), _ => notation.Text("real ones and rehearsals") },
            query.Recipe is { } recipe ? notation.Text($"of {recipe}") : null,
            query.Brewhouse is { } brewhouse ? notation.Text($"on {brewhouse}") : null,
            query.Search.Trim() is { Length: > 0 } words ? notation.Text($"with \"{words}\"") : null,
            query.Order switch
            {
                BatchOrder.Oldest => notation.Text("the oldest first"),
                BatchOrder.Recipe => notation.Text("by recipe"),
                BatchOrder.Brewhouse => notation.Text("by brewhouse"),
                BatchOrder.State => notation.Text("by state"),
                _ => notation.Text("the newest first"),
            },
        ];
        return notation.Text($"Listed: {string.Join(", ", parts.Where(p => p is not null))}. r: other kinds.");
    }
}
