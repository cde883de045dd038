using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Paint;

namespace BrewDeck.Commands;

/// <summary>How the deck looks and sounds.</summary>
/// <param name="BellCommand">For a louder sound; null: the terminal's bell alone.</param>
/// <param name="Plain">Prints lines instead of drawing.</param>
/// <param name="Probe">Path of a file, FIFO or serial device that readings come from; null: none.</param>
internal sealed record DeckOptions(UnitSystem Units, Theme Theme, string? BellCommand, bool Plain = false, string? Probe = null)
{
    /// <summary>The language that the deck speaks.</summary>
    public Tongue Tongue { get; init; } = Tongue.English;

    public Notation Notation => new(Units, TimeZoneInfo.Local) { Tongue = Tongue };
}
