using System.Text.Json;
using System.Text.Json.Serialization;
using BrewDeck.Core.Planning;

namespace BrewDeck.Logbook;

/// <summary>
/// A vessel's state as an array in the order of the record: at_s, water_kg, extract_kg, temp_c, grain_kg, grain_dry_kg,
/// undissolved_kg, washed, hold_c (null: not held), and 1 where it stands open (not there where it does not).
/// </summary>
internal sealed class VesselStateJson : JsonConverter<VesselState>
{
    public override VesselState Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        JsonRow.Begin(reader.TokenType);
        var state = new VesselState(
            JsonRow.Number(ref reader), JsonRow.Number(ref reader), JsonRow.Number(ref reader), JsonRow.Number(ref reader),
            JsonRow.Number(ref reader), JsonRow.Number(ref reader), JsonRow.Number(ref reader), JsonRow.Number(ref reader),
            JsonRow.Number(ref reader));
        if (JsonRow.NumberOrEnd(ref reader) is not { } open)
            return state;
        JsonRow.End(ref reader);
        return state with { Open = open != 0 };
    }

    public override void Write(Utf8JsonWriter writer, VesselState value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        JsonRow.Write(writer, value.AtS);
        JsonRow.Write(writer, value.WaterKg);
        JsonRow.Write(writer, value.ExtractKg);
        JsonRow.Write(writer, value.TempC);
        JsonRow.Write(writer, value.GrainKg);
        JsonRow.Write(writer, value.GrainDryKg);
        JsonRow.Write(writer, value.UndissolvedKg);
        JsonRow.Write(writer, value.Washed);
        JsonRow.Write(writer, value.HoldC);
        if (value.Open)
            JsonRow.Write(writer, 1);
        writer.WriteEndArray();
    }
}
