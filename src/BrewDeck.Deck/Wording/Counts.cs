namespace BrewDeck.Deck.Wording;

/// <summary>How many, in words.</summary>
internal static class Counts
{
    public static string Batches(int count, Notation notation) => count == 1 ? notation.Text("1 batch") : notation.Text($"{count} batches");

    public static string Of(int count, int all, Notation notation) => all == 1 ? notation.Text($"{count} of 1 batch") : notation.Text($"{count} of {all} batches");
}
