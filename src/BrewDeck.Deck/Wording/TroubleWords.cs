using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running.Troubles;

namespace BrewDeck.Deck.Wording;

/// <summary>What goes wrong and shows in no reading.</summary>
public static class TroubleWords
{
    /// <summary>As a line of the log: "circuit A has tripped".</summary>
    public static string Happens(Trouble trouble, Brewhouse brewhouse, Func<string, string> titleOf, Notation notation) => trouble.Kind switch
    {
        TroubleKind.RunoffStuck => notation.Text("the run-off is stuck"),
        TroubleKind.CircuitTripped => notation.Text($"circuit {trouble.About} has tripped"),
        TroubleKind.ElementFailed => notation.Text($"{Element(trouble.About, brewhouse, notation)} does not heat"),
        TroubleKind.BoilInterrupted => notation.Text("the boil has stopped"),
        TroubleKind.AdditionMissed => notation.Text($"forgotten: {titleOf(trouble.About)}"),
        TroubleKind.BoiledOver => notation.Text("wort has boiled over"),
        _ => Names.Plainly(trouble.Kind.ToString()),
    };

    /// <summary>"circuit A is on again".</summary>
    public static string Over(Trouble trouble, Brewhouse brewhouse, Func<string, string> titleOf, Notation notation) => trouble.Kind switch
    {
        TroubleKind.RunoffStuck => notation.Text("the run-off runs again"),
        TroubleKind.CircuitTripped => notation.Text($"circuit {trouble.About} is on again"),
        TroubleKind.ElementFailed => notation.Text($"{Element(trouble.About, brewhouse, notation)} heats again"),
        TroubleKind.BoilInterrupted => notation.Text("it boils again"),
        _ => notation.Text("over: ") + Happens(trouble, brewhouse, titleOf, notation),
    };

    /// <summary>What to do at once, before anything is chosen; empty: nothing.</summary>
    public static string AtOnce(Trouble trouble, Plan plan, Notation notation) => trouble.Kind switch
    {
        TroubleKind.RunoffStuck => plan.Step(trouble.About)?.Spec.SpargeL is > 0
            ? plan.Brewhouse.Pumps.Length > 1
                ? notation.Text("Stop both pumps: they fill the tun and break the false bottom. Kettle heat off.")
                : notation.Text("Stop the pump, shut the liquor off: the tun fills, the false bottom breaks. Kettle heat off.")
            : notation.Text("Stop the pump: its pull breaks the false bottom. Kettle heat off."),
        TroubleKind.CircuitTripped => notation.Text("Leave the breaker off until its cause is found; do not touch wet plugs."),
        TroubleKind.ElementFailed => notation.Text("Switch it off at the breaker; touch nothing in the vessel while it is live."),
        TroubleKind.BoilInterrupted => notation.Text("Before it boils again: stir first, it may rise suddenly."),
        TroubleKind.AdditionMissed => notation.Text("If it goes in now: slowly, it foams."),
        TroubleKind.BoiledOver => notation.Text("Heat down, stand back. When the foam has fallen, heat up again and read the kettle (t): what went over is gone."),
        _ => "",
    };

    /// <summary>How it is told from the others of the list.</summary>
    public static string Shows(TroubleKind kind, Notation notation) => kind switch
    {
        TroubleKind.RunoffStuck => notation.Text("a trickle, the hose flat"),
        TroubleKind.CircuitTripped => notation.Text("breaker tripped, lamp out"),
        TroubleKind.ElementFailed => notation.Text("breaker on, lamp lit, no heat"),
        TroubleKind.BoilInterrupted => notation.Text("it no longer rolls, and no breaker has tripped"),
        TroubleKind.AdditionMissed => notation.Text("marked as added, still in its tub"),
        TroubleKind.BoiledOver => notation.Text("foam or wort over the rim"),
        _ => "",
    };

    /// <summary>Before a hand goes to a plug or a breaker that has tripped.</summary>
    public static ImmutableArray<string> OfCurrent(Notation notation) =>
    [
        notation.Text("Breaker off before a plug is touched; dry plug and socket, and find out why it tripped."),
        notation.Text("If it trips again: stop, and get a licensed electrician. Local codes come first."),
    ];

    private static string Element(string about, Brewhouse brewhouse, Notation notation) => Trouble.ElementOf(about) is var (vessel, number)
        ? notation.Text($"element {number} of {Names.The(brewhouse, vessel, notation)}")
        : notation.Text($"element {about}");
}
