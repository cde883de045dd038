using System.Collections.Immutable;
using BrewDeck.Deck.Screens;

namespace BrewDeck.Terminal.Compose;

/// <summary>A bar at the right of what is longer than its room: it tells that there is more, and where this is in it.</summary>
internal static class PlaceLines
{
    private const int LowestRoom = 3;

    /// <param name="first">First of all that is in sight.</param>
    /// <returns>Empty where all is in sight, or the room is too low to tell.</returns>
    public static ImmutableArray<Line> Of(int first, int count, int height)
    {
        if (count <= height || height < LowestRoom) return [];
        var thumb = Math.Max(1, height * height / count);
        var top = first + height >= count ? height - thumb : Math.Min(height - thumb, first * height / count);
        return [.. Enumerable.Range(0, height).Select(row => Line.Of(row >= top && row < top + thumb ? "┃" : "│", Tone.Muted))];
    }
}
