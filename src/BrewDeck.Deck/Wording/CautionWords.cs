using System.Collections.Immutable;
using BrewDeck.Core.Planning;

namespace BrewDeck.Deck.Wording;

/// <summary>The usual caution for each danger, as shown with every step that has it.</summary>
public static class CautionWords
{
    private static readonly ImmutableArray<(Cautions Danger, Phrase Short, Phrase Text)> Table =
    [
        (Cautions.Scald, "scalds", "Scalds: wear gloves and closed shoes; keep hoses clamped."),
        (Cautions.BoilOver, "boil-over", "Boil-over: stay with the kettle; turn the heat down before it climbs."),
        (Cautions.MainsNearWater, "mains near water", "Mains near water: dry hands; sockets behind a residual-current device."),
        (Cautions.DryFire, "dry fire", "Dry fire: heat on only while the elements are covered."),
        (Cautions.Caustic, "caustic", "Caustic: goggles and gloves; add it to water, never water to it."),
        (Cautions.Acid, "acid", "Acid: goggles and gloves; add acid to water, never water to acid."),
        (Cautions.Lifting, "heavy", "Heavy: lift with two, or in smaller loads."),
        (Cautions.Pressure, "pressure", "Pressure: open valves slowly; never close both ends of a hot line."),
        (Cautions.Oxygen, "oxygen", "Oxygen: no flame or spark near it; no oil or grease on valve, hose or hands."),
        (Cautions.Steam, "steam", "Steam: open lids away from you."),
    ];

    /// <summary>"scalds, dry fire": for lists where the sentences stand once at the end.</summary>
    public static string Short(Cautions cautions, Notation notation) =>
        string.Join(", ", Table.Where(t => cautions.HasFlag(t.Danger)).Select(t => notation.Text(t.Short)));

    public static ImmutableArray<string> Of(Cautions cautions, Notation notation) =>
        [.. Table.Where(t => cautions.HasFlag(t.Danger)).Select(t => notation.Text(t.Text))];
}
