using System.Globalization;

namespace BrewDeck.Deck.SetUp;

/// <summary>An answer of a set-up as it is kept, where it is one number with a unit.</summary>
internal readonly record struct KeptNumber(double Value, string Unit)
{
    /// <returns>Null for a name, a word, or several numbers such as "2 x 3.5 kW".</returns>
    public static KeptNumber? Of(string kept) =>
        kept.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var number, var unit]
        && double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? new(value, unit)
            : null;
}
