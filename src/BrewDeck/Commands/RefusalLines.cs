using System.Collections.Immutable;
using BrewDeck.Core.Planning;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Commands;

/// <summary>Why a plan cannot be brewed, a line each. Mends that speak against each other help nobody and are left out; one that helps all is said once, at the end.</summary>
internal static class RefusalLines
{
    private static readonly string[][] Opposites = [[MendCode.ThickerMash, MendCode.ThinnerMash], [MendCode.SmallerBatch, MendCode.LargerBatch]];

    public static IEnumerable<string> Of(ImmutableArray<Refusal> refusals, Notation notation)
    {
        var left = WithoutOpposites(refusals);
        var forAll = left.Length > 1 && left.All(r => r.Mends.Any(m => m.Code == MendCode.SmallerBatch))
            ? left.SelectMany(r => r.Mends).Where(m => m.Code == MendCode.SmallerBatch).MinBy(m => m.Value)
            : null;
        foreach (var refusal in left)
        {
            var own = refusal with { Mends = [.. refusal.Mends.Where(m => forAll is null || m.Code != MendCode.SmallerBatch)] };
            yield return $"{RefusalWords.Of(own, notation)} {RefusalWords.Mends(own, notation)}".TrimEnd();
        }
        if (forAll is not null)
            yield return $"For all {left.Length}: {MendWords.Of(forAll, notation)}";
    }

    private static ImmutableArray<Refusal> WithoutOpposites(ImmutableArray<Refusal> refusals)
    {
        var said = refusals.SelectMany(r => r.Mends).Select(m => m.Code).ToHashSet();
        var against = Opposites.Where(pair => Array.TrueForAll(pair, said.Contains)).SelectMany(pair => pair).ToHashSet();
        return [.. refusals.Select(r => r with { Mends = [.. r.Mends.Where(m => !against.Contains(m.Code))] })];
    }
}
