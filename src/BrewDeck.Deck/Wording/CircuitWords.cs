using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>What one, two or three circuits cost in minutes.</summary>
public static class CircuitWords
{
    /// <summary>Side by side, the one in use marked; nothing when there is no choice.</summary>
    public static ImmutableArray<Line> Lines(ImmutableArray<CircuitCost> costs, int inUse) => costs.Length < 2 ? [] :
    [
        Line.Of(""),
        Line.Of("Circuits", Tone.Strong),
        .. costs.Select(c => Line.Of($"{(c.Circuits == inUse ? "> " : "  ")}{Says(c, costs)}", c.Circuits == inUse ? Tone.Strong : Tone.Normal)),
    ];

    /// <summary>"1 circuit: 5 h 45 min (+24 min). 2 circuits: 5 h 21 min. Now 1."</summary>
    public static string Sentence(ImmutableArray<CircuitCost> costs, int inUse) =>
        $"Now {Count(inUse)}. {string.Join("; ", costs.Select(c => Says(c, costs)))}.";

    private static string Says(CircuitCost cost, ImmutableArray<CircuitCost> costs)
    {
        if (cost.Plan is not { } plan)
            return $"{Count(cost.Circuits)}: cannot be brewed";
        var least = costs.Where(c => c.Plan is not null).Min(c => c.Plan!.Totals.DayS);
        var more = Math.Round((plan.Totals.DayS - least) / 60);
        return $"{Count(cost.Circuits)}: {Durations.Short(plan.Totals.DayS)}{(more >= 1 ? $" (+{Durations.Short(more * 60)})" : "")}";
    }

    private static string Count(int circuits) => circuits == 1 ? "1 circuit" : $"{circuits} circuits";
}
