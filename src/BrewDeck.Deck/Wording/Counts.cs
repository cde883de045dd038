namespace BrewDeck.Deck.Wording;

/// <summary>How many, in words.</summary>
internal static class Counts
{
    public static string Batches(int count, Notation notation) => count == 1 ? notation.Text("1 batch") : notation.Text($"{count} batches");
}
