namespace BrewDeck.Terminal;

/// <summary>Why the deck was left.</summary>
public enum Ending
{
    /// <summary>The session ended itself.</summary>
    SessionEnded,

    /// <summary>Ctrl-C, or a signal to end.</summary>
    Stopped,

    /// <summary>The terminal is gone.</summary>
    HungUp,
}
