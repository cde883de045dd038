using BrewDeck.Deck.Wording;

namespace BrewDeck.Commands;

/// <summary>The language that the brewer reads.</summary>
internal static class BrewersTongue
{
    /// <summary>In the order in which POSIX asks them.</summary>
    private static readonly string[] Variables = ["LC_ALL", "LC_MESSAGES", "LANG"];

    /// <param name="asked">One of <see cref="Tongue.Codes"/>; null: what the environment says, and English where that is not spoken here.</param>
    public static Tongue Of(string? asked) => Of(asked, Environment.GetEnvironmentVariable);

    internal static Tongue Of(string? asked, Func<string, string?> environment) =>
        Tongue.Of(asked ?? Variables.Select(environment).FirstOrDefault(v => v is { Length: > 0 }) ?? "") ?? Tongue.English;
}
