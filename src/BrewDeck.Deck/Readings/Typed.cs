using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Readings;

/// <summary>Reads one quantity as this brewer types it: a bare number is in the units that the screen shows.</summary>
public sealed class Typed(Notation notation)
{
    /// <param name="value">In the canonical unit of the kind.</param>
    /// <param name="reason">Why the text cannot be taken, one clear line; empty when it can.</param>
    public bool TryRead(ReadingKind kind, string text, out double value, out string reason)
    {
        var read = QuantityReader.Read(text, Of(kind), notation.BareUnit(Of(kind)), notation);
        (value, reason) = (read.Value, read.Why ?? "");
        return read.Ok;
    }

    private static Dimension Of(ReadingKind kind) => kind switch
    {
        ReadingKind.Temperature => Dimension.Temperature,
        ReadingKind.Volume => Dimension.Volume,
        ReadingKind.Gravity => Dimension.Gravity,
        ReadingKind.Ph => Dimension.Acidity,
        ReadingKind.Weight => Dimension.Mass,
        _ => Dimension.Number,
    };
}
