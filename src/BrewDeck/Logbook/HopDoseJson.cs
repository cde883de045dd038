using System.Text.Json;
using System.Text.Json.Serialization;
using BrewDeck.Core.Planning;

namespace BrewDeck.Logbook;

/// <summary>
/// A hop dose as an array in the order of the record: name, alpha_g, mass_kg, boil_minutes, gravity_sg (not in
/// older records). Each step of a plan repeats those of the steps before it.
/// </summary>
internal sealed class HopDoseJson : JsonConverter<HopDose>
{
    public override HopDose Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        JsonRow.Begin(reader.TokenType);
        var dose = new HopDose(
            JsonRow.Text(ref reader), JsonRow.Number(ref reader), JsonRow.Number(ref reader), JsonRow.Number(ref reader));
        if (JsonRow.NumberOrEnd(ref reader) is not { } gravity)
            return dose;
        JsonRow.End(ref reader);
        return dose with { GravitySg = gravity };
    }

    public override void Write(Utf8JsonWriter writer, HopDose value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        writer.WriteStringValue(value.Name);
        JsonRow.Write(writer, value.AlphaG);
        JsonRow.Write(writer, value.MassKg);
        JsonRow.Write(writer, value.BoilMinutes);
        JsonRow.Write(writer, value.GravitySg);
        writer.WriteEndArray();
    }
}
