namespace BrewDeck.Core.Running;

/// <summary>The rest of the day from a state and a moment.</summary>
public static class Forecasts
{
    /// <param name="nowMs">Unix ms, not before the state's last event.</param>
    public static Forecast At(RunState state, long nowMs) => throw new NotImplementedException();
}
