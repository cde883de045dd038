using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Deck.Wording;

/// <summary>Why a plan cannot be brewed, and what would mend it.</summary>
public static class RefusalWords
{
    /// <summary>"Mash tun volume: 71.4 L, at most 61.0 L."</summary>
    public static string Of(Refusal refusal, Notation notation) =>
        $"{Names.Sentence(Names.Plainly(refusal.Code))}: {notation.Value(refusal.Value, refusal.Unit)}, the limit is {notation.Value(refusal.Bound, refusal.Unit)}.";

    public static string Mend(Mend mend, Notation notation)
    {
        var value = notation.Value(mend.Value, mend.Unit);
        return mend.Code switch
        {
            "smaller_batch" => $"Brew a smaller batch: {value} into the fermenter.",
            "larger_batch" => $"Brew a larger batch: {value} into the fermenter.",
            "thicker_mash" => $"Mash thicker: {value}.",
            "thinner_mash" => $"Mash thinner: {value}.",
            "batch_sparge" => "Sparge in one go instead of fly sparging.",
            "fly_sparge" => "Fly sparge instead.",
            "no_sparge" => "Do not sparge.",
            "more_circuits" => $"Use more circuits: {value}.",
            "longer_boil" => $"Boil longer: {value}.",
            _ => $"{Names.Sentence(Names.Plainly(mend.Code))}: {value}.",
        };
    }

    public static ImmutableArray<Line> Lines(ImmutableArray<Refusal> refusals, Notation notation) =>
    [
        .. refusals.SelectMany(r => r.Mends
            .Select(m => Line.Of("  " + Mend(m, notation)))
            .Prepend(Line.Of(Of(r, notation), Tone.Warning))),
    ];

    /// <summary>All mends in one line; empty when there is none.</summary>
    public static string Mends(Refusal refusal, Notation notation) =>
        string.Join(" Or: ", refusal.Mends.Select(m => Mend(m, notation)));
}
