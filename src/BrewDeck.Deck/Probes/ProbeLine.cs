using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using BrewDeck.Core.Running;

namespace BrewDeck.Deck.Probes;

/// <summary>
/// One line of a probe, a JSON object: <c>{"vessel":"tun","temperature_c":66.4}</c>, also <c>volume_l</c>, <c>ph</c> and
/// <c>gravity_sg</c>, and <c>at</c>, an ISO 8601 time (UTC unless it says otherwise). Other keys are passed over.
/// </summary>
public static class ProbeLine
{
    private const int LongestId = 40;

    /// <summary>Of any value; larger than the largest vessel.</summary>
    private const double Largest = 1e6;

    /// <summary>A probe's clock may be ahead of ours by this much.</summary>
    private static readonly TimeSpan Ahead = TimeSpan.FromMinutes(1);

    private static readonly ImmutableArray<(string Key, ReadingKind Kind)> Keys =
    [
        ("temperature_c", ReadingKind.Temperature), ("volume_l", ReadingKind.Volume), ("ph", ReadingKind.Ph), ("gravity_sg", ReadingKind.Gravity),
    ];

    /// <param name="line">UTF-8, without its line end.</param>
    /// <param name="now">Wall clock.</param>
    /// <param name="why">Why it cannot be read, in words that do not repeat the line; empty when it can.</param>
    /// <returns>One value or more; empty when it cannot be read.</returns>
    public static ImmutableArray<ProbeValue> Read(ReadOnlyMemory<byte> line, DateTimeOffset now, out string why)
    {
        try
        {
            using var document = JsonDocument.Parse(line, new JsonDocumentOptions { MaxDepth = 8 });
            return Read(document.RootElement, now, out why);
        }
        // a string may hold half a surrogate pair, which the parser lets pass and the reader of strings does not
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            why = "it is no JSON";
            return [];
        }
    }

    private static ImmutableArray<ProbeValue> Read(JsonElement root, DateTimeOffset now, out string why)
    {
        why = root.ValueKind != JsonValueKind.Object ? "it is no JSON object" : "";
        if (why.Length > 0 || Vessel(root, out why) is not { } vessel || Age(root, now, out why) is not { } age)
            return [];
        var values = ImmutableArray.CreateBuilder<ProbeValue>();
        foreach (var (key, kind) in Keys)
        {
            if (!root.TryGetProperty(key, out var element))
                continue;
            if (element.ValueKind != JsonValueKind.Number || !element.TryGetDouble(out var value) || !(Math.Abs(value) <= Largest))
            {
                why = key + " is no number of a size that is measured";
                return [];
            }
            values.Add(new ProbeValue(kind, vessel, value, age));
        }
        why = values.Count == 0 ? "it has none of " + string.Join(", ", Keys.Select(k => k.Key)) : "";
        return values.ToImmutable();
    }

    private static string? Vessel(JsonElement root, out string why)
    {
        var id = root.TryGetProperty("vessel", out var element) && element.ValueKind == JsonValueKind.String ? element.GetString()! : "";
        var good = id.Length is > 0 and <= LongestId && id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.');
        why = good ? "" : "vessel is no id of a vessel";
        return good ? id : null;
    }

    private static TimeSpan? Age(JsonElement root, DateTimeOffset now, out string why)
    {
        why = "";
        if (!root.TryGetProperty("at", out var element))
            return TimeSpan.Zero;
        if (element.ValueKind != JsonValueKind.String
            || !DateTimeOffset.TryParse(element.GetString(), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at))
        {
            why = "at is no ISO 8601 time";
            return null;
        }
        if (at - now > Ahead)
        {
            why = "at is ahead of this clock";
            return null;
        }
        return at < now ? now - at : TimeSpan.Zero;
    }
}
