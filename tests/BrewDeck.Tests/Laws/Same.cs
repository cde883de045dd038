using System.Text.Json;
using System.Text.Json.Serialization;
using BrewDeck.Core.Running;

namespace BrewDeck.Tests.Laws;

/// <summary>States as text, so that two can be held against each other down to the last figure.</summary>
internal static class Same
{
    private static readonly JsonSerializerOptions Options = new() { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals };

    /// <summary>The plan never changes and the number of events is not a state of the day.</summary>
    public static string Text(RunState state) => JsonSerializer.Serialize(state with { Plan = null, Count = 0 }, Options);
}
