using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using BrewDeck.Core.Recipes;

namespace BrewDeck.Profiles;

/// <param name="Notes">A line for everything that the standard has no place for.</param>
public sealed record WrittenDocument(string Text, ImmutableArray<string> Notes);

/// <summary>
/// Writes the open BeerJSON 1.0 standard. What is written reads back to the same recipe, but for what the notes tell.
/// </summary>
public static class BeerJsonWriter
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static WrittenDocument Write(params IReadOnlyList<Recipe> recipes)
    {
        using var stream = new MemoryStream();
        var notes = new List<string>();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteStartObject("beerjson");
            json.WriteNumber("version", 1.0);
            json.WriteStartArray("recipes");
            for (var i = 0; i < recipes.Count; i++)
                new BeerJsonRecipeWriter(json, recipes[i], notes, $"/beerjson/recipes/{i}").Write();
            json.WriteEndArray();
            json.WriteEndObject();
            json.WriteEndObject();
        }

        return new(Encoding.UTF8.GetString(stream.ToArray()) + "\n", [.. notes]);
    }
}
