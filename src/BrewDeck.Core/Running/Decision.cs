using System.Collections.Immutable;

namespace BrewDeck.Core.Running;

/// <summary>What became of a command.</summary>
public abstract record Decision
{
    private Decision()
    {
    }

    /// <summary>These events happen: write them to disk, then fold them.</summary>
    public sealed record Accepted(ImmutableArray<RunEvent> Events) : Decision;

    /// <summary>It cannot be done now.</summary>
    /// <param name="Code">Stable name, snake_case.</param>
    public sealed record Refused(string Code) : Decision;

    /// <summary>The reading lies outside what can be; ask again, with the bounds.</summary>
    public sealed record AskAgain(Reading Reading, double Low, double High) : Decision;
}
