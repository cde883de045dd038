namespace BrewDeck.Deck.Keys;

/// <summary>Where a key is struck; the same key may ask for different things in different places.</summary>
[Flags]
public enum KeyContext
{
    None = 0,
    Deck = 1,
    List = 2,
    Choices = 4,
    Plan = 8,
    Text = 16,
    Batch = 32,
    Entry = 64,
    Choice = 128,

    /// <summary>Beside the deck while a rehearsal runs.</summary>
    Rehearsal = 256,

    /// <summary>Beside an entry that may be for another kind of reading.</summary>
    Kinds = 512,

    Screens = List | Choices | Plan | Text | Batch,
    Scrolled = Plan | Text | Batch,
}
