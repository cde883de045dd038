namespace BrewDeck.Core.Running;

/// <summary>Decides what a command makes happen. It never changes anything: the events it returns do, once they are on disk.</summary>
public static class RunDesk
{
    /// <param name="nowMs">Unix ms.</param>
    public static Decision Decide(RunState state, RunCommand command, long nowMs) => throw new NotImplementedException();
}
