namespace BrewDeck.Terminal.Paint;

/// <summary>Which colours the deck wears.</summary>
public enum Theme
{
    Dark,

    /// <summary>Dark text on a light ground, for outdoors.</summary>
    Light,

    /// <summary>Black and white with the strongest hues, for steam on the glasses.</summary>
    Contrast,
}
