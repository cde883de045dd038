using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>A brewhouse at a glance.</summary>
public static class BrewhouseWords
{
    public static ImmutableArray<Line> Of(Brewhouse brewhouse, Notation notation) =>
    [
        Line.Of(brewhouse.Name, Tone.Strong),
        .. brewhouse.Vessels.Select(v => Line.Of($"{Names.Sentence(notation.Name(v.Name))}: {notation.Volume(v.CapacityL)}{(v.RatedW > 0 ? ", " + notation.Power(v.RatedW) : "")}")),
        .. brewhouse.Circuits.Select(c => Line.Of(notation.Text($"Circuit {c.Id}: {notation.Number(c.Volts, "0")} V, {notation.Number(c.Amps, "0.#")} A"))),
        Line.Of($"{Names.Sentence(notation.Name(brewhouse.Fermenter.Name))}: {notation.Volume(brewhouse.Fermenter.CapacityL)}"),
        Line.Of(notation.Text($"Chiller: {(brewhouse.Chiller.Kind == ChillerKind.Immersion ? notation.Text("coil in the kettle") : notation.Text("counterflow"))}")),
    ];
}
