using System.Globalization;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Deck;

/// <summary>Finds batches as the brewer types: every word must stand somewhere in the number, day, recipe, brewhouse or state.</summary>
public static class BatchSearch
{
    /// <param name="typed">Words with spaces between; empty finds all.</param>
    public static IEnumerable<BatchHead> Of(IReadOnlyList<BatchHead> heads, string typed, Notation notation)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0 ? heads : heads.Where(head => Array.TrueForAll(words, word => Has(head, word, notation)));
    }

    private static bool Has(BatchHead head, string word, Notation notation) =>
        In(head.Recipe, word) || In(head.Brewhouse, word) || In(Names.Status(head.Status, notation), word) || In(Day(head.OpenedMs), word)
        || (head.Rehearsed && In(notation.Text("rehearsed"), word)) || head.Number.ToString(CultureInfo.InvariantCulture) == word;

    private static bool In(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static string Day(long ms) => ms is >= -62_135_596_800_000 and <= 253_402_300_799_999
        ? DateTimeOffset.FromUnixTimeMilliseconds(ms).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        : "";
}
