using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>What one, two or three circuits cost in minutes.</summary>
public static class CircuitWords
{
    /// <summary>Side by side, the one in use marked; nothing when there is no choice.</summary>
    public static ImmutableArray<Line> Lines(ImmutableArray<CircuitCost> costs, int inUse, Notation notation) => costs.Length < 2 ? [] :
    [
        Line.Of(""),
        Line.Of(notation.Text("Circuits"), Tone.Strong),
        .. costs.Select(c => Line.Of($"{(c.Circuits == inUse ? "> " : "  ")}{Says(c, costs, notation)}", c.Circuits == inUse ? Tone.Strong : Tone.Normal)),
    ];

    /// <summary>"1 circuit: 5 h 45 min (+24 min). 2 circuits: 5 h 21 min. Now 1."</summary>
    public static string Sentence(ImmutableArray<CircuitCost> costs, int inUse, Notation notation) =>
        notation.Text($"Now {Count(inUse, notation)}. {string.Join("; ", costs.Select(c => Says(c, costs, notation)))}.");

    private static string Says(CircuitCost cost, ImmutableArray<CircuitCost> costs, Notation notation)
    {
        if (cost.Plan is not { } plan)
            return notation.Text($"{Count(cost.Circuits, notation)}: cannot be brewed");
        var least = costs.Where(c => c.Plan is not null).Min(c => c.Plan!.Totals.DayS);
        var more = Math.Round((plan.Totals.DayS - least) / 60);
        return $"{Count(cost.Circuits, notation)}: {Durations.Short(plan.Totals.DayS)}{(more >= 1 ? $" (+{Durations.Short(more * 60)})" : "")}";
    }

    private static string Count(int circuits, Notation notation) => circuits == 1 ? notation.Text("1 circuit") : notation.Text($"{circuits} circuits");
}
