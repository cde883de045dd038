using System.Collections.Immutable;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Wording;
using BrewDeck.Terminal.Paint;

namespace BrewDeck.Commands;

/// <summary>How the deck looks and sounds.</summary>
/// <param name="BellCommand">For a louder sound; null: the terminal's bell alone.</param>
/// <param name="Plain">Prints lines instead of drawing.</param>
/// <param name="Probe">Path of a file, FIFO or serial device that readings come from, or an MQTT topic; null: none.</param>
/// <param name="TakenByRule">Kinds of reading that are taken from the probe without a key.</param>
internal sealed record DeckOptions(UnitSystem Units, Theme Theme, string? BellCommand, bool Plain, string? Probe, ImmutableArray<ReadingKind> TakenByRule)
{
    /// <summary>The language that the deck speaks.</summary>
    public Tongue Tongue { get; init; } = Tongue.English;

    public Notation Notation => new(Units, TimeZoneInfo.Local) { Tongue = Tongue };
}
