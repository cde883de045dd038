using System.Text.Json;
using BrewDeck.Core.Running;

namespace BrewDeck.Logbook;

/// <summary>An event as one line of JSON, ASCII only: the line is what is hashed, kept and exported, byte for byte.</summary>
internal static class EventCodec
{
    private const int LongestPath = 100;

    public static byte[] Encode(RunEvent happened) =>
        JsonSerializer.SerializeToUtf8Bytes(happened, EventFormat.Event);

    /// <exception cref="FormatException">It is not an event; the message says what and what would be right.</exception>
    public static RunEvent Decode(ReadOnlySpan<byte> utf8)
    {
        try
        {
            return JsonSerializer.Deserialize(utf8, EventFormat.Event)
                ?? throw new FormatException("null is not an event");
        }
        catch (Exception e) when (e is JsonException or NotSupportedException)
        {
            throw new FormatException(Trouble(utf8, e as JsonException), e);
        }
    }

    private static string Trouble(ReadOnlySpan<byte> utf8, JsonException? e) => KindOf(utf8) switch
    {
        null => "not an event: it should begin with {\"kind\":",
        { } kind when !EventKinds.Known.Contains(kind) =>
            $"the event kind \"{Short(kind)}\" is not known to this version: a newer brewdeck can read it",
        { } kind => $"the event \"{kind}\" does not fit at {Short(e?.Path ?? "$")}",
    };

    /// <summary>A place in a damaged event may be named by what is damaged.</summary>
    private static string Short(string path) => SafeText.OneLine(path.Length > LongestPath ? path[..LongestPath] + ".." : path);

    private static string? KindOf(ReadOnlySpan<byte> utf8)
    {
        try
        {
            var reader = new Utf8JsonReader(utf8);
            return reader.Read() && reader.TokenType == JsonTokenType.StartObject
                && reader.Read() && reader.TokenType == JsonTokenType.PropertyName && reader.ValueTextEquals("kind")
                && reader.Read() && reader.TokenType == JsonTokenType.String
                ? reader.GetString()
                : null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return null;
        }
    }
}
