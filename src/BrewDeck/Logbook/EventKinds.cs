using System.Reflection;
using System.Text.Json.Serialization;
using BrewDeck.Core.Running;

namespace BrewDeck.Logbook;

/// <summary>The kinds of events by the names that they are kept under, taken from <see cref="RunEvent"/> itself.</summary>
internal static class EventKinds
{
    private static readonly Dictionary<Type, string> Names = typeof(RunEvent)
        .GetCustomAttributes<JsonDerivedTypeAttribute>()
        .ToDictionary(a => a.DerivedType, a => (string)a.TypeDiscriminator!);

    public static IReadOnlySet<string> Known { get; } = Names.Values.ToHashSet(StringComparer.Ordinal);

    public static string Of(RunEvent happened) => Names[happened.GetType()];
}
