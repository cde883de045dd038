using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>Why a plan cannot be brewed.</summary>
public static class RefusalWords
{
    /// <summary>"Mash in the tun: 71.4 L, the limit is 61.0 L."</summary>
    public static string Of(Refusal refusal, Notation notation) =>
        notation.Text($"{LimitWords.Name(refusal.Code, notation)}: {notation.Value(refusal.Value, refusal.Unit)}, the limit is {notation.Value(refusal.Bound, refusal.Unit)}.");

    /// <summary>All mends in one line; empty when there is none.</summary>
    public static string Mends(Refusal refusal, Notation notation) =>
        string.Join(" Or: ", refusal.Mends.Select(m => MendWords.Of(m, notation)));

    public static ImmutableArray<Line> Lines(ImmutableArray<Refusal> refusals, Notation notation) =>
    [
        .. refusals.SelectMany(r => r.Mends
            .Select(m => Line.Of("  " + MendWords.Of(m, notation)))
            .Prepend(Line.Of(Of(r, notation), Tone.Warning))),
    ];
}
