using System.Collections.Immutable;
using BrewDeck.Core.Waters;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.WaterMaking;

/// <summary>What an analysis says when its lines are put together, and whether they can be.</summary>
internal static class WaterFigures
{
    public static ImmutableArray<Line> Of(WaterSupply water, Notation notation)
    {
        var ions = water.Source.Ions;
        if (ions == default)
            return [Line.Of(notation.Text("Type the analysis that the waterworks prints, ion by ion."), Tone.Due)];
        var off = notation.Number(100 * water.Source.Imbalance, "0.#");
        var balance = water.Source.Imbalance <= SafeWater.Imbalance
            ? Line.Of(notation.Text($"Cations and anions differ by {off} %."), Tone.Muted)
            : Line.Of(notation.Text($"Cations and anions differ by {off} %: more than {notation.Number(100 * SafeWater.Imbalance, "0")} % is a slip of reading or typing."), Tone.Warning);
        return
        [
            balance,
            Line.Of(notation.Text($"Residual alkalinity {notation.Number(ions.ResidualAlkalinityAsCaCO3, "0")} mg/L as CaCO3")),
            .. ions.SulphateToChloride is { } ratio ? new[] { Line.Of(notation.Text($"Sulphate to chloride {notation.Number(ratio, "0.0")} to 1")) } : [],
            .. water.Acid is null ? [] : new[] { Line.Of(notation.Text("Strong acid burns: goggles and gloves, and add it to water."), Tone.Warning) },
            .. water.Salts.Contains(Core.Physics.BrewingSalt.SlakedLime) ? new[] { Line.Of(notation.Text("Slaked lime is caustic: goggles and gloves."), Tone.Warning) } : [],
        ];
    }
}
