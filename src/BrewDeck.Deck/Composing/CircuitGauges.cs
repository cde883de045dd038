using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>What the running steps draw from each circuit.</summary>
public static class CircuitGauges
{
    public static ImmutableArray<Gauge> Of(DeckMoment moment)
    {
        var setting = moment.State.Setting();
        return [.. setting.Circuits.Zip(CircuitLoads.OfW(moment.State, moment.Forecast, setting), (x, y) => One(x, y, moment.Notation))];
    }

    private static Gauge One(Circuit circuit, double watts, Notation notation)
    {
        var amps = watts / circuit.Volts;
        return new Gauge(
            notation.Text("circuit ") + circuit.Id,
            Math.Clamp(amps / circuit.Amps, 0, 1),
            notation.Text($"{notation.Number(amps, "0.0")} of {notation.Number(circuit.Amps, "0.#")} A"),
            amps > circuit.Amps ? Tone.Alarm : Tone.Normal)
        {
            Brief = circuit.Id,
        };
    }
}
