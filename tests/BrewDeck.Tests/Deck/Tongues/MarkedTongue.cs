using System.Text;
using BrewDeck.Deck.Wording;

namespace BrewDeck.Tests.Deck.Tongues;

/// <summary>
/// A language for tests: each letter of each message is another one, so that what is left in plain letters on a screen came from
/// somewhere else.
/// </summary>
internal static class MarkedTongue
{
    /// <param name="names">Of usual things.</param>
    public static Tongue Of(IEnumerable<string> messages, IEnumerable<string> names)
    {
        var text = new StringBuilder();
        foreach (var name in names)
            text.Append("\nmsgctxt \"name\"\nmsgid ").Append(CatalogueTests.Quoted(name)).Append("\nmsgstr ").Append(CatalogueTests.Quoted(Marked(name))).Append('\n');
        foreach (var message in messages.Where(m => m.Length > 0).Distinct())
            text.Append("\nmsgid ").Append(CatalogueTests.Quoted(message)).Append("\nmsgstr ").Append(CatalogueTests.Quoted(Marked(message))).Append('\n');
        using var reader = new StringReader(text.ToString());
        return new("xx", ',', lowersNouns: false, Catalogue.Read(reader));
    }

    private static string Marked(string message) => string.Concat(message.Select(c => char.IsLetter(c) ? 'ж' : c));
}
