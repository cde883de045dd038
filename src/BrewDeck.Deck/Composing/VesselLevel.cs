using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Composing;

internal static class VesselLevel
{
    public static double StandsL(VesselState state) => state.LiquidKg <= 0
        ? 0
        : SugarSolution.VolumeL(state.LiquidKg, state.Plato, state.TempC) + (0.67 * state.GrainDryKg);
}
