namespace BrewDeck.Deck.Wording;

/// <summary>A text that stands in a table and is said later, in the brewer's language: a constant.</summary>
public readonly record struct Phrase(string English)
{
    public static implicit operator Phrase(string english) => new(english);
}
