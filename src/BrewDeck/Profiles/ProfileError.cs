using BrewDeck.Deck;

namespace BrewDeck.Profiles;

/// <summary>Makes the one clear line of a file that cannot be used.</summary>
internal static class ProfileError
{
    public static ProfileException At(string file, int line, string what) => new($"{file}:{line}: {what}") { What = what };

    /// <summary>Short and without control characters: what stood in a file must not steer a terminal.</summary>
    public static string OneLine(string text, int longest = 60)
    {
        var calm = string.Concat(text.Take(longest).Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
        return text.Length > longest ? calm + "…" : calm;
    }
}
