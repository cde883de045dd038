using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Deck.Wording;

/// <summary>What goes wrong and shows in no reading.</summary>
public static class TroubleWords
{
    /// <summary>As a line of the log: "circuit A has tripped".</summary>
    public static string Happens(Trouble trouble, Brewhouse brewhouse, Func<string, string> titleOf) => trouble.Kind switch
    {
        TroubleKind.RunoffStuck => "the run-off is stuck",
        TroubleKind.CircuitTripped => $"circuit {trouble.About} has tripped",
        TroubleKind.ElementFailed => $"{Element(trouble.About, brewhouse)} does not heat",
        TroubleKind.BoilInterrupted => "the boil has stopped",
        TroubleKind.AdditionMissed => $"forgotten: {titleOf(trouble.About)}",
        _ => Names.Plainly(trouble.Kind.ToString()),
    };

    /// <summary>"circuit A is on again".</summary>
    public static string Over(Trouble trouble, Brewhouse brewhouse, Func<string, string> titleOf) => trouble.Kind switch
    {
        TroubleKind.RunoffStuck => "the run-off runs again",
        TroubleKind.CircuitTripped => $"circuit {trouble.About} is on again",
        TroubleKind.ElementFailed => $"{Element(trouble.About, brewhouse)} heats again",
        TroubleKind.BoilInterrupted => "it boils again",
        _ => "over: " + Happens(trouble, brewhouse, titleOf),
    };

    /// <summary>What to do at once, before anything is chosen; empty: nothing.</summary>
    public static string AtOnce(Trouble trouble) => trouble.Kind switch
    {
        TroubleKind.RunoffStuck => "Stop the pump: its pull breaks the false bottom.",
        TroubleKind.CircuitTripped => "Leave the breaker off until its cause is found; do not touch wet plugs.",
        TroubleKind.ElementFailed => "Switch it off at the breaker; touch nothing in the vessel while it is live.",
        TroubleKind.BoilInterrupted => "Before it boils again: stir first, it may rise suddenly.",
        TroubleKind.AdditionMissed => "If it goes in now: slowly, it foams.",
        _ => "",
    };

    private static string Element(string about, Brewhouse brewhouse) => Trouble.ElementOf(about) is var (vessel, number)
        ? $"element {number} of {Names.The(brewhouse, vessel)}"
        : $"element {about}";
}
