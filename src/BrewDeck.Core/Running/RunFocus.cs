namespace BrewDeck.Core.Running;

public enum FocusAct
{
    /// <summary>Nothing to do: the day is over.</summary>
    None,

    /// <summary>The big key starts the step.</summary>
    Start,

    /// <summary>The big key finishes the step: its time is up or its target is reached, or the hands say when.</summary>
    Finish,

    /// <summary>The step runs by the clock; the big key would end it early and asks first.</summary>
    Wait,
}

/// <summary>The step that the big key acts on, and how.</summary>
/// <param name="StepId">Empty when there is none.</param>
/// <param name="DueMs">When the step is expected to end (running) or to begin (waiting), Unix ms.</param>
public sealed record RunFocus(FocusAct Act, string StepId, long DueMs)
{
    public static RunFocus Of(RunState state, Forecast forecast, long nowMs) => throw new NotImplementedException();
}
