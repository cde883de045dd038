using BrewDeck.Core.Running;

namespace BrewDeck.Simulator.Rehearsing;

/// <summary>Where a headless rehearsal decides and keeps its events: in memory, or the journal of the program.</summary>
public interface IRunBook
{
    /// <summary>State after all events so far; the batch is open.</summary>
    RunState State { get; }

    /// <summary>Decides; what is accepted is kept and folded before it returns.</summary>
    Decision Submit(RunCommand command, long nowMs);
}
