using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>Why a plan cannot be brewed.</summary>
public static class RefusalWords
{
    /// <summary>"Mash in the tun: 71.4 L, the limit is 61.0 L."</summary>
    public static string Of(Refusal refusal, Notation notation) => refusal.Code switch
    {
        // with a limit on both sides
        "circuits" => notation.Text($"{LimitWords.Name(refusal.Code, notation)}: {notation.Value(refusal.Value, refusal.Unit)}, the brewhouse has {notation.Value(refusal.Bound, refusal.Unit)}."),
        "batch_volume" => notation.Text($"{LimitWords.Name(refusal.Code, notation)}: {notation.Value(refusal.Value, refusal.Unit)}, and it must be more than {notation.Value(refusal.Bound, refusal.Unit)}."),
        RefusalCode.NoCoil => notation.Text("This brewhouse has no coil in a hot liquor tank to heat the mash through."),
        _ => notation.Text($"{LimitWords.Name(refusal.Code, notation)}: {notation.Value(refusal.Value, refusal.Unit)}, the limit is {notation.Value(refusal.Bound, refusal.Unit)}."),
    };

    /// <summary>All mends in one line; empty when there is none.</summary>
    public static string Mends(Refusal refusal, Notation notation) =>
        string.Join(" Or: ", refusal.Mends.Select(m => MendWords.Of(m, notation)));

    public static ImmutableArray<Line> Lines(ImmutableArray<Refusal> refusals, Notation notation) =>
    [
        .. refusals.SelectMany(r => r.Mends
            .Select(m => Line.Of("  " + MendWords.Of(m, notation)))
            .Prepend(Line.Of(Of(r, notation), Tone.Warning))),
        .. AllAtOnce(refusals).Select(m => Line.Of(notation.Text($"For all of it: {MendWords.Of(m, notation)}"), Tone.Strong)),
        Line.Of(notation.Text("q goes back to the day's choices (litres, source water, sparge, circuits)."), Tone.Muted),
        .. refusals.Any(AsksThickness)
            ? [Line.Of(notation.Text("The brewhouse's or the recipe's file says how thick the mash is."), Tone.Muted)]
            : ImmutableArray<Line>.Empty,
    ];

    private static bool AsksThickness(Refusal refusal) => refusal.Mends.Any(m => m.Code is MendCode.ThickerMash or MendCode.ThinnerMash);

    /// <summary>The mends that each of several refusals names, as far as the one that needs most of it.</summary>
    private static IEnumerable<Mend> AllAtOnce(ImmutableArray<Refusal> refusals)
    {
        if (refusals.Length < 2)
            return [];
        return refusals.SelectMany(r => r.Mends).GroupBy(m => m.Code)
            .Where(g => Steeper.ContainsKey(g.Key) && refusals.All(r => r.Mends.Any(m => m.Code == g.Key)))
            .Select(g => Steeper[g.Key] ? g.MaxBy(m => m.Value)! : g.MinBy(m => m.Value)!);
    }

    /// <summary>Mends that go further in one direction only; true: further is more.</summary>
    private static readonly Dictionary<string, bool> Steeper = new(StringComparer.Ordinal)
    {
        [MendCode.SmallerBatch] = false,
        [MendCode.ThickerMash] = false,
        [MendCode.LargerBatch] = true,
        [MendCode.ThinnerMash] = true,
    };
}
