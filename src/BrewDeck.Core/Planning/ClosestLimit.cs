using System.Collections.Immutable;

namespace BrewDeck.Core.Planning;

/// <summary>The limit that a plan comes nearest to, as a share of the bound.</summary>
public static class ClosestLimit
{
    /// <returns>Null when no limit has a bound to be a share of.</returns>
    public static Limit? Of(ImmutableArray<Limit> limits) =>
        limits.Where(l => l.Bound > 0 && l.Unit != "°C").OrderBy(l => l.Margin / l.Bound).FirstOrDefault();
}
