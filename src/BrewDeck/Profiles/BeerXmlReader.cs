using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Reads the open BeerXML 1.0 format; document types and entities are refused.</summary>
public static class BeerXmlReader
{
    /// <param name="text">XML.</param>
    /// <param name="file">Name for messages.</param>
    /// <param name="catalogue">For values that the document leaves out; null: none.</param>
    /// <exception cref="ProfileException">Not BeerXML, or nothing in it can be carried over.</exception>
    public static Converted Read(string text, string file = "document", Catalogue? catalogue = null) =>
        Read(XmlSource.Read(new StringReader(text), file), file, catalogue);

    /// <summary>As bytes, for the encoding that the document declares.</summary>
    /// <exception cref="ProfileException">Not BeerXML, or nothing in it can be carried over.</exception>
    public static Converted Read(Stream bytes, string file = "document", Catalogue? catalogue = null) =>
        Read(XmlSource.Read(bytes, file), file, catalogue);

    private static Converted Read(SourceNode root, string file, Catalogue? catalogue)
    {
        var import = new Importing(file, catalogue ?? Catalogue.Empty);
        // a recipe may stand in its set or be the document
        var recipes = root.Name == "RECIPE" ? [root] : root.Parts.Where(p => p.Name == "RECIPE").ToArray();
        return import.Finish(root, [.. recipes.Select(r => new BeerXmlRecipe(import, r).Read())]);
    }
}
