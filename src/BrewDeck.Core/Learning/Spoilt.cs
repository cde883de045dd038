namespace BrewDeck.Core.Learning;

/// <summary>Why a step of a batch says nothing about the brewhouse: what is measured there is the trouble, not the plant.</summary>
public enum Spoilt
{
    /// <summary>Wort went over the rim: it did not boil off.</summary>
    BoiledOver,

    RunOffStuck,

    BoilStopped,

    /// <summary>A circuit had tripped, or not every element was on.</summary>
    WithoutPower,

    /// <summary>Something else went wrong in it on purpose, in a rehearsal.</summary>
    Mishap,

    /// <summary>It was on hold in between.</summary>
    Held,

    /// <summary>It was ended before it was there.</summary>
    EndedShort,

    /// <summary>The key or the reading came long after it was there: how long it took is not known.</summary>
    Late,
}
