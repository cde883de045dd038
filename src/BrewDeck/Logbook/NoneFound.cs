using BrewDeck.Deck;
using BrewDeck.Deck.Wording;
using Humanizer;

namespace BrewDeck.Logbook;

/// <summary>Why a list shows no batch, so that nobody takes a brew for lost.</summary>
internal static class NoneFound
{
    /// <param name="all">Those that could have been shown, rehearsed ones too.</param>
    public static string Of(IReadOnlyList<BatchHead> all, bool rehearsed, string search, Notation notation)
    {
        var left = rehearsed ? 0 : BatchSearch.Of([.. all.Where(h => h.Rehearsed)], search, notation).Count();
        var none = search.Trim().Length > 0 ? $"no batch with \"{SafeText.OneLine(search.Trim())}\"" : "no batch";
        return Names.Sentence(left == 0 ? $"{none} here." : $"{none} here but {Rehearsed(left)}: --rehearsed shows {(left == 1 ? "it" : "them")}.");
    }

    public static string Rehearsed(int count) => "rehearsed batch".ToQuantity(count);
}
