namespace BrewDeck.Deck;

/// <summary>A quantity that was read, or why it could not be.</summary>
/// <param name="Value">In the wanted unit; NaN when refused.</param>
/// <param name="Why">One line: what is wrong, and what would be right; null when the value stands.</param>
public readonly record struct QuantityRead(double Value, string? Why)
{
    public bool Ok => Why is null;

    public static QuantityRead Of(double value) => new(value, null);

    public static QuantityRead Refused(string why) => new(double.NaN, why);
}
