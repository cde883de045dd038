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
        Line.Of("  " + notation.Text("With fewer, one thing heats after the other; waits, and so the litres, shift a little."), Tone.Muted),
        .. costs.Select(c => Line.Of($"{(c.Circuits == inUse ? "> " : "  ")}{Says(c, costs, notation)}", c.Circuits == inUse ? Tone.Strong : Tone.Normal)),
    ];

    /// <summary>"1 circuit: 5 h 45 min (+24 min). 2 circuits: 5 h 21 min. Now 1."</summary>
    public static string Sentence(ImmutableArray<CircuitCost> costs, int inUse, Notation notation) =>
        notation.Text($"Now {Count(inUse, notation)}. {string.Join("; ", costs.Select(c => Says(c, costs, notation)))}.");

    internal static string Says(CircuitCost cost, ImmutableArray<CircuitCost> costs, Notation notation)
    {
        if (cost.Plan is not { } plan)
            return notation.Text($"{Count(cost.Circuits, notation)}: cannot be brewed");
        // of what is shown: the difference must be the one that can be reckoned from it
        var more = Minutes(plan) - costs.Where(c => c.Plan is not null).Min(c => Minutes(c.Plan!));
        return $"{Count(cost.Circuits, notation)}: {Durations.Short(plan.Totals.DayS)}{(more >= 1 ? $" (+{Durations.Short(more * 60)})" : "")}{Moves(plan, notation)}";
    }

    private static double Minutes(Plan plan) => Math.Round(plan.Totals.DayS / 60, MidpointRounding.AwayFromZero);

    /// <summary>Plugs that are moved by hand in a wet room are work, and a danger, that no minute shows.</summary>
    private static string Moves(Plan plan, Notation notation) => plan.Steps.Count(s => s.Spec.Kind == StepKind.MovePlug && HandsWords.Unplugs(s)) switch
    {
        0 => "",
        1 => notation.Text(", a plug moved once by hand"),
        var times => notation.Text($", a plug moved {times} times by hand"),
    };

    private static string Count(int circuits, Notation notation) => circuits == 1 ? notation.Text("1 circuit") : notation.Text($"{circuits} circuits");
}
