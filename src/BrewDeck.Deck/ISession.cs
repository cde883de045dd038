using BrewDeck.Deck.Keys;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck;

/// <summary>The deck as the terminal sees it: keys go in at one door, a screen comes out.</summary>
public interface ISession
{
    /// <summary>What to show after the last input.</summary>
    Screen Screen { get; }

    /// <summary>Takes one input together with the only clock reading there is.</summary>
    void Receive(Input input, DateTimeOffset now);

    /// <summary>When the screen changes next without an input; null: it does not.</summary>
    DateTimeOffset? NextTick { get; }

    /// <summary>The place where the next key is struck.</summary>
    KeyContext Where => KeyContext.None;

    /// <summary>The brewer has left the program.</summary>
    bool Ended { get; }

    /// <summary>For the terminal's window: what is wanted of the brewer.</summary>
    string Title => "";

    /// <summary>True once for each time that the bell should ring.</summary>
    bool TakeBell();
}
