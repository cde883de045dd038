namespace BrewDeck.Deck.Keys;

/// <summary>What a key asks for; the page decides what that means where it is.</summary>
public enum Command
{
    GoOn,
    Reading,
    OtherReading,
    Undo,
    Note,
    Hold,
    Remedies,
    RunSheet,
    Skip,
    Abort,
    WipeLock,
    Help,
    Back,
    Choose,
    Up,
    Down,
    PageUp,
    PageDown,
    First,
    Last,
    NextKind,
    PreviousKind,
    PickRow,
    Change,
    Faster,
    Slower,
    Pause,
    OwnHands,
}
