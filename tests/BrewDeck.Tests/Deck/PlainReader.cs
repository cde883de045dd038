using System.Globalization;
using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Tests.Deck;

/// <summary>Takes bare numbers only.</summary>
internal sealed class PlainReader : IReadingReader
{
    public bool TryRead(ReadingKind kind, string text, out double value, out string reason)
    {
        var read = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
        reason = read ? "" : "Type a number.";
        return read;
    }
}
