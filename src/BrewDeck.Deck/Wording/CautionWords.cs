using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>The usual caution for each danger, as shown with every step that has it.</summary>
public static class CautionWords
{
    private static readonly ImmutableArray<(Cautions Danger, string Text)> Table =
    [
        (Cautions.Scald, "Scalds: wear gloves and closed shoes; keep hoses clamped."),
        (Cautions.BoilOver, "Boil-over: stay with the kettle; turn the heat down before it climbs."),
        (Cautions.MainsNearWater, "Mains near water: dry hands; sockets behind a residual-current breaker."),
        (Cautions.DryFire, "Dry fire: heat on only while the elements are covered."),
        (Cautions.Caustic, "Caustic: goggles and gloves; add it to water, never water to it."),
        (Cautions.Acid, "Acid: goggles and gloves; add acid to water, never water to acid."),
        (Cautions.Lifting, "Heavy: lift with two, or drain it first."),
        (Cautions.Pressure, "Pressure: open valves slowly; never close both ends of a hot line."),
        (Cautions.Steam, "Steam: open lids away from you."),
    ];

    public static ImmutableArray<string> Of(Cautions cautions) =>
        [.. Table.Where(t => cautions.HasFlag(t.Danger)).Select(t => t.Text)];
}
