using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Simulator.Truth;

namespace BrewDeck.Simulator.Mishaps;

/// <summary>Mishaps drawn from a seed: different ones that have a place in the day, two fifths of them mild, two fifths plain, one fifth severe.</summary>
public static class MishapDraw
{
    /// <param name="count">Fewer come when the day has no place for so many.</param>
    public static ImmutableArray<Mishap> Of(Plan plan, int seed, int count)
    {
        var chance = new Chance(seed, "mishaps");
        return
        [
            .. Enum.GetValues<MishapKind>()
                .Select(k => (Kind: k, Place: chance.Even(), Hard: chance.Even()))
                .Where(d => MishapPlaces.In(plan, new Mishap(d.Kind, Severity.Plain)) is not null)
                .OrderBy(d => d.Place)
                .Take(count)
                .Select(d => new Mishap(d.Kind, d.Hard < 0.4 ? Severity.Mild : d.Hard < 0.8 ? Severity.Plain : Severity.Severe)),
        ];
    }
}
