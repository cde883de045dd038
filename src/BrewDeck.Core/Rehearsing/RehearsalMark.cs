namespace BrewDeck.Core.Rehearsing;

/// <summary>What a rehearsal itself has to put on record.</summary>
public enum RehearsalMark
{
    /// <summary>The trainee does the work from here on.</summary>
    OwnHands,

    /// <summary>The stand-in brewer does the work from here on.</summary>
    StandIn,

    /// <summary>The laptop lost its power.</summary>
    PowerLost,
}
