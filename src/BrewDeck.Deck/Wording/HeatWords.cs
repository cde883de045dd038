using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Heat that is switched by hand while a run-off runs: the kettle's on, the tank's off.</summary>
public static class HeatWords
{
    /// <summary>"In 2 minutes: kettle heat on."</summary>
    public static string Soon(HeatSwitch heat, double inS, Notation notation) => heat.On
        ? notation.Text($"In {Durations.Words(inS, notation)}: kettle heat on, once its elements are covered.")
        : notation.Text($"In {Durations.Words(inS, notation)}: tank heat off, before its elements show.");

    public static string Now(HeatSwitch heat, Notation notation) => heat.On
        ? notation.Text("Now kettle heat on: look first that its elements are covered.")
        : notation.Text("Now tank heat off: its elements are about to show.");

    /// <summary>Its moment has gone by unseen.</summary>
    public static string Late(HeatSwitch heat, Notation notation) => heat.On
        ? notation.Text("Kettle heat on, if it is not yet: its elements are covered by now.")
        : notation.Text("Tank heat off, if it is not yet: its elements show by now.");

    /// <summary>In place of the deck's line that says when hands are needed.</summary>
    public static string Needed(HeatSwitch heat, double inS, string clock, Notation notation) => heat.On
        ? notation.Text($"Kettle heat on in {Durations.Short(inS)}, at {clock}.")
        : notation.Text($"Tank heat off in {Durations.Short(inS)}, at {clock}.");
}
