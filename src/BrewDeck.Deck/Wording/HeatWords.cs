using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Wording;

/// <summary>Heat that is switched by hand while a run-off runs.</summary>
public static class HeatWords
{
    /// <summary>"In 2 minutes covered, heat on: kettle."</summary>
    public static string Soon(HeatSwitch heat, double inS, Brewhouse house, Notation notation) => heat.On
        ? notation.Text($"In {Durations.Words(inS, notation)} covered, heat on: {Vessel(heat, house, notation)}.")
        : notation.Text($"In {Durations.Words(inS, notation)} its elements show, heat off: {Vessel(heat, house, notation)}.");

    public static string Now(HeatSwitch heat, Brewhouse house, Notation notation) => heat.On
        ? notation.Text($"Covered: heat on now, after a look: {Vessel(heat, house, notation)}.")
        : notation.Text($"Its elements are about to show, heat off now: {Vessel(heat, house, notation)}.");

    /// <summary>In place of the deck's line that says when hands are needed.</summary>
    public static string Needed(HeatSwitch heat, double inS, string clock, Brewhouse house, Notation notation) => heat.On
        ? notation.Text($"Hands in {Durations.Words(inS, notation)}, at {clock}, for heat on: {Vessel(heat, house, notation)}.")
        : notation.Text($"Hands in {Durations.Words(inS, notation)}, at {clock}, for heat off: {Vessel(heat, house, notation)}.");

    private static string Vessel(HeatSwitch heat, Brewhouse house, Notation notation) => Names.Vessel(house, heat.Vessel, notation);
}
