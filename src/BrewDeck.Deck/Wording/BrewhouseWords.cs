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
        .. brewhouse.Vessels.Select(v => Line.Of($"{Names.Sentence(notation.Name(v.Name))}: {notation.Volume(v.CapacityL)}{(v.RatedW > 0 ? ", " + Heat(v, notation) : "")}")),
        // in one line: with what stands below they would not all have room on a small screen
        Line.Of(string.Join("; ", brewhouse.Circuits.Select(c => notation.Text($"Circuit {c.Id}: {notation.Number(c.Volts, "0")} V, {notation.Number(c.Amps, "0.#")} A")))),
        .. brewhouse.Circuits.Length < 2 ? [] : new[] { Line.Of(notation.Text("Fewer circuits only today? The day's choices ask for that."), Tone.Muted) },
        Line.Of($"{Names.Sentence(notation.Name(brewhouse.Fermenter.Name))}: {notation.Volume(brewhouse.Fermenter.CapacityL)}"),
        Line.Of(notation.Text($"Chiller: {(brewhouse.Chiller.IsCoil ? notation.Text("coil in the kettle") : notation.Text("counterflow"))}")),
    ];

    private static string Heat(Vessel vessel, Notation notation) => vessel.Burner?.Medium switch
    {
        HeatMedium.Gas => notation.Text($"{notation.Power(vessel.RatedW)} of gas"),
        HeatMedium.Steam => notation.Text($"{notation.Power(vessel.RatedW)} of steam"),
        _ => notation.Power(vessel.RatedW),
    };
}
