using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace BrewDeck.Commands;

/// <summary>One line of JSON; numbers rounded to what they mean, so that a diff shows changes and not noise.</summary>
internal static class JsonOut
{
    public static string Line(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            write(writer);
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>A number to so many digits behind the point; null when it is none.</summary>
    public static void Round(this Utf8JsonWriter json, string name, double? value, int digits)
    {
        if (value is { } number && double.IsFinite(number))
            json.WriteNumber(name, Math.Round(number, digits) + 0.0);
        else
            json.WriteNull(name);
    }

    /// <summary>Written only when there is one.</summary>
    public static void Optional(this Utf8JsonWriter json, string name, double? value, int digits)
    {
        if (value is not null)
            json.Round(name, value, digits);
    }
}
