using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Composing;

internal static class VesselLevel
{
    public static double StandsL(VesselState state) => state.LiquidKg + (0.67 * state.GrainDryKg);
}
