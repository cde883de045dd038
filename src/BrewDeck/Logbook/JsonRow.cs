using System.Text.Json;

namespace BrewDeck.Logbook;

/// <summary>
/// Reading and writing of records as arrays, in the order of their fields: a plan repeats some of them hundreds of times, and their
/// names alone would be a third of it. A number that is none is null; infinities are named.
/// </summary>
internal static class JsonRow
{
    public static void Begin(JsonTokenType token) => Expect(token == JsonTokenType.StartArray);

    public static void End(ref Utf8JsonReader reader) => Expect(reader.Read() && reader.TokenType == JsonTokenType.EndArray);

    public static string Text(ref Utf8JsonReader reader)
    {
        Expect(reader.Read() && reader.TokenType == JsonTokenType.String);
        return reader.GetString()!;
    }

    public static double Number(ref Utf8JsonReader reader)
    {
        Expect(reader.Read());
        return Here(ref reader);
    }

    /// <summary>Null: the array ends here; a field that older records do not have.</summary>
    public static double? NumberOrEnd(ref Utf8JsonReader reader)
    {
        Expect(reader.Read());
        return reader.TokenType == JsonTokenType.EndArray ? null : Here(ref reader);
    }

    public static void Write(Utf8JsonWriter writer, double number)
    {
        if (double.IsNaN(number))
            writer.WriteNullValue();
        else if (double.IsInfinity(number))
            writer.WriteStringValue(number > 0 ? "Infinity" : "-Infinity");
        else
            writer.WriteNumberValue(number);
    }

    private static double Here(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.Number => reader.GetDouble(),
        JsonTokenType.Null => double.NaN,
        JsonTokenType.String when reader.ValueTextEquals("Infinity") => double.PositiveInfinity,
        JsonTokenType.String when reader.ValueTextEquals("-Infinity") => double.NegativeInfinity,
        _ => throw Unfit(),
    };

    private static void Expect(bool fits)
    {
        if (!fits)
            throw Unfit();
    }

    private static JsonException Unfit() => new("the array does not have the fields of its record");
}
