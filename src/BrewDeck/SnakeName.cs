using System.Text.Json;

namespace BrewDeck;

/// <summary>How a value of an enum is written in files, for scripts and on the command line: "stuck_bed" for <c>StuckBed</c>.</summary>
internal static class SnakeName
{
    public static string Of<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.SnakeCaseLower.ConvertName(value.ToString());
}
