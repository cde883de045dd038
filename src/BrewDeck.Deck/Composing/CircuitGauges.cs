using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>What the running steps draw from each circuit.</summary>
public static class CircuitGauges
{
    public static ImmutableArray<Gauge> Of(DeckMoment moment)
    {
        var all = moment.Plan.Brewhouse.Circuits;
        return [.. all.Take(moment.Plan.Choices.Circuits ?? all.Length).Select(c => One(c, moment))];
    }

    private static Gauge One(Circuit circuit, DeckMoment moment)
    {
        var watts = moment.Rest.Where(s => moment.IsRunning(s) && s.Circuit == circuit.Id).Sum(s => s.PowerW ?? 0);
        var amps = watts / circuit.Volts;
        return new Gauge(
            circuit.Id,
            Math.Clamp(amps / circuit.Amps, 0, 1),
            $"{Notation.Number(amps, "0.0")} of {Notation.Number(circuit.Amps, "0.#")} A",
            amps > circuit.Amps ? Tone.Alarm : Tone.Normal);
    }
}
