using System.Collections.Immutable;

namespace BrewDeck.Core.Running;

/// <summary>The ways back to plan that the last reading calls for.</summary>
public static class Remedies
{
    /// <summary>Best first, leaving it last; empty when nothing is off.</summary>
    public static ImmutableArray<Remedy> For(RunState state, long nowMs) => throw new NotImplementedException();
}
