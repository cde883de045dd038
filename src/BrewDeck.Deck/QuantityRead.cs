namespace BrewDeck.Deck;

/// <summary>A quantity that was read, or why it could not be.</summary>
/// <param name="Value">In the wanted unit; NaN when refused.</param>
/// <param name="Fault">What is wrong; null when the value stands.</param>
/// <param name="HowTo">What would be right; a caller with narrower bounds says its own instead.</param>
public readonly record struct QuantityRead(double Value, string? Fault, string? HowTo)
{
    public bool Ok => Fault is null;

    /// <summary>One line: what is wrong, and what would be right; null when the value stands.</summary>
    public string? Why => Ok ? null : $"{Fault}; {HowTo}";

    public static QuantityRead Of(double value) => new(value, null, null);

    public static QuantityRead Refused(string fault, string howTo) => new(double.NaN, fault, howTo);
}
