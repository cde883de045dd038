namespace BrewDeck.Core.Running;

/// <summary>Folds events into a state; total and pure.</summary>
public static class RunFold
{
    /// <summary>The state after all events, those that were undone left out.</summary>
    public static RunState Of(IReadOnlyList<RunEvent> events) => throw new NotImplementedException();
}
