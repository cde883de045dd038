using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Recipes;
using BrewDeck.Logbook;

namespace BrewDeck.Reports;

/// <summary>Names a version of a recipe or brewhouse by its content as kept in the record: the same letters, the same numbers.</summary>
internal static class Fingerprint
{
    private const int Bytes = 6;

    public static string Of(Recipe recipe) => Of(recipe, EventJson.Default.Recipe);

    public static string Of(Brewhouse brewhouse) => Of(brewhouse, EventJson.Default.Brewhouse);

    private static string Of<T>(T value, JsonTypeInfo<T> type) =>
        Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(value, type)).AsSpan(0, Bytes));
}
