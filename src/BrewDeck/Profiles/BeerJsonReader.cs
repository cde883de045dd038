using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Reads the open BeerJSON 1.0 standard.</summary>
public static class BeerJsonReader
{
    /// <param name="text">JSON.</param>
    /// <param name="file">Name for messages.</param>
    /// <param name="catalogue">For values that the document leaves out; null: none.</param>
    /// <exception cref="ProfileException">Not BeerJSON, or nothing in it can be carried over.</exception>
    public static Converted Read(string text, string file = "document", Catalogue? catalogue = null)
    {
        var root = JsonSource.Read(text, file);
        var import = new Importing(file, catalogue ?? Catalogue.Empty);
        var document = root["beerjson"]
            ?? throw import.Error(root, "has no member beerjson; a BeerJSON document begins {\"beerjson\":");
        var version = document["version"] ?? throw import.Error(document, "has no version; BeerJSON requires it");
        if (!version.IsNumber)
            throw import.Error(version, $"is {version.Shown}; it must be a number such as 1.0");
        version.Take();
        return import.Finish(root, [.. document.Items("recipes").Select(r => new BeerJsonRecipe(import, r).Read())]);
    }
}
