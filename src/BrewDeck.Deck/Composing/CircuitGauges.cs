using System.Collections.Immutable;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Running;
using BrewDeck.Deck.Screens;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck.Composing;

/// <summary>What the running steps draw from each circuit.</summary>
public static class CircuitGauges
{
    public static ImmutableArray<Gauge> Of(DeckMoment moment)
    {
        var setting = moment.State.Live?.Setting ?? PlantSetting.Of(moment.Plan.Brewhouse, moment.Plan.Choices);
        return [.. setting.Circuits.Zip(CircuitLoads.OfW(moment.State, moment.Forecast, setting), One)];
    }

    private static Gauge One(Circuit circuit, double watts)
    {
        var amps = watts / circuit.Volts;
        return new Gauge(
            "circuit " + circuit.Id,
            Math.Clamp(amps / circuit.Amps, 0, 1),
            $"{Notation.Number(amps, "0.0")} of {Notation.Number(circuit.Amps, "0.#")} A",
            amps > circuit.Amps ? Tone.Alarm : Tone.Normal);
    }
}
