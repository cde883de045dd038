using System.Collections.Immutable;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Keys;

/// <summary>One row of the key table.</summary>
/// <param name="Shown">The key as people call it.</param>
/// <param name="Hint">Words for the bottom line; empty: the key works but is not shown there.</param>
/// <param name="Help">One sentence for the help.</param>
public sealed record KeyBinding(
    KeyContext Where, Command Command, string Shown, ImmutableArray<KeyStroke> Strokes, Phrase Hint, Phrase Help);
