using BrewDeck.Core.Physics;
using BrewDeck.Core.Running;
using BrewDeck.Deck;

namespace BrewDeck.Commands;

/// <summary>Readings as typed on the deck: a bare number is in the canonical unit of its kind.</summary>
internal sealed class TypedQuantities : IReadingReader
{
    public static readonly IReadingReader Reader = new TypedQuantities();

    public static readonly GravityInstruments Instruments = new(
        (sg, celsius) => Hydrometer.TrueSg20(sg, celsius),
        brix => SugarSolution.SgFromPlato(Refractometer.WortPlato(brix)));

    public bool TryRead(ReadingKind kind, string text, out double value, out string reason)
    {
        var read = QuantityReader.Read(text, kind switch
        {
            ReadingKind.Temperature => Dimension.Temperature,
            ReadingKind.Volume => Dimension.Volume,
            ReadingKind.Gravity => Dimension.Gravity,
            ReadingKind.Weight => Dimension.Mass,
            _ => Dimension.Number,
        });
        (value, reason) = (read.Value, read.Why ?? "");
        return read.Ok;
    }
}
