using BrewDeck.Core.Running;
using BrewDeck.Deck;
using BrewDeck.Simulator.Rehearsing;

namespace BrewDeck.Rehearsals;

/// <summary>What the deck may see of the virtual plant: dials, samples and signs, never the truth.</summary>
internal sealed class PlantView(RehearsalPlayer player)
{
    public IReadOnlyList<Sign> Signs => [.. player.LiveMishaps.Asking.Select(t => new Sign(t.Mishap.Kind, t.About, t.Acts) { Worse = t.Worse })];

    public IReadOnlyList<Tending> Tending =>
        [.. player.LiveMishaps.All.Where(t => t.LeftS > 0).Select(t => new Tending(t.LeftS))];

    public IReadOnlyList<Dial> Dials =>
    [
        .. player.Plant.Truth.Tanks.Select(t => t.Id).Where(id => player.Plant[id].LiquidKg > 0 && !player.IsClean(id))
            .Select(id => new Dial(id, player.Instruments.ShownC(id), player.Instruments.ShownL(id))),
    ];

    public Shown? Look(ReadingKind kind, string vessel)
    {
        if (player.Instruments.Read(kind, vessel) is not { } reading)
            return null;
        var hot = player.Plant.Faults.SampleC;
        return new Shown(reading.Value, kind == ReadingKind.Gravity && vessel == player.Plant.Truth.Profile.Kettle.Id && !double.IsNaN(hot) ? hot : null);
    }
}
