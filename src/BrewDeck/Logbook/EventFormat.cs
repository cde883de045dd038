using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using BrewDeck.Core.Running;

namespace BrewDeck.Logbook;

/// <summary>
/// <see cref="EventJson"/> with one rule more: a field that may be null may be missing, everything else must be there. (Generated
/// readers give a missing init property the default of its type, not that of its record: what is not null is always written.)
/// </summary>
internal static class EventFormat
{
    public static JsonTypeInfo<RunEvent> Event { get; } = (JsonTypeInfo<RunEvent>)new JsonSerializerOptions(EventJson.Default.Options)
    {
        TypeInfoResolver = EventJson.Default.WithAddedModifier(NullMayBeMissing),
    }.GetTypeInfo(typeof(RunEvent));

    private static void NullMayBeMissing(JsonTypeInfo type)
    {
        foreach (var property in type.Properties)
        {
            if (MayBeNull(property))
                property.IsRequired = false;
        }
    }

    private static bool MayBeNull(JsonPropertyInfo property) => property.PropertyType.IsValueType
        ? Nullable.GetUnderlyingType(property.PropertyType) is not null
        : property.IsSetNullable;
}
