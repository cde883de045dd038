using BrewDeck.Core.Running;
using BrewDeck.Deck;

using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck;

public sealed class BatchSearchTests
{
    private static readonly BatchHead[] Heads =
    [
        new(12, "Quayside Amber", "Quayside 65", 1_780_000_000_000, 80, RunStatus.Complete, Rehearsed: false), // 2026-05-28
        new(1, "Lock Gate Porter", "Quayside 65", 1_700_000_000_000, 80, RunStatus.Aborted, Rehearsed: true), // 2023-11-14
    ];

    [Theory]
    [InlineData("", "12 1")]
    [InlineData("amber", "12")]
    [InlineData("  QUAYSIDE  ", "12 1")]
    [InlineData("quayside porter", "1")]
    [InlineData("2026-05", "12")]
    [InlineData("1", "1")]
    [InlineData("aborted rehearsed", "1")]
    [InlineData("amber porter", "")]
    public void Every_word_must_stand_in_it(string typed, string found) =>
        Assert.Equal(found, string.Join(' ', BatchSearch.Of(Heads, typed, Notation.Metric).Select(h => h.Number)));
}
